"""The photos that generations of backups share: each lies there once, whichever of them name it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Generator, Iterable
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_pieces import size_of
from desktop_app.shop_record.photos.photo_files import PhotoFiles, let_go, sync_folder
from desktop_app.shop_record.photos.photos_fetched import fetched_again
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

BACKING_UP = tr("Backing the shop up")
_HANDS = 4  # photos in work at once: while the disk takes one in, others are copied and read
_DAYS_ROUND = 30  # in so many days each photo that lies there is read again once


def share_photos(
    shop: Path, base: Path, photos: Iterable[str], now: datetime, *, in_a_hurry: bool = False
) -> Generator[Step, None, dict[str, int | None]]:
    """See that photos of a shop, said by SHA-256, lie below `base`; those that are not are copied.

    `in_a_hurry` they become a second name of the same file where the disk can do that, and are only
    read; the next time that is not in a hurry they are copied. Returns the size of each in bytes;
    None where it is gone or damaged in the shop too.
    """
    wanted, kept = list(photos), PhotoFiles(base / "photos")
    new = {kept.path(sha256).parent for sha256 in wanted if not kept.path(sha256).exists()}
    sizes: dict[str, int | None] = {}
    with ThreadPoolExecutor(_HANDS) as hands:
        try:
            look_on = None if in_a_hurry else now.toordinal() % _DAYS_ROUND
            shared = hands.map(lambda sha256: _share(shop, kept, sha256, look_on), wanted)
            for sha256, size in zip(wanted, shared, strict=True):
                yield Step(10 + 90 * len(sizes) // len(wanted), 100, BACKING_UP)
                sizes[sha256] = size
        finally:
            hands.shutdown(cancel_futures=True)
    for folder in filter(Path.is_dir, {*new, kept.folder, base}):
        sync_folder(folder)  # all at once: only the first of them takes its time
    return sizes


def _share(shop: Path, kept: PhotoFiles, sha256: str, look_on: int | None) -> int | None:
    """See that a photo lies among the shared ones; its size, or None where none can be had.

    One that lies there is believed by its size, and read again once in some weeks: on the day
    `look_on` of them, None in a hurry.
    """
    ours, theirs = kept.path(sha256), PhotoFiles(shop / "photos").path(sha256)
    same = size_of(ours) is not None and size_of(ours) == size_of(theirs)
    linked = same and look_on is not None and ours.samefile(theirs)
    if same and not linked and int(sha256[:4], 16) % _DAYS_ROUND != look_on:
        return size_of(ours)
    if look_on is None and not ours.exists():
        _link(theirs, ours)
    if not linked and kept.is_whole(sha256):
        return size_of(ours)
    if size_of(theirs) is None:
        return None
    try:
        _copy(theirs, ours)
    except OSError:
        if PhotoFiles(shop / "photos").is_whole(sha256) is None:
            return None  # it can't be read
        raise
    if kept.is_whole(sha256):
        return size_of(ours)
    let_go(ours)
    ours.unlink()
    if fetched_again(shop, sha256):
        return _share(shop, kept, sha256, look_on)
    if PhotoFiles(shop / "photos").is_whole(sha256):
        raise ShopTrouble(
            tr("{file} does not hold what was written to it.", file=ours),
            kept=tr("No backup was made."),
            do=tr("Use another disk, and have this one looked at."),
        )
    return None


def _link(source: Path, to: Path) -> None:
    """Let a photo that the shop keeps lie in a second place too, where the disk can do that."""
    if size_of(source) is not None:
        with suppress(OSError):
            to.parent.mkdir(parents=True, exist_ok=True)
            os.link(source, to)


def _copy(source: Path, to: Path) -> None:
    """Put a copy on the disk, under its name only when it is there; its folder is synced later."""
    part = to.with_suffix(".tmp")
    to.parent.mkdir(parents=True, exist_ok=True)
    let_go(part)
    shutil.copyfile(source, part)
    with part.open("rb+") as file:
        os.fsync(file.fileno())
    let_go(to)
    part.replace(to)
    to.chmod(0o444)
    with suppress(OSError):
        source.chmod(0o444)  # what gave way may have been a second name of it
