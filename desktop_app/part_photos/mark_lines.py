"""The lines by which a mark is drawn over its photo, in pixels of the upright photo."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.marks.mark import OUTLINES, Mark, Pixel

if TYPE_CHECKING:
    from desktop_app.part_photos.camera.plane_scale import PlaneScale

_RIM = 72  # sides of the polygon that a circle is drawn as
_ARC = 24


@dataclass(frozen=True, slots=True)
class MarkLines:
    """`lines` are open polylines; `sizes` have a tick at both ends; `arrows` end in a head.

    `label_at` is where the words stand.
    """

    lines: tuple[tuple[Pixel, ...], ...]
    sizes: tuple[tuple[Pixel, Pixel], ...]
    arrows: tuple[tuple[Pixel, Pixel], ...]
    label_at: Pixel


def mark_lines(mark: Mark, scale: PlaneScale | None = None) -> MarkLines:
    """Return how a mark is drawn; one with too few points yet is drawn as a line through them.

    With a scale, right angles and circles are those of the part, seen as the camera saw it; else
    those of the photo.
    """
    draw = _DRAWN.get(mark.type)
    if draw is None or len(mark.points_px) < _LEAST[mark.type]:
        return _path(mark.points_px)
    flat, back = _plane(None if mark.type in OUTLINES else scale, mark.height_mm)
    points = flat(mark.points_px)
    if all(math.isfinite(x) and math.isfinite(y) for x, y in points):
        drawn = draw(points)
        seen = MarkLines(
            tuple(back(line) for line in drawn.lines),
            tuple(_two(back(pair)) for pair in drawn.sizes),
            tuple(_two(back(pair)) for pair in drawn.arrows),
            back((drawn.label_at,))[0],
        )
        if all(math.isfinite(x) and math.isfinite(y) for line in seen.lines for x, y in line):
            return seen
    return _path(mark.points_px)


Points = tuple[Pixel, ...]


def _plane(
    scale: PlaneScale | None, height_mm: float
) -> tuple[Callable[[Sequence[Pixel]], Points], Callable[[Sequence[Pixel]], Points]]:
    if scale is None:
        return tuple, tuple
    import numpy as np

    def flat(points: Sequence[Pixel]) -> Points:
        return _rows(scale.on_plane(np.asarray(points, float), height_mm))

    def back(points: Sequence[Pixel]) -> Points:
        return _rows(scale.to_pixels(np.asarray(points, float), height_mm))

    def _rows(array: np.ndarray[tuple[int, ...], np.dtype[np.float64]]) -> Points:
        return tuple((float(x), float(y)) for x, y in array)

    return flat, back


def _path(points: Points) -> MarkLines:
    lines = (points,) if len(points) > 1 else ()
    return MarkLines(lines, (), (), points[-1] if points else (0.0, 0.0))


def _length(points: Points) -> MarkLines:
    return MarkLines((), ((points[0], points[1]),), (), _middle(points[0], points[1]))


def _point_to_line(points: Points) -> MarkLines:
    point, one, other = points[:3]
    foot = _foot(point, one, other)
    line = (one, other) if _between(foot, one, other) else (one, other, foot)
    return MarkLines((line,), ((point, foot),), (), _middle(point, foot))


def _circle(points: Points) -> MarkLines:
    from desktop_app.part_photos.marks.circle_fit import fit_circle
    from desktop_app.shop_record.trouble import ShopTrouble

    try:
        circle = fit_circle(points, robust=True)
    except ShopTrouble:
        return _path(points)
    turns = [2 * math.pi * step / _RIM for step in range(_RIM + 1)]
    rim = tuple(
        (circle.x + circle.radius * math.cos(t), circle.y + circle.radius * math.sin(t))
        for t in turns
    )
    return MarkLines((rim,), (), (), rim[0])


def _angle(points: Points) -> MarkLines:
    one, corner, other = points[:3]
    start = math.atan2(one[1] - corner[1], one[0] - corner[0])
    end = math.atan2(other[1] - corner[1], other[0] - corner[0])
    turn = math.remainder(end - start, 2 * math.pi)
    reach = 0.4 * min(math.dist(corner, one), math.dist(corner, other))
    arc = tuple(
        (
            corner[0] + reach * math.cos(start + turn * step / _ARC),
            corner[1] + reach * math.sin(start + turn * step / _ARC),
        )
        for step in range(_ARC + 1)
    )
    return MarkLines(((one, corner, other), arc), (), (), arc[_ARC // 2])


def _two_lines(points: Points) -> MarkLines:
    one, other = points[:2], points[2:4]
    start = _middle(one[0], one[1])
    foot = _foot(start, other[0], other[1])
    return MarkLines((one, other), ((start, foot),), (), _middle(start, foot))


def _note(points: Points) -> MarkLines:
    return MarkLines((), (), ((points[1], points[0]),), points[1])


def _outline(points: Points) -> MarkLines:
    return MarkLines(((*points, points[0]),), (), (), min(points, key=lambda point: point[1]))


_DRAWN: dict[str, Callable[[Points], MarkLines]] = {
    "length": _length,
    "count": _length,
    "point-to-line": _point_to_line,
    "circle": _circle,
    "angle": _angle,
    "parallel-distance": _two_lines,
    "round-bar": _two_lines,
    "note": _note,
    "surface": _outline,
    "bare-metal": _outline,
}
_LEAST = {
    "length": 2,
    "count": 2,
    "point-to-line": 3,
    "circle": 3,
    "angle": 3,
    "parallel-distance": 4,
    "round-bar": 4,
    "note": 2,
    "surface": 3,
    "bare-metal": 3,
}


def distance_to(mark: Mark, lines: MarkLines, spot: Pixel) -> float:
    """Return how far a spot lies from what is drawn of a mark, in pixels of the photo."""
    pieces = [*lines.lines, *lines.sizes, *lines.arrows]
    ways = [_to_piece(spot, line[i], line[i + 1]) for line in pieces for i in range(len(line) - 1)]
    return min((*ways, *(math.dist(spot, point) for point in mark.points_px)), default=math.inf)


def _to_piece(spot: Pixel, one: Pixel, other: Pixel) -> float:
    foot = _foot(spot, one, other)
    if _between(foot, one, other):
        return math.dist(spot, foot)
    return min(math.dist(spot, one), math.dist(spot, other))


def _foot(point: Pixel, one: Pixel, other: Pixel) -> Pixel:
    along = (other[0] - one[0], other[1] - one[1])
    square = along[0] ** 2 + along[1] ** 2
    if square == 0:
        return one
    share = ((point[0] - one[0]) * along[0] + (point[1] - one[1]) * along[1]) / square
    return one[0] + share * along[0], one[1] + share * along[1]


def _between(foot: Pixel, one: Pixel, other: Pixel) -> bool:
    return (foot[0] - one[0]) * (foot[0] - other[0]) <= 0 and (foot[1] - one[1]) * (
        foot[1] - other[1]
    ) <= 0


def _middle(one: Pixel, other: Pixel) -> Pixel:
    return (one[0] + other[0]) / 2, (one[1] + other[1]) / 2


def _two(points: Points) -> tuple[Pixel, Pixel]:
    return points[0], points[1]
