"""The folder of an export: written beside its place, under its own name only when it is whole."""

from __future__ import annotations

import csv
import hashlib
import io
import os
import shutil
from collections.abc import Generator, Iterable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, BinaryIO

from desktop_app.language import tr
from desktop_app.records_exchanged.export_names import CHECKSUMS, with_whole_hash
from desktop_app.shop_record.trouble import ShopTrouble

_PIECE = 1 << 20
_MARK = "\ufeff"  # spreadsheet programs read the letters of a file right that begins so


class ExportFolder:
    """Files written one after another, each with its line of checksums (as `sha256sum -c` reads).

    `bytes_written` counts what all of them hold.
    """

    def __init__(self, folder: Path, checksums: BinaryIO) -> None:
        self.folder = folder
        self.files = 0
        self.bytes_written = 0
        self._checksums = checksums

    def write_rows(
        self, name: str, header: Sequence[str], pieces: Iterable[Iterable[Sequence[Any]]]
    ) -> Generator[int, None, int]:
        """Write a CSV file (RFC 4180, UTF-8); gives and returns how many rows it has so far."""
        count = 0
        with self._file(name) as write:
            text = io.StringIO(newline="")
            writer = csv.writer(text)
            text.write(_MARK)
            writer.writerow(header)
            for piece in pieces:
                rows = list(piece)
                writer.writerows(rows)
                write(text.getvalue().encode())
                text.seek(0)
                text.truncate()
                count += len(rows)
                yield count
            write(text.getvalue().encode())
        return count

    def write_whole(self, name: str, content: bytes) -> None:
        """Write a small file."""
        with self._file(name) as write:
            write(content)

    def copy_photo(self, source: Path, name: str, sha256: str) -> str | None:
        """Copy a photo and return the name it got; None where it is missing or not as it came.

        Where another photo has the name already it is called by the whole of its hash.
        """
        to = self.folder / name
        if to.exists():
            if _hash_of(to) == sha256:
                return name
            name = with_whole_hash(name, sha256)
            to = self.folder / name
            if to.exists():
                return name
        to.parent.mkdir(parents=True, exist_ok=True)
        digest, size = hashlib.sha256(), 0
        try:
            origin = source.open("rb")
        except OSError:
            return None
        with origin, to.open("xb") as copy:
            while piece := origin.read(_PIECE):
                digest.update(piece)
                copy.write(piece)
                size += len(piece)
        if digest.hexdigest() != sha256:
            to.unlink()
            return None
        self._count(name, sha256, size)
        return name

    @contextmanager
    def _file(self, name: str) -> Iterator[Any]:
        path, digest, size = self.folder / name, hashlib.sha256(), 0
        path.parent.mkdir(exist_ok=True)
        with path.open("xb") as file:

            def write(content: bytes) -> None:
                nonlocal size
                digest.update(content)
                file.write(content)
                size += len(content)

            yield write
        self._count(name, digest.hexdigest(), size)

    def _count(self, name: str, sha256: str, size: int) -> None:
        self._checksums.write(f"{sha256}  {name}\n".encode())
        self.files += 1
        self.bytes_written += size


def _hash_of(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


@contextmanager
def export_folder(to: Path) -> Iterator[tuple[ExportFolder, Path]]:
    """Give the folder to write into, and a place beside it for what is not part of it.

    It gets its own name when the block ends well; else nothing of it stays. Raises ShopTrouble
    where something lies there already, or nothing can be written.
    """
    beside = to.with_name(f".{to.name}.being-written-{os.getpid()}")
    try:
        _refuse_what_is_there(to)
        inside = beside / "export"
        inside.mkdir(parents=True)
        with (inside / CHECKSUMS).open("xb") as checksums:
            yield ExportFolder(inside, checksums), beside
        _refuse_what_is_there(to)
        if to.exists():
            to.rmdir()
        inside.rename(to)
    except OSError as error:
        raise ShopTrouble(
            tr(
                "The export {folder} was not written: {reason}.",
                folder=to,
                reason=error.strerror or error,
            ),
            kept=tr("The shop is as it was."),
            do=tr("Make room or name another place."),
        ) from error
    finally:
        shutil.rmtree(beside, ignore_errors=True)


def _refuse_what_is_there(to: Path) -> None:
    if to.exists() and (not to.is_dir() or any(to.iterdir())):
        raise ShopTrouble(
            tr("{folder} is there already and not empty.", folder=to),
            kept=tr("It was left as it is."),
            do=tr("Name a new or an empty folder."),
        )
