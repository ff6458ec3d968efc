"""A backup: the whole shop in one file, taken while people work, and read again before it counts.

The file is a ZIP in which nothing is packed, so that photos are not squeezed twice and nothing
swells when it is read. It is written beside its place and gets its name when it was held whole.
"""

from __future__ import annotations

import os
import shutil
import zipfile
from collections.abc import Generator, Iterable, Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import MANIFEST, Manifest, Member, photo_name
from desktop_app.shop_record.backups.backup_opened import (
    PIECE,
    hold,
    open_backup,
)
from desktop_app.shop_record.backups.backup_pieces import (
    agrees,
    copy_record,
    manifest_of,
    own_kinds,
    photo_names,
    read_photo,
    told_of_disk,
    unfinished,
)
from desktop_app.shop_record.backups.backup_zip import NO_SEAL, write_seal
from desktop_app.shop_record.databases.dialect_snapshot import RecordFacts
from desktop_app.shop_record.photos.photo_files import PhotoFiles, sync_folder
from desktop_app.shop_record.photos.photos_fetched import fetched_again
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

_WRITING, _HOLDING = tr("Writing the backup"), tr("Holding the backup against its checksums")


@dataclass(frozen=True, slots=True)
class BackupMade:
    """A backup that was held whole: where it lies, what it says, how long it is in bytes."""

    file: Path
    manifest: Manifest
    size: int


def make_backup(shop: Path, to: Path, now: datetime) -> Generator[Step, None, BackupMade]:
    """Write the whole of a shop into a new file.

    Raises ShopTrouble where something lies there already, the disk refuses, or the shop's record
    is damaged; then, as when it is stopped, nothing of it stays. Photos that are gone or damaged
    are left out, and named.
    """
    with told_of_disk(tr("The backup {file}", file=to)), _beside(to) as folder:
        yield Step(0, 100, _WRITING)
        record, part = folder / "record", folder / "backup"
        facts, member = yield from copy_record(shop, record, stays=False)
        pieces = _Pieces(record, facts, member, photo_names(shop, facts), set())
        while True:
            yield from _write(shop, part, pieces, now)
            with ThreadPoolExecutor(1) as beside:
                on_disk = beside.submit(_sync, part)
                manifest, wrong = yield from _read_again(part, facts)
                on_disk.result()
            if not wrong:
                break
            pieces.damaged.update(_damaged_in_shop(shop, wrong))
        record.unlink()
        _refuse_what_is_there(to)
        part.rename(to)
        sync_folder(to.parent)
    return BackupMade(to, manifest, to.stat().st_size)


@dataclass(frozen=True, slots=True)
class _Pieces:
    """What goes into the file: the copied record, and the photos, by SHA-256.

    `damaged` are photos that are left out; more may be found while the file is written.
    """

    record: Path
    facts: RecordFacts
    member: Member
    photos: Sequence[str]
    damaged: set[str]


def _write(shop: Path, part: Path, what: _Pieces, now: datetime) -> Generator[Step, None, None]:
    """Write the archive; photos are held against their names only when it is read again."""
    members, kept = [what.member], PhotoFiles(shop / "photos")
    with part.open("wb+") as file, ThreadPoolExecutor(1) as beside:
        on_disk = beside.submit(os.fsync, file.fileno())
        with zipfile.ZipFile(file, "w", zipfile.ZIP_STORED) as archive:
            with what.record.open("rb") as copy, archive.open(_info(what.member), "w") as entry:
                shutil.copyfileobj(copy, entry, PIECE)
            for member, content in own_kinds(shop):
                archive.writestr(_info(member), content)
                members.append(member)
            for done, sha256 in enumerate(what.photos):
                yield Step(10 + 60 * done // len(what.photos), 100, _WRITING)
                photo = None if sha256 in what.damaged else read_photo(kept.path(sha256))
                if photo is None:
                    what.damaged.add(sha256)
                    continue
                members.append(Member(photo_name(sha256), sha256, len(photo)))
                archive.writestr(_info(members[-1]), photo)
                if on_disk.done():  # the disk takes in what is there while more is written
                    on_disk.result()
                    on_disk = beside.submit(os.fsync, file.fileno())
            manifest = manifest_of(what.facts, members, sorted(what.damaged), now)
            archive.writestr(zipfile.ZipInfo(MANIFEST), manifest.as_bytes())
            archive.comment = NO_SEAL
        write_seal(file)
        on_disk.result()  # what it was refused is told once only: not to who syncs it again


def _sync(part: Path) -> None:
    with part.open("rb+") as file:
        os.fsync(file.fileno())


def _info(member: Member) -> zipfile.ZipInfo:
    info = zipfile.ZipInfo(member.name)
    info.file_size = member.size  # so that one over 4 GB gets the long form
    return info


def _read_again(
    part: Path, facts: RecordFacts
) -> Generator[Step, None, tuple[Manifest, tuple[Member, ...]]]:
    backup = open_backup(part)
    steps = hold(backup)
    while True:
        try:
            step = next(steps)
        except StopIteration as end:
            wrong: tuple[Member, ...] = end.value
            break
        yield Step(70 + 30 * step.done // step.of, 100, _HOLDING)
    if differs := agrees(backup.manifest, facts):
        raise ShopTrouble(tr("The backup was not made: {why}.", why=differs), do=tr("Try again."))
    return backup.manifest, wrong


def _damaged_in_shop(shop: Path, wrong: Iterable[Member]) -> set[str]:
    """Return those photos that came out wrong because they lie wrong in the shop itself."""
    kept = PhotoFiles(shop / "photos")
    damaged = {
        one.sha256
        for one in wrong
        if one.name == photo_name(one.sha256) and not kept.is_whole(one.sha256)
    }
    if not damaged:
        raise ShopTrouble(
            tr("The backup was not made: its disk does not give back what was written to it."),
            kept=tr("Nothing half done was left; the shop is as it was."),
            do=tr("Use another disk, and have this one looked at."),
        )
    return {sha256 for sha256 in damaged if not fetched_again(shop, sha256)}


@contextmanager
def _beside(to: Path) -> Iterator[Path]:
    """Give a folder beside the place, for what is not finished; it goes with the block."""
    _refuse_what_is_there(to)
    if not to.parent.is_dir():
        raise ShopTrouble(
            tr("There is no folder {folder}.", folder=to.parent),
            do=tr("Name a file in one that is there."),
        )
    with unfinished(to, "being-written") as folder:
        yield folder


def _refuse_what_is_there(to: Path) -> None:
    if os.path.lexists(to):
        raise ShopTrouble(
            tr("{file} is there already.", file=to),
            kept=tr("It was left as it is."),
            do=tr("Name a new file."),
        )
