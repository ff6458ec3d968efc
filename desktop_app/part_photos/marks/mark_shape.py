"""The shape a mark makes on its plane: its size, and how that changes with each point."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.marks.circle_fit import (
    ENOUGH_FOR_ROBUST,
    circle_with_slopes,
    rim_distances,
)
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.sizes import SIZES
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

POINTS = {"length": 2, "point-to-line": 3, "angle": 3, "parallel-distance": 4, "round-bar": 4}
_ON_LINES = {"point-to-line": ((1, 2),), "angle": ((0, 1), (1, 2))}
_TWO_LINES = ((0, 1), (2, 3))
_LEAST_LINE_MM = 1e-3
_STEP_MM = 1e-4


@dataclass(frozen=True, slots=True, eq=False)
class MarkShape:
    """`value` in `unit`, signed where a side or a turn has two ways.

    `slopes` (2 n + 3,) tell how it changes with each coordinate of the points (n, 2) and with the
    camera's place; `points` are in mm. `off_rim_mm` is how far a circle's points scatter about
    its rim (standard deviation), `of_each_mm` the same of those that the fit relies on; both None
    for other marks and for three points.
    """

    value: float
    unit: str
    slopes: Floats
    points: Floats
    off_rim_mm: float | None = None
    of_each_mm: float | None = None


def shape_of(mark: Mark, placed: Floats) -> MarkShape:
    """Return the shape of a mark whose points and camera lie at `placed` (2 n + 3,), mm.

    Raises ShopTrouble for points that make no such shape.
    """
    points = placed[:-3].reshape(-1, 2)
    if mark.type == "circle":
        return _circle(points)
    if len(points) != POINTS[mark.type]:
        raise ShopTrouble(
            tr(
                "A mark of type {type} has {needed} points, not {given}.",
                type=mark.type,
                needed=POINTS[mark.type],
                given=len(points),
            ),
            do=tr("Draw it anew."),
        )
    _refuse_no_line(mark, points)
    size = SIZES[mark.type]
    unit = "deg" if mark.type == "angle" else "mm"
    return MarkShape(size(points, placed[-3:]), unit, _slopes(mark, placed), points)


def _circle(points: Floats) -> MarkShape:
    import numpy as np

    circle, slopes = circle_with_slopes(points, robust=len(points) >= ENOUGH_FOR_ROBUST)
    scatter = pull = None
    if len(points) > 3:
        off = rim_distances(points, circle)
        scatter = float(np.sqrt((off**2).sum() / (len(points) - 3)))
        # Where the fit is robust, the few that lie far off hardly count.
        robust = 1.4826 * float(np.median(np.abs(off)))
        pull = robust if len(points) >= ENOUGH_FOR_ROBUST else scatter
    of_diameter = np.append(2 * slopes.ravel(), np.zeros(3))
    return MarkShape(2 * circle.radius, "mm", of_diameter, points, scatter, pull)


def _slopes(mark: Mark, placed: Floats) -> Floats:
    """Numeric slopes of a size by all that it depends on."""
    import numpy as np

    size = SIZES[mark.type]

    def at(values: Floats) -> float:
        return size(values[:-3].reshape(-1, 2), values[-3:])

    asked = len(placed) if mark.type == "round-bar" else len(placed) - 3
    slopes = np.zeros(len(placed))
    for k in range(asked):
        step = np.zeros(len(placed))
        step[k] = _STEP_MM
        change = at(placed + step) - at(placed - step)
        if mark.type == "angle":  # a straight angle jumps from 180 to -180
            change = (change + 180) % 360 - 180
        slopes[k] = change / (2 * _STEP_MM)
    return slopes


def _refuse_no_line(mark: Mark, points: Floats) -> None:
    """Two points that fall on each other have no direction."""
    import numpy as np

    two = mark.type in ("parallel-distance", "round-bar")
    lines = _TWO_LINES if two else _ON_LINES.get(mark.type, ((0, 1),))
    for one, other in lines:
        if np.hypot(*(points[one] - points[other])) < _LEAST_LINE_MM:
            raise ShopTrouble(
                tr("Points {one} and {other} lie on each other.", one=one + 1, other=other + 1),
                do=tr("Move them apart."),
            )
