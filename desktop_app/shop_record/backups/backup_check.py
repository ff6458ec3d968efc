"""The check of a shop's backups: is the newest one whole, and does the history still hold theirs?

A history that was cut or written anew from some entry on is chained as well as a true one; only
what was kept elsewhere, the number and the hash of an entry, tells them apart.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import Manifest
from desktop_app.shop_record.backups.backup_opened import OpenBackup, hold, open_backup
from desktop_app.shop_record.backups.backups_made import asked_of, places
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.restored_from import RestoredFrom, restored_from
from desktop_app.shop_record.checks.check import Problem
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import walked
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble


def backup_problems(record: ShopRecord) -> Iterator[Problem]:
    """Give what is wrong with the generations within reach, and with the history beside them."""
    rules, shop, _ = asked_of(record)
    restored = restored_from(record.folder)
    for base in places(record, rules, shop).values():
        made = list(reversed(generations_in(base)))
        parted: Problem | None = None
        for number, (_, folder) in enumerate(made):
            try:
                backup = open_backup(folder)
                wrong = list(_wrong_in(backup)) if number == 0 else []
            except ShopTrouble as trouble:
                yield _damaged(folder, trouble.what)
                continue
            for name in wrong:
                yield _damaged(folder, tr("{name} in it is not as it was written.", name=name))
            with record.reading() as connection:
                parted = parted or _parted(connection, backup.manifest, restored, folder)
        if parted is not None:
            yield parted


def _wrong_in(backup: OpenBackup) -> Iterator[str]:
    for member in walked(hold(backup)):
        yield member.name


def _damaged(folder: Path, what: str) -> Problem:
    do = tr("Put it aside, and make a new backup with “benchwitness backup FILE”.")
    return Problem(tr("the backup {folder}", folder=folder), what, False, do)


def _parted(
    connection: Connection, manifest: Manifest, restored: RestoredFrom | None, folder: Path
) -> Problem | None:
    """Return what to say where the entry that a backup ended with no longer stands."""
    if not manifest.entries or _given_up(manifest, restored):
        return None
    wanted = select(HistoryEntry.hash).where(HistoryEntry.seq == manifest.entries)
    found = connection.execute(wanted).scalar()
    if found == manifest.head:
        return None
    what = tr(
        "It was cut or written anew after the backup {folder}: entry {entry} is another one.",
        folder=folder,
        entry=manifest.entries,
    )
    if found is None:
        what = tr(
            "It was cut or written anew after the backup {folder}: entry {entry} is missing.",
            folder=folder,
            entry=manifest.entries,
        )
    return Problem(
        tr("the history"),
        what,
        True,
        tr("Bring that backup back into a new folder and compare the two."),
    )


def _given_up(manifest: Manifest, restored: RestoredFrom | None) -> bool:
    """Tell whether a backup holds what was given up when an older one was brought back."""
    return (
        restored is not None
        and manifest.entries > restored.entries
        and datetime.fromisoformat(manifest.made_at) <= datetime.fromisoformat(restored.restored_at)
    )
