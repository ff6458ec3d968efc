"""What a shop consists of, for a backup: its record copied, its photos and own kinds listed."""

from __future__ import annotations

import hashlib
import os
import shutil
import time
from collections.abc import Generator, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, suppress
from datetime import datetime
from glob import escape
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import (
    MOST_BYTES,
    RECORD,
    Manifest,
    Member,
    photo_name,
    refused_name,
    sorted_members,
)
from desktop_app.shop_record.databases.dialect_snapshot import (
    RecordFacts,
    read_facts,
    snapshot_steps,
)
from desktop_app.shop_record.own_program.own_version import made_by
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

KINDS = "part_kinds"
GIVEN_UP_S = 86_400


def copy_record(
    shop: Path, to: Path, *, stays: bool = True
) -> Generator[Step, None, tuple[RecordFacts, Member]]:
    """Copy a shop's record while others work on it and check the copy.

    One that stays is on the disk when this returns. Raises ShopDamaged where the record itself is
    not whole: such a backup would not be a good one.
    """
    yield from snapshot_steps(shop / RECORD, to)
    with ThreadPoolExecutor(1) as beside:  # the disk is waited for while the copy is read
        hashed = beside.submit(_hash_on_disk if stays else _hash, to)
        try:
            facts = read_facts(to, wholly=False)
        except ShopDamaged as damage:
            raise ShopDamaged(
                tr("The shop's record is damaged: {what}.", what=damage.what),
                kept=tr("No backup was made of it; those that were made before stay."),
                do=tr("See what “benchwitness check” says, and go back to your last good backup."),
            ) from damage
        return facts, Member(RECORD, hashed.result(), to.stat().st_size)


def _hash(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _hash_on_disk(path: Path) -> str:
    """Return the SHA-256 of a file, once it is on the disk."""
    with path.open("rb+") as file:
        os.fsync(file.fileno())
    return _hash(path)


def photo_names(shop: Path, facts: RecordFacts) -> list[str]:
    """Return the SHA-256 of every kept photo, and of every one that the record names.

    Also of those that no row names any more: an undo would bring them back.
    """
    kept = PhotoFiles(shop / "photos").all_names()
    lie_there = {name for name in kept if refused_name(photo_name(name)) is None}
    return sorted(lie_there | facts.photos)


def size_of(path: Path) -> int | None:
    """Return the size of a photo in bytes; None where it is gone or longer than any photo."""
    try:
        size = path.stat().st_size
    except OSError:
        return None
    return size if path.is_file() and size <= MOST_BYTES["photos/"] else None


def read_photo(path: Path) -> bytes | None:
    """Return the bytes of a photo; None where it is gone or can't be read, or too long for one."""
    if size_of(path) is None:
        return None
    try:
        return path.read_bytes()
    except OSError:
        return None


def own_kinds(shop: Path) -> Iterator[tuple[Member, bytes]]:
    """Give the part kinds that the shop brought as files.

    Raises ShopTrouble for one whose name not every disk can keep, or that is too long.
    """
    folder, most = shop / KINDS, MOST_BYTES["part_kinds/"]
    for path in sorted(folder.glob("*.toml")) if folder.is_dir() else ():
        name = f"{KINDS}/{path.name}"
        with path.open("rb") as file:
            content = file.read(most + 1)
        if refused_name(name) or len(content) > most:
            raise ShopTrouble(
                tr("{path} can't be taken into a backup.", path=path),
                kept=tr("No backup was made."),
                do=tr("Give it a name of letters, figures, “-” and “_”, and at most 1 MB."),
            )
        yield Member(name, hashlib.sha256(content).hexdigest(), len(content)), content


def manifest_of(
    facts: RecordFacts,
    members: Iterable[Member],
    missing: Iterable[str],
    now: datetime,
    reason: str = "",
) -> Manifest:
    """Return the manifest of a backup that was made now; `missing` are photos, by SHA-256."""
    return Manifest(
        shop=facts.shop,
        made_at=now.isoformat(timespec="seconds"),
        program=made_by(),
        record_form=facts.record_form,
        entries=facts.entries,
        head=facts.head,
        members=sorted_members(tuple(members)),
        missing_photos=tuple(missing),
        reason=reason,
        jobs=facts.jobs,
        last_at=facts.last_at[:200],
    )


def agrees(manifest: Manifest, facts: RecordFacts) -> str | None:
    """Say where a record and the manifest beside it disagree; None where they don't."""
    said = (manifest.shop, manifest.record_form, manifest.entries, manifest.head)
    if said != (facts.shop, facts.record_form, facts.entries, facts.head):
        return tr("its record is another one than its manifest says")
    listed = {one.sha256 for one in manifest.members if one.name.startswith("photos/")}
    for sha256 in sorted(facts.photos - listed - set(manifest.missing_photos)):
        return tr("a photo that the record names is not in it ({sha256})", sha256=sha256[:12])
    return None


@contextmanager
def unfinished(to: Path, doing: str) -> Iterator[Path]:
    """Give a new folder beside a place for what is not finished; it goes with the block.

    What a program that was killed left of the same name goes first.
    """
    sweep(to.parent, f".{escape(to.name)}.{doing}-*")
    folder = to.with_name(f".{to.name}.{doing}-{os.getpid()}")
    folder.mkdir()
    try:
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def sweep(folder: Path, pattern: str) -> None:
    """Take away what a program that was killed more than a day ago has left half done."""
    for left in folder.glob(pattern):
        with suppress(OSError):
            if time.time() - left.stat().st_mtime > GIVEN_UP_S:
                shutil.rmtree(left, ignore_errors=True)


@contextmanager
def told_of_disk(what: str) -> Iterator[None]:
    """Turn what a disk refuses into words; `what` begins the sentence: "The backup X"."""
    try:
        yield
    except OSError as error:
        raise ShopTrouble(
            tr("{what} was not written: {error}.", what=what, error=error.strerror or error),
            kept=tr("Nothing half done was left; the shop is as it was."),
            do=tr("Make room, look at the disk, or name another place."),
        ) from error
