"""A shop brought back from a backup, into a new folder, when all of it was found to be whole."""

from __future__ import annotations

import os
import shutil
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.backups.backup_manifest import RECORD, Manifest, Member, refused
from desktop_app.shop_record.backups.backup_opened import OpenBackup, open_backup, pieces
from desktop_app.shop_record.backups.backup_pieces import agrees, told_of_disk, unfinished
from desktop_app.shop_record.backups.restored_from import say_restored
from desktop_app.shop_record.databases.dialect_snapshot import read_facts
from desktop_app.shop_record.photos.photo_files import sync_folder
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

_BRINGING = tr("Bringing the shop back")


@dataclass(frozen=True, slots=True)
class Restored:
    """A shop that was brought back: its folder, and what the backup said of it."""

    folder: Path
    manifest: Manifest


def restore_backup(place: Path, folder: Path, now: datetime) -> Generator[Step, None, Restored]:
    """Bring a shop back from an archive or a generation, into a new or an empty folder.

    Every byte is held against the manifest, the record against itself and against the photos. A
    record of an older form stays so until it is opened. Raises ShopTrouble where anything is not
    as it was written; then, as when it is stopped, nothing of it stays.
    """
    with told_of_disk(tr("The folder {folder}", folder=folder)), _beside(folder) as beside:
        backup = open_backup(place)
        manifest = backup.manifest
        _refuse_newer(manifest)
        _refuse_without_room(manifest, folder)
        yield from _write_members(backup, beside)
        _hold_record(manifest, beside / RECORD)
        say_restored(beside, manifest, now)
        sync_folder(beside)
        _refuse_what_is_there(folder)
        if folder.exists():
            folder.rmdir()
        beside.rename(folder)
        sync_folder(folder.parent)
    return Restored(folder, manifest)


def _write_members(backup: OpenBackup, folder: Path) -> Generator[Step, None, None]:
    done, of = 0, backup.manifest.size()
    made: set[Path] = set()
    for member in backup.manifest.members:
        path = folder / member.name
        path.parent.mkdir(parents=True, exist_ok=True)
        made.add(path.parent)
        yield from _write(backup, member, path, done, of)
        done += member.size
        if member.name.startswith("photos/"):
            path.chmod(0o444)
    for parent in made:
        sync_folder(parent)


def _write(
    backup: OpenBackup, member: Member, path: Path, done: int, of: int
) -> Generator[Step, None, None]:
    with path.open("xb") as file:
        for piece in pieces(backup, member):
            file.write(piece)
            done += len(piece)
            yield Step(done, of, _BRINGING)
        file.flush()
        os.fsync(file.fileno())


def _hold_record(manifest: Manifest, record: Path) -> None:
    try:
        facts = read_facts(record, wholly=True)
    except ShopDamaged as damage:
        raise refused(tr("its record can't be used, {what}", what=damage.what)) from damage
    if wrong := agrees(manifest, facts):
        raise refused(wrong)


def _refuse_newer(manifest: Manifest) -> None:
    if manifest.record_form not in upgrade.STEPS:
        raise ShopTrouble(
            tr(
                "The backup holds a record of form {form}, this program knows "
                "{newest}: a newer program wrote it.",
                form=manifest.record_form[:20],
                newest=upgrade.NEWEST,
            ),
            kept=tr("Nothing was changed."),
            do=tr("Install the newer program on this computer."),
        )


def _refuse_without_room(manifest: Manifest, folder: Path) -> None:
    free = shutil.disk_usage(folder.parent).free
    if manifest.size() > free:
        raise ShopTrouble(
            tr(
                "The backup needs {size:,.0f} MB, and {folder} has {free:,.0f} MB left.",
                size=manifest.size() / 1e6,
                folder=folder.parent,
                free=free / 1e6,
            ),
            kept=tr("Nothing was changed."),
            do=tr("Make room or name another place."),
        )


@contextmanager
def _beside(folder: Path) -> Iterator[Path]:
    """Give a folder beside the place, for what is not finished; it goes with the block."""
    _refuse_what_is_there(folder)
    folder.parent.mkdir(parents=True, exist_ok=True)
    with unfinished(folder, "being-restored") as beside:
        yield beside


def _refuse_what_is_there(folder: Path) -> None:
    if os.path.lexists(folder) and (not folder.is_dir() or any(folder.iterdir())):
        raise ShopTrouble(
            tr("{folder} is there already and not empty.", folder=folder),
            kept=tr("It was left as it is."),
            do=tr("Name a new or an empty folder."),
        )
