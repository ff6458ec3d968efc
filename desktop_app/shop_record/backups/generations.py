"""Generations of backups: one a day in a folder, which share the photos that they have in common.

Below the folder lie `photos/` and, for each generation, a folder with its record and its manifest,
named by its moment. A folder without a manifest is none. Others are made before something that
changes much; they carry the reason.
"""

from __future__ import annotations

import os
import platform
import re
import shutil
from collections.abc import Generator, Iterator
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import (
    MANIFEST,
    RECORD,
    Manifest,
    Member,
    photo_name,
)
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.backup_pieces import (
    agrees,
    copy_record,
    manifest_of,
    own_kinds,
    photo_names,
    sweep,
    told_of_disk,
)
from desktop_app.shop_record.backups.backup_turn import my_turn
from desktop_app.shop_record.backups.generations_kept import which_stay
from desktop_app.shop_record.backups.shared_photos import BACKING_UP, share_photos
from desktop_app.shop_record.photos.photo_files import PhotoFiles, let_go, sync_folder
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

_STAMP = "%Y-%m-%d-%H%M%S"
_NAME = re.compile(r"(\d{4}-\d\d-\d\d-\d{6})(?:-(\d{1,3}))?")  # the second of one second is -2


@dataclass(frozen=True, slots=True)
class GenerationMade:
    """A generation that was held whole, and how many older ones went for it."""

    folder: Path
    manifest: Manifest
    gone: int


def generations_in(base: Path) -> list[tuple[datetime, Path]]:
    """Return the finished generations of a folder, the oldest first; moments have no offset."""
    found = []
    for manifest in base.glob(f"*/{MANIFEST}") if base.is_dir() else ():
        if name := _NAME.fullmatch(manifest.parent.name):
            with suppress(ValueError):
                moment = datetime.strptime(name[1], _STAMP)  # noqa: DTZ007
                found.append((moment, int(name[2] or 1), manifest.parent))
    return [(moment, folder) for moment, _, folder in sorted(found)]


def make_generation(
    shop: Path, base: Path, now: datetime, reason: str = ""
) -> Generator[Step, None, GenerationMade]:
    """Back a shop up below `base`: its record anew, of its photos only those not there yet.

    What was written is read again; the manifest comes last. Then older generations that need not
    stay go, and the photos that only they had. One at a time: who comes second waits. With a
    `reason` ("before an import") it is made in a hurry: photos that are not there yet are linked,
    where the disk can, and copied with the next one. Raises ShopTrouble as a backup does.
    """
    with told_of_disk(tr("The backup in {base}", base=base)):
        base.mkdir(exist_ok=True)
        with (yield from my_turn(base, waits=True)):
            return (yield from generation_in_turn(shop, base, now, reason))


def generation_in_turn(
    shop: Path, base: Path, now: datetime, reason: str = ""
) -> Generator[Step, None, GenerationMade]:
    """Do what `make_generation` does, for who has the turn at the folder already."""
    sweep(base, ".being-made-*")
    here = re.sub(r"[^\w-]", "", platform.node())[:30]  # another computer may do so there too
    beside = base / f".being-made-{here}-{os.getpid()}"
    beside.mkdir()
    try:
        yield Step(0, 100, BACKING_UP)
        manifest = yield from _fill(shop, base, beside, now, reason)
        folder = _free_name(base, now)
        beside.rename(folder)
        sync_folder(base)
    finally:
        shutil.rmtree(beside, ignore_errors=True)
    return GenerationMade(folder, manifest, _thin_out(base, now))


def take_away(folder: Path) -> None:
    """Take a generation away that nobody needs; its photos go with the next thinning out."""
    with suppress(OSError):
        (folder / MANIFEST).unlink()  # from now on it is none
        shutil.rmtree(folder)


def _free_name(base: Path, now: datetime) -> Path:
    folder, number = base / now.strftime(_STAMP), 1
    while folder.exists():
        number += 1
        folder = base / f"{now.strftime(_STAMP)}-{number}"
    return folder


def _fill(
    shop: Path, base: Path, beside: Path, now: datetime, reason: str
) -> Generator[Step, None, Manifest]:
    facts, record = yield from copy_record(shop, beside / RECORD)
    members, missing = [record], list[str]()
    for member, content in own_kinds(shop):
        (beside / member.name).parent.mkdir(exist_ok=True)
        _write(beside / member.name, content)
        members.append(member)
    names = photo_names(shop, facts)
    sizes = yield from share_photos(shop, base, names, now, in_a_hurry=bool(reason))
    for sha256, size in sizes.items():
        if size is None:
            missing.append(sha256)
        else:
            members.append(Member(photo_name(sha256), sha256, size))
    manifest = manifest_of(facts, members, missing, now, reason)
    if wrong := agrees(manifest, facts):
        raise ShopTrouble(tr("The backup was not made: {why}.", why=wrong), do=tr("Try again."))
    _write(beside / MANIFEST, manifest.as_bytes())
    sync_folder(beside)
    return manifest


def _write(path: Path, content: bytes) -> None:
    with path.open("xb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())


def _thin_out(base: Path, now: datetime) -> int:
    """Take away what need not stay; whatever can't be taken away today goes another day."""
    made = generations_in(base)
    stay = which_stay((moment for moment, _ in made), now.replace(tzinfo=None))
    going = [folder for moment, folder in made if moment not in stay]
    for folder in going:
        take_away(folder)
    if going and not any(base.glob(".being-made-*")):
        _forget_photos(base)
    return len(going)


def _forget_photos(base: Path) -> None:
    """Take the photos away that no generation names; none where one can't be asked."""
    named: set[str] = set()
    try:
        for manifest in manifests_in(base):
            named |= {one.sha256 for one in manifest.members}
    except ShopTrouble:
        return
    photos = PhotoFiles(base / "photos")
    for sha256 in photos.all_names():
        if sha256 not in named:
            let_go(photos.path(sha256))
            with suppress(OSError):
                photos.path(sha256).unlink()


def manifests_in(base: Path) -> Iterator[Manifest]:
    """Give what each finished generation says, the newest first."""
    for _, folder in reversed(generations_in(base)):
        yield open_backup(folder).manifest
