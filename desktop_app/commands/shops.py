"""`new-shop` and `move-shop`: a shop in a folder or on a server, and from one to the other."""

from __future__ import annotations

import shutil
from pathlib import Path

from desktop_app.commands.named_file import at_home
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import chosen_place, new_place, now, open_place
from desktop_app.shop_record.backups.backup_pieces import KINDS
from desktop_app.shop_record.counted_words import entries_counted, photos_counted, rows_counted
from desktop_app.shop_record.server.server_address import is_address, read_address
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.shared_disk import on_shared_disk


def new_shop(asked: Asked) -> Outcome:
    """Make a new shop."""
    photos = at_home(asked.photos).absolute() if asked.photos else None
    if is_address(asked.folder):
        return _new_on_server(asked.folder, photos)
    folder = at_home(asked.folder)
    new_place(folder).close()
    shared = on_shared_disk(folder)
    more = () if shared is None else (shared.sentence(),)
    return Outcome({"shop": str(folder)}, (f"Made a new shop in {folder}.", *more))


def move_shop(asked: Asked) -> Outcome:
    """Carry a whole shop into a new folder or onto a server, and compare both."""
    from desktop_app.commands.server_place import folder_for, with_password
    from desktop_app.shop_record.move_shop import move_into_folder, move_to_server

    record, kinds = open_place(chosen_place(asked.shop)), 0
    try:
        if is_address(asked.to):
            photos = at_home(asked.photos).absolute() if asked.photos else None
            address, password = read_address(asked.to)
            told = with_password(
                address, password, lambda said: move_to_server(record, address, photos, said)
            )
            to = address.text()
            write_place(folder_for(address), ServerPlace(address, photos))
            kinds = _carry_kinds(record.folder, folder_for(address))
        else:
            told = move_into_folder(record, at_home(asked.to))
            to = str(at_home(asked.to))
    finally:
        record.close()
    facts = {
        **{"shop": to, "rows": told.rows, "history_entries": told.entries},
        **{"photos": told.photos, "photos_missing": told.missing},
    }
    missing = (
        f"{told.missing:,} of the photos were gone or damaged before and are not in it: "
        "“check” names them."
    )
    alone = (
        f"{kinds:,} part kinds that were brought as files lie in this computer's folder of the "
        "shop alone: keep them under Part Kinds, so that every desk has them."
    )
    lines = (
        f"Moved {rows_counted(told.rows)}, {entries_counted(told.entries)} and "
        f"{photos_counted(told.photos)} to {to}.",
        "Both were compared row by row, and each photo was held to its hash: they are the same.",
        *((missing,) if told.missing else ()),
        *((alone,) if kinds else ()),
        "The shop that was moved is left as it was. Put it away, so that nobody goes on in it.",
    )
    return Outcome(facts, lines)


def _carry_kinds(shop: Path, to: Path) -> int:
    """Copy part kinds that lie in a shop's folder as files; return how many there are."""
    kinds = sorted((shop / KINDS).glob("*.toml"))
    if kinds:
        shutil.copytree(shop / KINDS, to / KINDS, dirs_exist_ok=True)
    return len(kinds)


def _new_on_server(said: str, photos: Path | None) -> Outcome:
    from desktop_app.commands.server_place import folder_for, with_password
    from desktop_app.shop_record.server.server_opened import opened_there
    from desktop_app.shop_record.server.server_roles import roles_of

    address, password = read_address(said)
    folder = folder_for(address)
    with_password(
        address,
        password,
        lambda known: opened_there(
            folder, ServerPlace(address, photos), known, now, new=True
        ).close(),
    )
    readers, workers = roles_of(address.database)
    where = "in the database" if photos is None else f"in {photos}"
    return Outcome(
        {"shop": address.text(), "folder": str(folder), "photos": where},
        (
            f"Made a new shop in {address.text()}.",
            f"Its photos lie {where}. What stays on this computer lies in {folder}.",
            "Who works in it gets a login of their own, for example:",
            f"    CREATE ROLE tuuli LOGIN PASSWORD '...' IN ROLE \"{workers}\";",
            f'Who only looks: IN ROLE "{readers}". Each opens it with --shop and the address.',
        ),
    )
