"""The first look at a shop on a server: may this login work in it, is all of it within reach?"""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.shop_record.first_look import try_to_write
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_roles import may_write, roles_of
from desktop_app.shop_record.trouble import ShopTrouble, ShopUnwritable


def server_first_look(record: ShopRecord) -> ShopTrouble | None:
    """Return what to say at the start, the worst first; None where all is well."""
    try:
        with record.reading() as connection:
            works = may_write(connection)
    except ShopTrouble:
        return None  # away just now: whoever wants it next is told
    return (None if works else _only_looks(record)) or _photos_away(record) or _no_room_here(record)


def _only_looks(record: ShopRecord) -> ShopUnwritable:
    address = read_place(record.folder).address
    _, workers = roles_of(address.database)
    return ShopUnwritable(
        tr(
            "{user} may look at the shop on the server, and not write.",
            user=address.user or tr("This login"),
        ),
        kept=tr("Everything can be looked at; nothing can be saved."),
        do=tr(
            "Who is to work in it is put into “{workers}” by whoever looks after the server.",
            workers=workers,
        ),
    )


def _photos_away(record: ShopRecord) -> ShopTrouble | None:
    away = record.photos.away()
    if away is None:
        return None
    kept = tr("Everything else is there; photos are shown and taken in when it is back.")
    return ShopTrouble(away.what, kept, away.do)


def _no_room_here(record: ShopRecord) -> ShopTrouble | None:
    """Say where what stays on this computer can't be kept; the record itself can be written."""
    try:
        try_to_write(record.folder)
    except OSError as error:
        return ShopTrouble(
            tr(
                "{folder} on this computer can't be written ({error}).",
                folder=record.folder,
                error=error.strerror or error,
            ),
            kept=tr("The shop is on the server and can be worked in."),
            do=tr(
                "Without it half-typed forms are lost with the window, and no backups are "
                "made here: ask for the right to write."
            ),
        )
    return None
