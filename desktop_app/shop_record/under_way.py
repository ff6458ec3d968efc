"""What is being written for a long time, told to whoever wants the record meanwhile.

Who writes holds the database's own lock; a file beside the record only says in words what for. One
that a killed program left behind costs nothing: whoever gets the lock takes it away.
"""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from types import TracebackType

FILE_NAME = "shop-under-way.txt"
_MOST = 200


class LongWriting:
    """Says from `say` on, which is called with the lock held, what is under way; till its end."""

    def __init__(self, folder: Path) -> None:
        self._file = folder / FILE_NAME
        self._said = False

    def say(self, words: str) -> None:
        """Tell the others, as a sentence begins: "Import jobs.csv"."""
        self._said = True
        with suppress(OSError):  # they are told less, and the work goes on
            self._file.write_text(" ".join(words.split())[:_MOST], encoding="utf-8")

    def __enter__(self) -> LongWriting:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        traceback: TracebackType | None,
    ) -> None:
        if self._said:
            forget(self._file.parent)


def under_way(folder: Path) -> str:
    """Return what was said to be under way in a shop, or nothing."""
    try:
        with (folder / FILE_NAME).open(encoding="utf-8", errors="replace") as file:
            return file.read(_MOST)
    except OSError:
        return ""


def forget(folder: Path) -> None:
    """Take away what was said."""
    with suppress(OSError):
        (folder / FILE_NAME).unlink(missing_ok=True)
