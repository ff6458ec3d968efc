"""The file of a shop's word index: opened without copying, replaced as a whole, never trusted.

Several programs may have the shop open: each writes under a name of its own and renames it when
it is whole. A file that can't be used is taken away; so is any but the newest.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import NamedTuple
from uuid import uuid4

from desktop_app.symptom_search.word_index.arrays import Arrays
from desktop_app.symptom_search.word_index.packing import (
    HEAD,
    NotAnIndex,
    facts_of,
    is_whole,
    pack,
    unpack,
)

FOLDER = "ask-index"
_ENDING, _UNFINISHED = ".arrays", ".unfinished"


class Made(NamedTuple):
    """The deed after which an index was made: its number, and the hash of its entry."""

    seq: int
    hash: str


class IndexFiles:
    """The folder of a shop in which its index lies."""

    def __init__(self, shop: Path) -> None:
        self._folder = shop / FOLDER

    def open(self, hash_at: Callable[[int], str]) -> tuple[Arrays, Made] | None:
        """Return the newest index that was made from this record, or None.

        `hash_at` gives the hash of an entry of the record's history.
        """
        import numpy as np

        for path in self._newest_first():
            try:
                with path.open("rb") as file:
                    facts = facts_of(file.read(HEAD))
                made = Made(int(facts["seq"]), str(facts["hash"]))
                if made.hash == hash_at(made.seq):
                    return unpack(np.memmap(path, np.uint8, "r")), made
            except (OSError, NotAnIndex, KeyError, ValueError):
                pass
            _take_away(path)
        return None

    def keep(self, arrays: Arrays, made: Made) -> Arrays:
        """Write the index; return it as it is read from the file, or as it is where that fails.

        A full disk or a folder that can't be written costs only the next start some time.
        """
        import numpy as np

        path = self._folder / f"{made.seq:012d}{_ENDING}"
        unfinished = path.with_name(f"{uuid4().hex}{_UNFINISHED}")
        try:
            self._folder.mkdir(exist_ok=True)
            with unfinished.open("wb") as file:
                for piece in pack(arrays, {"seq": made.seq, "hash": made.hash}):
                    file.write(piece)
                file.flush()
                os.fsync(file.fileno())
            unfinished.replace(path)
            kept = unpack(np.memmap(path, np.uint8, "r"))
        except (OSError, NotAnIndex):
            _take_away(unfinished)
            return arrays
        for other in self._newest_first():
            if other != path:
                _take_away(other)
        return kept

    def torn(self) -> list[Path]:
        """Return the files that are not as they were written; nothing is taken away."""
        import numpy as np

        found = []
        for path in self._newest_first():
            try:
                if not is_whole(np.memmap(path, np.uint8, "r")):
                    found.append(path)
            except (OSError, ValueError):  # empty, or it can't be read
                found.append(path)
        return found

    def _newest_first(self) -> list[Path]:
        if not self._folder.is_dir():
            return []
        return sorted(self._folder.glob(f"*{_ENDING}"), reverse=True)


def _take_away(path: Path) -> None:
    with suppress(OSError):  # another program may have it open, or have taken it away
        path.unlink()
