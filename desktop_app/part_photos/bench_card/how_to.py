"""How a bench card is used: three small drawn pictures with their words."""

from __future__ import annotations

import math
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.drawing import Area, Figure, Line, Point, Stroke, block

SIZE_MM = (20.0, 14.0)  # of each picture
_FINE = 0.25


@dataclass(frozen=True, slots=True)
class HowTo:
    """One step: what to do, and its picture in a box of `SIZE_MM`."""

    words: str
    shapes: tuple[Figure, ...]


def how_to() -> tuple[HowTo, ...]:
    """Return the three steps in their order."""
    return (
        HowTo(tr("Card flat on a board"), _card_flat()),
        HowTo(tr("Part in the tinted field"), _part_in_field()),
        HowTo(tr("Camera roughly above, all of it sharp"), _camera_above()),
    )


def _outline(points: Line) -> Stroke:
    return Stroke((*points, points[0]), _FINE)


def _on_board(u: float, v: float) -> Point:
    """A point of the board's top face; u goes to the right, v to the back."""
    return (1.0 + 13.0 * u + 5.0 * v, 9.8 - 6.5 * v)


def _slab(left: float, front: float, right: float, back: float) -> Line:
    corners = ((left, front), (right, front), (right, back), (left, back))
    return tuple(_on_board(u, v) for u, v in corners)


def _card_flat() -> tuple[Figure, ...]:
    front, side = ((0.0, 0.0), (1.0, 0.0)), ((1.0, 0.0), (1.0, 1.0))
    faces = [
        tuple(_on_board(u, v) for u, v in edge)
        + tuple((x, y + 1.3) for x, y in (_on_board(u, v) for u, v in reversed(edge)))
        for edge in (front, side)
    ]
    spots = [
        (u, v) for u in (0.12, 0.45, 0.78) for v in (0.1, 0.43, 0.76) if (u, v) != (0.45, 0.43)
    ]
    return (
        *(_outline(face) for face in faces),
        _outline(_slab(0.0, 0.0, 1.0, 1.0)),
        Area((_slab(0.25, 0.27, 0.75, 0.73),), "tint"),
        _outline(_slab(0.08, 0.05, 0.92, 0.95)),
        Area(tuple(_slab(u, v, u + 0.1, v + 0.14) for u, v in spots)),
    )


def _part_in_field() -> tuple[Figure, ...]:
    left, top, right, bottom = 5.4, 0.5, 14.6, 13.5
    spots = [
        (left + 0.6 + 3.6 * column, top + 0.6 + 3.55 * row)
        for column in range(3)
        for row in range(4)
        if column != 1 or row in (0, 3)
    ]
    return (
        _outline(block(left, top, right, bottom)),
        Area((block(left + 1.8, top + 1.8, right - 1.8, bottom - 1.8),), "tint"),
        Area(tuple(block(x, y, x + 0.8, y + 0.8) for x, y in spots)),
        Area((_ring((10.0, 7.0), 2.3),), "white"),
        _outline(_ring((10.0, 7.0), 2.3)),
        _outline(_ring((10.0, 7.0), 0.8)),
        *(_outline(_ring(_at((10.0, 7.0), 1.55, turn), 0.22)) for turn in range(0, 360, 90)),
    )


def _camera_above() -> tuple[Figure, ...]:
    lens, middle = (10.0, 2.5), (10.2, 1.6)
    phone = tuple(_turned(middle, corner, 6) for corner in block(-3.6, -0.5, 3.6, 0.5))
    half = ((8.2, 12.0), (8.2, 10.9), (9.2, 10.9), (9.2, 9.9))
    part = (*half, *((2 * lens[0] - x, y) for x, y in reversed(half)))
    board, card_ends = block(1.0, 12.4, 19.0, 13.4), ((3.4, 11.9), (16.6, 11.9))
    return (
        _outline(phone),
        Area((_ring(lens, 0.4),)),
        *(Stroke(dash, 0.15) for end in card_ends for dash in _dashes(lens, end)),
        Area((block(3.0, 12.0, 17.0, 12.4),)),
        Area((board,), "tint"),
        _outline(board),
        Area((part,), "white"),
        _outline(part),
    )


def _turned(middle: Point, corner: Point, degrees: float) -> Point:
    cos, sin = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    x, y = corner
    return (middle[0] + x * cos - y * sin, middle[1] + x * sin + y * cos)


def _at(middle: Point, radius: float, degrees: float) -> Point:
    turn = math.radians(degrees)
    return (middle[0] + radius * math.cos(turn), middle[1] + radius * math.sin(turn))


def _ring(middle: Point, radius: float) -> Line:
    return tuple(_at(middle, radius, degrees) for degrees in range(0, 360, 15))


def _dashes(start: Point, end: Point, count: int = 11) -> list[Line]:
    def between(share: float) -> Point:
        return (start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share)

    return [(between(n / count), between((n + 0.6) / count)) for n in range(1, count)]
