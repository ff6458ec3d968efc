"""Which part of a photo the bench opens on: its marks, else the card's room for the part."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.part_photos.marks.mark import Mark

if TYPE_CHECKING:
    from desktop_app.part_photos.bench_card.card_layout import CardLayout
    from desktop_app.part_photos.camera.plane_scale import PlaneScale

Box = tuple[float, float, float, float]

LEAST = 0.08  # of the photo's longer side: one short mark is not looked at closer than that


def around_marks(marks: Sequence[Mark], size: tuple[int, int]) -> Box | None:
    """Return left, top, width and height round all points of marks, in pixels; None for none."""
    points = [point for mark in marks for point in mark.points_px]
    return _box(points, size) if points else None


def around_field(
    plane: PlaneScale | None, card: CardLayout | None, size: tuple[int, int]
) -> Box | None:
    """Return left, top, width and height of the card's room for the part as the photo shows it.

    `card` is as large as it was printed. None where no card gives the scale, or nothing of its
    room is in the photo.
    """
    import numpy as np

    if plane is None or plane.source != "card" or card is None or card.free_field_mm is None:
        return None
    left, top, right, bottom = card.free_field_mm
    corners = np.array([(left, top), (right, top), (right, bottom), (left, bottom)], float)
    seen = [(float(x), float(y)) for x, y in plane.to_pixels(corners, 0.0)]
    return _box(seen, size)


def _box(points: Sequence[tuple[float, float]], size: tuple[int, int]) -> Box | None:
    """Return the box round points, cut to the photo; None where they lie nowhere in it."""
    if not all(math.isfinite(value) for point in points for value in point):
        return None
    ends = []
    for way, length in enumerate(size):
        low = max(min(point[way] for point in points), 0.0)
        high = min(max(point[way] for point in points), float(length))
        if low > high:
            return None
        short = max(0.0, LEAST * max(size) - (high - low)) / 2
        ends.append((low - short, high - low + 2 * short))
    (left, width), (top, height) = ends
    return left, top, width, height
