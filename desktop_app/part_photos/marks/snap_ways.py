"""In which direction each point of a mark may move onto an edge: along what it measures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.marks.circle_fit import fit_circle
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

_LEAST_MM = 1e-9
_STEP = 1e-3  # of the points' spread; short, for the lens bends long ways


def ways_of(mark: Mark, scale: PlaneScale | None) -> Floats:
    """Return a direction in the photo for each point, shape (n, 2), pixels; nan: it stays.

    Right angles are those of the part, where a scale tells how the camera looks at it.
    """
    import numpy as np

    points_px = np.array(mark.points_px, float).reshape(-1, 2)
    flat = points_px if scale is None else scale.on_plane(points_px, mark.height_mm)
    ways = _on_plane(mark, flat)
    if scale is not None:
        step = _STEP * max(float(np.abs(flat - flat.mean(0)).max()), _LEAST_MM)
        ways = scale.to_pixels(flat + step * ways, mark.height_mm) - points_px
    lengths = np.hypot(ways[:, 0], ways[:, 1])
    return np.where(lengths[:, None] > 0, ways, np.nan) / np.where(lengths > 0, lengths, 1)[:, None]


def bend_of(mark: Mark) -> float:
    """Return how much the edges of a mark bend, 1 / pixels: a circle's rim does, others don't."""
    if mark.type != "circle":
        return 0.0
    try:
        return 1 / fit_circle(mark.points_px).radius
    except ShopTrouble:
        return 0.0


def _on_plane(mark: Mark, points: Floats) -> Floats:
    """Unit directions on the plane, (n, 2)."""
    import numpy as np

    nowhere = np.full(2, np.nan)
    if mark.type == "length" and len(points) == 2:
        along = _unit(points[1] - points[0])
        return np.array([along, along])
    if mark.type == "point-to-line" and len(points) == 3:
        across = _across(points[1], points[2])
        return np.array([across, across, across])
    if mark.type == "angle" and len(points) == 3:
        return np.array([_across(points[0], points[1]), nowhere, _across(points[1], points[2])])
    if mark.type in ("parallel-distance", "round-bar") and len(points) == 4:
        one, other = _across(points[0], points[1]), _across(points[2], points[3])
        return np.array([one, one, other, other])
    if mark.type == "circle":
        return _radial(points)
    return np.full(points.shape, np.nan)


def _radial(points: Floats) -> Floats:
    import numpy as np

    try:
        circle = fit_circle(points)
    except ShopTrouble:
        return np.full(points.shape, np.nan)
    return np.array([_unit(point - [circle.x, circle.y]) for point in points])


def _across(one: Floats, other: Floats) -> Floats:
    import numpy as np

    along = _unit(other - one)
    return np.array([-along[1], along[0]])


def _unit(way: Floats) -> Floats:
    import numpy as np

    length = float(np.hypot(*way))
    return way / length if length > _LEAST_MM else np.full(2, np.nan)
