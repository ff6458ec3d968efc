"""Which entries of a history are taken back at its end: an undo can be undone itself."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol


class Reversing(Protocol):
    """An entry by its number, and that of the entry which it takes back, if it takes one back."""

    @property
    def seq(self) -> int: ...

    @property
    def reverses(self) -> int | None: ...


def taken_back_among(oldest_first: Sequence[Reversing]) -> set[int]:
    """Return the numbers of the entries that a later one takes back that holds itself."""
    gone: set[int] = set()
    for entry in reversed(oldest_first):
        if entry.reverses is not None and entry.seq not in gone:
            gone.add(entry.reverses)
    return gone
