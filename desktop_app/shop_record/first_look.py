"""The first look at a shop that was just opened: can it be read, can it be written, is it whole?"""

from __future__ import annotations

import os
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backups_found import backup_folders
from desktop_app.shop_record.backups.last_good import way_back
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.shared_disk import on_shared_disk
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble, ShopUnwritable


def first_look(record: ShopRecord) -> ShopTrouble | None:
    """Return what to say of a shop at its start, the worst first; None where all is well.

    A damaged record takes no more writing from then on: each deed is refused with the same words.
    Takes a while for a large record: call it beside the window.
    """
    damage = _damage(record)
    if damage is not None:
        record.refuses = damage
        return damage
    if record.on_server:
        from desktop_app.shop_record.server.server_first_look import server_first_look

        return server_first_look(record)
    return _unwritable(record.folder) or on_shared_disk(record.folder)


def _damage(record: ShopRecord) -> ShopDamaged | None:
    try:
        with record.reading() as connection:
            found = dialect.damage_seen_quickly(connection)
            short = dialect.is_cut_short(connection, record.folder / FILE_NAME)
    except ShopDamaged as damage:
        found, short = [damage.what], False
    except FileNotFoundError:  # what is open can be read on where the system lets files go so
        found, short = [tr("its file is gone")], False
    except ShopTrouble:
        return None  # busy, or its server away: whoever wants it next is told
    if not found and not short:
        return None
    what = found[0] if found else tr("the end of its file is missing")
    return ShopDamaged(
        tr("The shop's record is damaged ({what}).", what=what[:200].rstrip(".")),
        kept=tr("What can still be read is shown; nothing is written into it any more."),
        do=way_back(record.folder, *backup_folders(record)),
    )


def _unwritable(folder: Path) -> ShopUnwritable | None:
    """Try to write beside the record: rights alone don't tell of a disk that is read only."""
    try:
        try_to_write(folder)
        if os.access(folder / FILE_NAME, os.W_OK):
            return None
        why = tr("shop.sqlite is write-protected")
    except OSError as error:
        why = error.strerror or str(error)
    return ShopUnwritable(
        tr(
            "The shop's folder {folder} can be read but not written ({why}).",
            folder=folder,
            why=why,
        ),
        kept=tr("Everything can be looked at; nothing can be saved."),
        do=tr("Ask for the right to write, or look at the disk, and open the shop again."),
    )


def try_to_write(folder: Path) -> None:
    """Write an empty file into a folder and take it away; OSError where that can't be done."""
    probe = folder / f".benchwitness-{os.getpid()}.probe"
    probe.write_bytes(b"")
    probe.unlink()
