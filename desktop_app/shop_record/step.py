"""How far a long piece of work has come."""

from __future__ import annotations

from collections.abc import Generator
from typing import NamedTuple, TypeVar

Came = TypeVar("Came")


class Step(NamedTuple):
    """`done` of `of` pieces are behind us, and a word about what comes now."""

    done: int
    of: int
    words: str


def walked(steps: Generator[Step, None, Came]) -> Came:
    """Do a long piece of work to its end, telling nobody how far it has come."""
    while True:
        try:
            next(steps)
        except StopIteration as end:
            came: Came = end.value
            return came
