"""Where a shop's record and its photos lie, who has it open: in words, never with a password."""

from __future__ import annotations

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.photos.photos_on_server import PhotosOnServer
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.server.server_folder import read_place

ONE_A_DAY = tr(
    "One a day for the whole shop, made by the computer that comes first, in the "
    "second backup folder where the house rules name one and this computer reaches it. "
    "Else each computer makes one a day of its own, in the folder of what stays on it. "
    "Before an import one is made there in any case. Each computer brings the newest "
    "back on trial once a month."
)


def where_kept(record: ShopRecord) -> list[tuple[str, str]]:
    """Return what lies where, each with its name; asks a server who is connected.

    Raises ServerLost where the server is away.
    """
    if not record.on_server:
        return [
            (tr("Record"), str(record.folder / FILE_NAME)),
            (tr("Photos"), str(record.photos.folder)),
        ]
    with record.reading() as connection:
        who = _who(connection)
        user = str(connection.exec_driver_sql("SELECT current_user").scalar_one())
    photos = tr("in {folder}", folder=record.photos.folder)
    if isinstance(record.photos, PhotosOnServer):
        photos = tr("in the database")
    return [
        (tr("Record"), read_place(record.folder).address.text()),
        (tr("Photos"), photos),
        (tr("You are"), user),
        (tr("Connected now"), ", ".join(who)),
        (
            tr("On this computer"),
            tr("{folder}: drafts, thumbnails, copies of photos, the log", folder=record.folder),
        ),
        (tr("Backups"), ONE_A_DAY),
    ]


def _who(connection: Connection) -> list[str]:
    """Return who has the shop open; from which computer only where the server tells this login."""
    said = (
        "SELECT DISTINCT usename, host(client_addr) FROM pg_stat_activity "
        "WHERE datname = current_database() AND application_name LIKE 'benchwitness%%' "
        "ORDER BY 1, 2"
    )
    rows = connection.exec_driver_sql(said)
    return [f"{user} ({place})" if place else str(user) for user, place in rows]
