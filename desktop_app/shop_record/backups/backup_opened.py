"""A backup opened to be read: an archive or a generation, each member held against the manifest."""

from __future__ import annotations

import hashlib
import zlib
from collections.abc import Generator, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO, Protocol

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import (
    MANIFEST,
    MOST_MANIFEST,
    Manifest,
    Member,
    read_manifest,
    refused,
)
from desktop_app.shop_record.backups.backup_zip import WRONG_ZIP, read_contents
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

PIECE = 1 << 20
SIDE_BY_SIDE = 2  # members that are read at once


class OpenBackup(Protocol):
    """A backup that is open; `manifest` was checked, its members were not."""

    @property
    def manifest(self) -> Manifest: ...

    def open(self, member: Member) -> BinaryIO: ...


def open_backup(place: Path) -> OpenBackup:
    """Open an archive, or the folder of a generation; a ShopTrouble says why it can't be used."""
    with _told_of_reading(place):
        return _opened(place)


def _opened(place: Path) -> OpenBackup:
    if place.is_dir():
        return Generation(place)
    if not place.is_file():
        raise ShopTrouble(
            tr("There is no backup {place}.", place=place),
            do=tr("Accepted: a file that “backup” wrote."),
        )
    return Archive(place)


@contextmanager
def _told_of_reading(what: object) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise ShopTrouble(
            tr("{what} cannot be read: {error}.", what=what, error=error.strerror or error),
            do=tr("Look at its disk."),
        ) from error
    except WRONG_ZIP as error:
        raise refused(
            tr("what stands in it can't be read ({error})", error=str(error)[:100])
        ) from error


class Archive:
    """One file with everything in it, nothing of it packed: it can't swell when it is read.

    Where the bytes of each member lie is known once the seal has held; they are held by the
    manifest, all that stands between them by the seal.
    """

    def __init__(self, place: Path) -> None:
        self._place = place
        with place.open("rb") as file:
            infos, self._begins = read_contents(file)
            info = infos[MANIFEST]
            if info.file_size > MOST_MANIFEST:
                raise refused(tr("{manifest} is longer than that of any backup", manifest=MANIFEST))
            file.seek(self._begins[MANIFEST])
            content = file.read(info.file_size)
        if zlib.crc32(content) != info.CRC:
            raise refused(
                tr("{manifest} is not as it was written (its checksum differs)", manifest=MANIFEST)
            )
        self.manifest = read_manifest(content)
        sizes = {one.name: one.size for one in self.manifest.members}
        for name in sorted(sizes.keys() - infos):
            raise refused(tr("{name} is missing from it", name=name))
        for name in sorted(infos.keys() - sizes - {MANIFEST}):
            raise refused(
                tr("it holds {name}, which {manifest} doesn't list", name=name, manifest=MANIFEST)
            )
        for name, size in sizes.items():
            if infos[name].file_size != size:
                raise refused(
                    tr("{name} has another size than {manifest} says", name=name, manifest=MANIFEST)
                )

    def open(self, member: Member) -> BinaryIO:
        """Open the backup where the bytes of a member begin."""
        file = self._place.open("rb")
        file.seek(self._begins[member.name])
        return file


class Generation:
    """A folder with a record and its manifest; the photos lie beside it, shared with others."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        manifest = folder / MANIFEST
        if not manifest.is_file():
            raise refused(
                tr(
                    "{folder} has no {manifest}; it was not finished, or is no backup",
                    folder=folder,
                    manifest=MANIFEST,
                )
            )
        with manifest.open("rb") as file:
            self.manifest = read_manifest(file.read(MOST_MANIFEST))

    def open(self, member: Member) -> BinaryIO:
        """Open a member's own file."""
        shared = member.name.startswith("photos/")
        path = (self._folder.parent if shared else self._folder) / member.name
        if path.is_symlink() or not path.is_file():
            raise refused(tr("{name} is missing from it", name=member.name))
        if path.stat().st_size != member.size:
            raise refused(
                tr(
                    "{name} has another size than {manifest} says",
                    name=member.name,
                    manifest=MANIFEST,
                )
            )
        return path.open("rb")


def pieces(backup: OpenBackup, member: Member) -> Iterator[bytes]:
    """Give the bytes of a member; a ShopTrouble at their end where they are not as written."""
    digest, left = hashlib.sha256(), member.size
    with (
        _told_of_reading(tr("{name} in the backup", name=member.name)),
        backup.open(member) as file,
    ):
        while left and (piece := file.read(min(PIECE, left))):
            left -= len(piece)
            digest.update(piece)
            yield piece
    if left or digest.hexdigest() != member.sha256:
        raise refused(
            tr("{name} is not as it was written (its checksum differs)", name=member.name)
        )


def is_whole(backup: OpenBackup, member: Member) -> bool:
    """Read a member and tell whether it is as the manifest says."""
    try:
        for _ in pieces(backup, member):
            pass
    except ShopTrouble:
        return False
    return True


def hold(backup: OpenBackup) -> Generator[Step, None, tuple[Member, ...]]:
    """Read every member once, some side by side; return those that are not as they were written."""
    done, of, wrong = 0, backup.manifest.size(), list[Member]()
    members = backup.manifest.members
    with ThreadPoolExecutor(SIDE_BY_SIDE) as readers:
        try:
            whole = readers.map(lambda member: is_whole(backup, member), members)
            for member, good in zip(members, whole, strict=True):
                if not good:
                    wrong.append(member)
                done += member.size
                yield Step(done, of, tr("Holding the backup against its checksums"))
        finally:
            readers.shutdown(cancel_futures=True)
    return tuple(wrong)
