"""What is drawn on a page or in a picture, in mm from its top left corner, x right, y down."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

Point = tuple[float, float]
Line = tuple[Point, ...]
Ink = Literal["black", "white", "tint"]

# sRGB. The pale cool tint lets white porcelain and bright aluminium stand out from the paper.
TINT = (218, 228, 238)


@dataclass(frozen=True, slots=True)
class Area:
    """Closed outlines, filled together as one, so that no hairline shows where two meet."""

    pieces: tuple[Line, ...]
    ink: Ink = "black"


@dataclass(frozen=True, slots=True)
class Stroke:
    """A black line through points, its middle on them."""

    points: Line
    width: float


@dataclass(frozen=True, slots=True)
class Words:
    """One line of words; `at` is where its baseline begins, `size` the em in mm."""

    at: Point
    words: str
    size: float
    bold: bool = False


Figure: TypeAlias = Area | Stroke
Shape: TypeAlias = Figure | Words


def block(left: float, top: float, right: float, bottom: float) -> Line:
    """Return the outline of a rectangle."""
    return ((left, top), (right, top), (right, bottom), (left, bottom))


def moved(figure: Figure, by: Point) -> Figure:
    """Return the figure, moved."""
    if isinstance(figure, Area):
        return replace(figure, pieces=tuple(_moved(piece, by) for piece in figure.pieces))
    return replace(figure, points=_moved(figure.points, by))


def _moved(points: Line, by: Point) -> Line:
    return tuple((x + by[0], y + by[1]) for x, y in points)
