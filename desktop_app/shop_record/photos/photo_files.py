"""The photo files: kept as they came, named by their SHA-256, on disk before any row names them."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble

MARK = "whose-photos.txt"  # in a folder that several computers reach
_AT_ONCE = 1 << 23  # bytes: most photos, so that threads that read them seldom wait for others


class PhotoFiles:
    """The folder of originals: `photos/ab/abcd…` with the file's hash as its name."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    @property
    def home(self) -> Path:
        """The folder whose `trash` takes what is set aside."""
        return self.folder.parent

    def away(self) -> ShopTrouble | None:
        """Return what to say where the photos can't be reached now; None where they can."""
        return None

    def path(self, sha256: str) -> Path:
        """Return where the original with this hash is kept."""
        return self.folder / sha256[:2] / sha256

    def called(self, sha256: str) -> str:
        """Return what an original is called where something is wrong with it."""
        return tr("The photo file {path}", path=f"{self.folder.name}/{sha256[:2]}/{sha256}")

    def keep(self, content: bytes) -> str:
        """Put the bytes safely on disk and return their SHA-256 as hex.

        Order: temporary file, fsync, rename, fsync of the folder, so that a power cut leaves either
        the whole photo or none. Raises ShopTrouble when the disk refuses.
        """
        name = hashlib.sha256(content).hexdigest()
        final = self.path(name)
        if self.is_whole(name):
            return name
        beside = final.with_suffix(".tmp")
        try:
            self._make_folder(final.parent)
            with beside.open("wb") as file:
                file.write(content)
                file.flush()
                os.fsync(file.fileno())
            let_go(final)  # a damaged one gives way
            beside.replace(final)
            final.chmod(0o444)
            sync_folder(final.parent)
        except OSError as error:
            beside.unlink(missing_ok=True)
            raise NotSaved(
                tr("The photo was not saved: {error}.", error=error.strerror or error),
                kept=tr("The job is as it was."),
                do=tr("Make room or ask for the right to write, then add the photo again."),
                again=tr("Make room or ask for the right to write, and try again."),
            ) from error
        return name

    def read(self, sha256: str) -> bytes:
        """Return the original bytes; a ShopTrouble where the file is gone."""
        try:
            return self.path(sha256).read_bytes()
        except OSError as error:
            raise ShopTrouble(
                tr("The photo {sha256} is not in the shop's folder any more.", sha256=sha256[:12]),
                do=tr("Bring the file back from your last copy of the folder."),
            ) from error

    def is_whole(self, sha256: str) -> bool | None:
        """Tell whether the file still has its hash: None where it is missing or can't be read."""
        digest = hashlib.sha256()
        try:
            with self.path(sha256).open("rb", buffering=0) as file:
                while piece := file.read(_AT_ONCE):
                    digest.update(piece)
        except OSError:
            return None
        return digest.hexdigest() == sha256

    def all_names(self) -> Iterator[str]:
        """Yield the names of all kept files."""
        if self.folder.is_dir():
            for path in sorted(self.folder.glob("??/*")):
                yield path.name

    def _make_folder(self, folder: Path) -> None:
        for each in (self.folder, folder):
            if not each.is_dir():
                each.mkdir(exist_ok=True)
                sync_folder(each.parent)


def let_go(path: Path) -> None:
    """Let a kept file, if there is one, be replaced or deleted: Windows does so with none that may
    only be read; elsewhere that needs no right to write the file, which may be another user's.
    """
    with suppress(OSError):
        path.chmod(0o644)


def sync_folder(folder: Path) -> None:
    """Make a rename durable; folders cannot be synced on Windows, where it is not needed."""
    if os.name == "nt":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
