"""How far a long piece of work is, counted on a terminal while it lasts."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from time import monotonic

EVERY_SECONDS = 1.0


@contextmanager
def counting(name: str) -> Iterator[Callable[[int, int], None]]:
    """Give what hears how many marks of how many are done, and counts them in one line.

    Nothing is said in the first second, nor where standard error is no terminal; the line is wiped
    off at the end, before anything else is said.
    """
    terminal = sys.stderr is not None and sys.stderr.isatty()
    said_at, shown = monotonic(), ""

    def hear(so_far: int, of: int) -> None:
        nonlocal said_at, shown
        if terminal and monotonic() - said_at >= EVERY_SECONDS:
            said_at, shown = monotonic(), f"{' '.join(name.split())[:60]}: {so_far} of {of} marks"
            print(f"\r{shown}", end="", file=sys.stderr, flush=True)

    try:
        yield hear
    finally:
        if shown:
            print(f"\r{' ' * len(shown)}\r", end="", file=sys.stderr, flush=True)
