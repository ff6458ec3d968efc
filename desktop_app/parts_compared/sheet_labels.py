"""Where words stand on a printed picture: at its rim, off the marks, with a line to their mark."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

Spot = tuple[float, float]
Box = tuple[float, float, float, float]  # left, bottom, right, top

_STEP = 6.0  # points between the places that are tried
_CROSSED = 60.0  # points of way that one crossed line is worth
_SIDEWAYS = 40.0  # points of way that a place left or right of the part is worth: words are wide


def rim_place(
    at: Spot,
    size: Spot,
    picture: Spot,
    taken: Sequence[Box],
    off: Box,
    leaders: Sequence[tuple[Spot, Spot]] = (),
) -> Box | None:
    """Return the nearest room for words of a size along the picture's rim.

    It is off what is `taken` and off the box of the marks (`off`), and its line to `at` crosses
    few of the others' `leaders`. None where the rim has no room. All in points, y up.
    """
    best, least = None, math.inf
    for box in _along_rim(size, picture):
        if any(overlap(box, one) for one in (*taken, off)):
            continue
        line = (nearest(box, at), at)
        way = math.dist(*line)
        way += _SIDEWAYS if 0 < box[1] < picture[1] - size[1] else 0.0
        way += _CROSSED * sum(crosses(line, other) for other in leaders)
        way += _CROSSED * sum(_passes(line, one) for one in taken)
        if way < least:
            best, least = box, way
    return best


def free_place(at: Spot, size: Spot, picture: Spot, taken: Sequence[Box]) -> Box:
    """Return where words of a size stand: right above a spot, inside the picture, off others.

    Where all of the picture is taken, they stand over others.
    """
    (wide, high), (width, height) = size, picture
    left = min(max(at[0] - wide / 2, 0.0), max(width - wide, 0.0))
    lowest, highest = 0.0, max(height - high, 0.0)
    wanted = min(max(at[1] + 2.0, lowest), highest)
    steps = [wanted + way * n * (high + 0.5) for n in range(40) for way in (1, -1)]
    for bottom in steps:
        box = (left, bottom, left + wide, bottom + high)
        if lowest <= bottom <= highest and not any(overlap(box, one) for one in taken):
            return box
    return left, wanted, left + wide, wanted + high


def nearest(box: Box, at: Spot) -> Spot:
    """Return the point of a box that lies nearest to a spot."""
    return min(max(at[0], box[0]), box[2]), min(max(at[1], box[1]), box[3])


def overlap(one: Box, other: Box) -> bool:
    """Tell whether two boxes share more than a rim."""
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def crosses(one: tuple[Spot, Spot], other: tuple[Spot, Spot]) -> bool:
    """Tell whether two lines cross each other between their ends."""
    apart = _side(*other, one[0]) * _side(*other, one[1]) < 0
    return apart and _side(*one, other[0]) * _side(*one, other[1]) < 0


def _along_rim(size: Spot, picture: Spot) -> Iterator[Box]:
    (wide, high), (width, height) = size, picture
    right, top = width - wide, height - high
    if right < 0 or top < 0:
        return
    for x in _steps(right):
        for y in (0.0, top):
            yield x, y, x + wide, y + high
    for y in _steps(top):
        for x in (0.0, right):
            yield x, y, x + wide, y + high


def _steps(most: float) -> Iterator[float]:
    count = max(1, math.ceil(most / _STEP))
    for number in range(count + 1):
        yield most * number / count


def _passes(line: tuple[Spot, Spot], box: Box) -> bool:
    left, bottom, right, top = box
    corners = ((left, bottom), (left, top), (right, top), (right, bottom))
    return any(crosses(line, (corners[n - 1], corners[n])) for n in range(4))


def _side(start: Spot, end: Spot, at: Spot) -> float:
    return (end[0] - start[0]) * (at[1] - start[1]) - (end[1] - start[1]) * (at[0] - start[0])
