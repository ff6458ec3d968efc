"""Where a shop's record and its photos lie, who has it open: in words, never with a password."""

from __future__ import annotations

from sqlalchemy import Connection

from desktop_app.shop_record.photos_on_server import PhotosOnServer
from desktop_app.shop_record.record import FILE_NAME, ShopRecord
from desktop_app.shop_record.server_folder import read_place

ONE_A_DAY = (
    "One a day for the whole shop, made by the computer that comes first, in the second backup "
    "folder where the house rules name one and this computer reaches it. Else each computer makes "
    "one a day of its own, in the folder of what stays on it. Before an import one is made "
    "there in any case. Each computer brings the newest back on trial once a month."
)


def where_kept(record: ShopRecord) -> list[tuple[str, str]]:
    """Return what lies where, each with its name; asks a server who is connected.

    Raises ServerLost where the server is away.
    """
    if not record.on_server:
        return [
            ("Record", str(record.folder / FILE_NAME)),
            ("Photos", str(record.photos.folder)),
        ]
    with record.reading() as connection:
        who = _who(connection)
        user = str(connection.exec_driver_sql("SELECT current_user").scalar_one())
    in_database = isinstance(record.photos, PhotosOnServer)
    return [
        ("Record", read_place(record.folder).address.text()),
        ("Photos", "in the database" if in_database else f"in {record.photos.folder}"),
        ("You are", user),
        ("Connected now", ", ".join(who)),
        ("On this computer", f"{record.folder}: drafts, thumbnails, copies of photos, the log"),
        ("Backups", ONE_A_DAY),
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
