"""Which of several outlines somebody clicked into."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from desktop_app.part_photos.marks.mark import Pixel


def innermost(outlines: Mapping[int, Sequence[Pixel]], spot: Pixel) -> int | None:
    """Return the smallest outline around a spot, or None where none lies around it."""
    around = [one for one, points in outlines.items() if encloses(points, spot)]
    return min(around, key=lambda one: area(outlines[one]), default=None)


def encloses(points: Sequence[Pixel], spot: Pixel) -> bool:
    """Tell whether a closed outline goes round a spot: a ray from it crosses it an odd time."""
    x, y = spot
    inside = False
    for (x1, y1), (x2, y2) in zip(points, (*points[1:], *points[:1]), strict=True):
        if (y1 > y) != (y2 > y) and x < x1 + (y - y1) / (y2 - y1) * (x2 - x1):
            inside = not inside
    return inside


def area(points: Sequence[Pixel]) -> float:
    """Return the area within a closed outline, in square pixels (the shoelace formula)."""
    corners = zip(points, (*points[1:], *points[:1]), strict=True)
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in corners)) / 2
