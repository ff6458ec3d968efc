"""The in-tray: photos from phones, on disk before they are acknowledged, until they have a place.

A photo lies there as `<SHA-256>.<place>`: its bytes, and behind them a note with what it was called
and meant for, so that both reach the disk at once. Names are made here; nothing that a phone sends
becomes one.
"""

from __future__ import annotations

import hashlib
import json
import os
import re
import secrets
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.part_photos.photo_trouble import shown_name
from desktop_app.shop_record.photos.photo_files import sync_folder
from desktop_app.shop_record.trouble import ShopTrouble

FOLDER = "phone-tray"
TRASH = "trash"  # the folder of leftovers, which is above what a rule may load
NOWHERE = "none"
_NAME = re.compile(r"([0-9a-f]{64})\.(none|[0-9a-f]{16}\.[01]\.[0-9]{1,2})")
_HALF = ".tmp"
_LONGEST = 300  # letters of a place's words
_LONGEST_NOTE = 1 << 14  # bytes; letters beyond ASCII take up to twelve
_MARK = b"bench-note"  # ends the file, after the note and its length in four bytes
_END = len(_MARK) + 4


class Coming:
    """A photo on its way into the tray. What the disk refuses is said by `keep`, once."""

    def __init__(self, shop: Path, folder: Path) -> None:
        self._beside = folder / f"{secrets.token_hex(8)}{_HALF}"
        self._file: BinaryIO | None = None
        self._refused: OSError | None = None
        try:
            if not folder.is_dir():
                folder.mkdir(exist_ok=True)
                sync_folder(shop)
            self._file = self._beside.open("wb")
        except OSError as error:
            self._refused = error

    def write(self, piece: bytes | memoryview) -> None:
        """Write what came; the disk has it the sooner."""
        if self._file is not None and self._refused is None:
            try:
                self._file.write(piece)
            except OSError as error:
                self._refused = error

    def keep(self, sha256: str, place: str, called: str, meant: str) -> str:
        """Put it safely on disk and return its name in the tray; the same one lies there once.

        Raises OSError where the disk refuses; nothing is left behind then.
        """
        self.write(_note(called, meant))
        if self._refused is not None or self._file is None:
            raise self._refused or OSError("not open")
        name = f"{sha256}.{place}"
        self._file.flush()
        os.fsync(self._file.fileno())
        self._file.close()
        self._beside.replace(self._beside.with_name(name))
        sync_folder(self._beside.parent)
        return name

    def close(self) -> None:
        """Take away what was not kept."""
        with suppress(OSError):
            if self._file is not None:
                self._file.close()
            self._beside.unlink(missing_ok=True)


@dataclass(frozen=True, slots=True)
class Waiting:
    """A photo in the tray: `name` there, its hash, the place in it, what the note says."""

    name: str
    sha256: str
    place: str
    called: str
    meant: str


class InTray:
    """The folder in the shop's folder; made when the first photo comes."""

    def __init__(self, shop: Path) -> None:
        self._shop = shop
        self.folder = shop / FOLDER

    @contextmanager
    def coming(self) -> Iterator[Coming]:
        """Give a file that a photo is written to while it comes; gone again unless it was kept."""
        coming = Coming(self._shop, self.folder)
        try:
            yield coming
        finally:
            coming.close()

    def waiting(self) -> list[Waiting]:
        """Return what lies in the tray, in the order in which it came; other files are passed."""
        found = []
        with suppress(FileNotFoundError):
            for path in self.folder.iterdir():
                if _NAME.fullmatch(path.name):
                    with suppress(OSError):  # it went meanwhile
                        found.append((path.stat().st_mtime_ns, path.name))
        return [self.one(name) for _, name in sorted(found)]

    def one(self, name: str) -> Waiting:
        """Return what is known of a photo in the tray."""
        sha256, _, place = name.partition(".")
        try:
            note = json.loads(_parted(self._tail(name))[1])
            called, meant = str(note["called"]), str(note["meant"])
        except (OSError, ValueError, TypeError, KeyError):
            called, meant = "photo", ""  # a note that was lost costs no photo
        return Waiting(name, sha256, place, shown_name(called), meant[:_LONGEST])

    def holds(self, name: str) -> bool:
        """Tell whether a photo is still in the tray."""
        return (self.folder / name).is_file()

    def read(self, name: str) -> bytes:
        """Return a photo's bytes as they came. Raises ShopTrouble where they are not that."""
        sha256 = name.partition(".")[0]
        try:
            content = _parted((self.folder / name).read_bytes())[0]
        except OSError as error:
            raise ShopTrouble(
                tr(
                    "A photo from the phone can't be read: {reason}.",
                    reason=error.strerror or error,
                ),
                do=tr("Look into the folder {folder}, or send it again.", folder=self.folder),
            ) from error
        if hashlib.sha256(content).hexdigest() != sha256:
            raise ShopTrouble(
                tr("A photo from the phone was damaged on this computer's disk."),
                kept=tr("What is left of it lies in {folder}.", folder=self.folder),
                do=tr("Send it from the phone again."),
            )
        return content

    def let_go(self, name: str) -> None:
        """Take a photo out that is kept elsewhere by now."""
        with suppress(OSError):  # it is looked at again with the next start
            (self.folder / name).unlink(missing_ok=True)

    def throw_away(self, name: str, now: datetime) -> None:
        """Move a photo into the shop's trash. Raises ShopTrouble where the disk refuses."""
        to = self._shop / TRASH / now.strftime("%Y-%m-%d-%H%M%S") / FOLDER
        try:
            note = len(_parted(self._tail(name))[1])
            to.mkdir(parents=True, exist_ok=True)
            (self.folder / name).replace(to / name)
            if note:
                os.truncate(to / name, (to / name).stat().st_size - note - _END)
        except OSError as error:
            raise ShopTrouble(
                tr("The photo was not thrown away: {reason}.", reason=error.strerror or error),
                kept=tr("It is there."),
            ) from error

    def sweep(self) -> None:
        """Take out what was half written when the program stopped; call it when nobody sends."""
        with suppress(OSError):
            for path in self.folder.glob(f"*{_HALF}"):
                path.unlink(missing_ok=True)

    def _tail(self, name: str) -> bytes:
        with (self.folder / name).open("rb") as file:
            file.seek(max(0, file.seek(0, os.SEEK_END) - _LONGEST_NOTE))
            return file.read()


def _note(called: str, meant: str) -> bytes:
    """Return what stands behind a photo's bytes."""
    said = json.dumps({"called": shown_name(called), "meant": meant[:_LONGEST]}).encode("ascii")
    return said + len(said).to_bytes(4, "big") + _MARK


def _parted(content: bytes) -> tuple[bytes, bytes]:
    """Return a photo's bytes and its note; without a whole note all of them are the photo's."""
    length = int.from_bytes(content[-_END : -len(_MARK)], "big") + _END
    if not content.endswith(_MARK) or length > len(content):
        return content, b""
    return content[:-length], content[-length:-_END]
