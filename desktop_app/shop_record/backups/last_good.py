"""The last good backup within reach, in words, for whoever stands before a damaged shop."""

from __future__ import annotations

from contextlib import suppress
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.counted_words import entries_counted
from desktop_app.shop_record.record_name import is_server_folder
from desktop_app.shop_record.trouble import ShopTrouble

OWN_FOLDER = "backups"


def way_back(shop: Path, *bases: Path) -> str:
    """Say where the newest backup lies, from when it is and how it comes back.

    It is looked for in the shop's own folder and in `bases`; where there is none, what else to do.
    """
    made = [one for base in (shop / OWN_FOLDER, *bases) for one in _generations(base)]
    for moment, folder in sorted(made, reverse=True):
        with suppress(ShopTrouble):
            entries = open_backup(folder).manifest.entries
            back = tr(
                "Your last good backup is of {moment:%Y-%m-%d %H:%M}, with {entries}. "
                "“benchwitness restore {folder} NEWFOLDER” brings it back into a new folder; "
                "leave this one as it is.",
                moment=moment,
                entries=entries_counted(entries),
                folder=folder,
            )
            if not is_server_folder(shop):
                return back
            onto = tr("From there “benchwitness move-shop” carries it onto a server.")
            return f"{back} {onto}"
    return tr("Bring a backup back with “benchwitness restore FILE NEWFOLDER”, if you have one.")


def _generations(base: Path) -> list[tuple[datetime, Path]]:
    try:
        return list(generations_in(base))
    except OSError:
        return []
