"""What is being written for a long time, told to whoever wants the record meanwhile.

Who writes holds the database's own lock; a file beside the record only says in words what for, and
counts as long as whoever wrote it holds it: one that a killed program left behind says nothing.
"""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from types import TracebackType
from typing import BinaryIO

from desktop_app.shop_record.own_program.held_file import hold, is_held

FILE_NAME = "shop-under-way.txt"
_MOST = 200


class LongWriting:
    """Says from `say` on, which is called with the lock held, what is under way; till its end."""

    def __init__(self, folder: Path) -> None:
        self._file = folder / FILE_NAME
        self._held: BinaryIO | None = None

    def say(self, words: str) -> None:
        """Tell the others, as a sentence begins: "Import jobs.csv"."""
        with suppress(OSError):  # they are told less, and the work goes on
            self._held = hold(self._file, " ".join(words.split())[:_MOST].encode())

    def __enter__(self) -> LongWriting:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        traceback: TracebackType | None,
    ) -> None:
        if self._held is not None:
            self._held.close()
            forget(self._file.parent)


def under_way(folder: Path) -> str:
    """Return what somebody alive says to be under way in a shop, or nothing."""
    file = folder / FILE_NAME
    try:
        with file.open(encoding="utf-8", errors="replace") as told:
            words = told.read(_MOST)
    except OSError:
        return ""
    return words if words and is_held(file) else ""


def forget(folder: Path) -> None:
    """Take away what was said by somebody who is gone."""
    file = folder / FILE_NAME
    if file.exists() and not is_held(file):
        with suppress(OSError):
            file.unlink()
