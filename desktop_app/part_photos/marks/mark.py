"""A mark: something drawn on a photo, and what it measures."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from desktop_app.language import marked

SizeType: TypeAlias = Literal[
    "length", "point-to-line", "circle", "angle", "parallel-distance", "round-bar"
]
MarkType: TypeAlias = Literal[SizeType, "count", "note", "surface", "bare-metal"]
Pixel: TypeAlias = tuple[float, float]

# In mm or degrees, on the part's plane; a mark without a name is called by its type.
SIZED: frozenset[str] = frozenset(
    (
        *(marked("length"), marked("point-to-line"), marked("circle"), marked("angle")),
        *(marked("parallel-distance"), marked("round-bar")),
    )
)
LENGTHS: frozenset[str] = SIZED - {"angle"}  # a height stretches these, and turns no angle
OUTLINES: frozenset[str] = frozenset({"surface", "bare-metal"})
FROM_PICTURE: frozenset[str] = frozenset({"count", "surface"})  # said by the pixels, not the scale
HIGHEST_MM = 500.0  # no part on a bench card stands higher


def is_height(mm: float) -> bool:
    """Tell whether something can lie so high above a card, mm; inches may have been rounded."""
    return 0 <= mm <= HIGHEST_MM * (1 + 1e-6)


@dataclass(frozen=True, slots=True)
class Mark:
    """What was drawn; points in upright pixels, centres at whole numbers.

    length: two ends. point-to-line: the point, then two points of the line. circle: three or more
    points of its rim. angle: a point of one leg, the corner, a point of the other leg.
    parallel-distance: two points of one line, two of the other. round-bar: two points on one side
    of its outline, two on the other. count: the two ends of the line along which is counted.
    note: where the arrow points, then where the words stand. surface: three or more corners round
    what is looked at. bare-metal: the same round a place of the photo that is bare.

    `height_mm` is how high the feature lies above the card, `height_u_mm` half the width of the
    range it certainly lies in (a rectangular distribution); where `height_said` is false nobody
    said them, and the size holds only for what lies on the card. `snapped` tells for each point
    whether it lies on an edge that the program found; empty means that none does.
    """

    type: MarkType
    points_px: tuple[Pixel, ...]
    name: str = ""
    height_mm: float = 0.0
    height_u_mm: float = 0.0
    snapped: tuple[bool, ...] = ()
    height_said: bool = True


@dataclass(frozen=True, slots=True)
class Measured:
    """What a mark says: value and expanded uncertainty in `unit`.

    The unit is "mm", "deg", "" for a count, "%" for a share of a surface. `budget` holds standard
    uncertainties in the same unit: pointing, scale (where the camera was and how it looked at the
    card), height (as it was said), flatness (of the paper), lens, print. The value of a note is
    None. `method` says how a share was counted.
    """

    value: float | None
    unit: str
    expanded_uncertainty: float | None
    coverage: float = 0.95
    budget: Mapping[str, float] = field(default_factory=dict)
    warnings: tuple[str, ...] = ()
    method: str = ""
