"""A closed line cut where it is drawn in another way: whole here, dotted there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby


def stretches(dotted: Sequence[bool]) -> Iterator[tuple[bool, list[int]]]:
    """Yield for each stretch of a closed line whether it is dotted, and the numbers of its points.

    A stretch ends in the first point of the next one, so that nothing gapes between two.
    """
    count = len(dotted)
    if not count:
        return
    first = next((n for n in range(count) if dotted[n] != dotted[n - 1]), 0)
    order = [(first + n) % count for n in range(count)]
    for is_dotted, numbers in groupby(order, key=lambda number: bool(dotted[number])):
        run = list(numbers)
        yield is_dotted, [*run, (run[-1] + 1) % count]
