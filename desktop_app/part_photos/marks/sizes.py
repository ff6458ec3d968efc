"""What each kind of mark measures, once its points lie on a plane in millimetres.

Each size takes points (n, 2) on the feature's plane, and where the camera stands over that plane
(3,), z up. Distances to lines come with a sign (which side), so that they have slopes at nought.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Size = Callable[[Floats, Floats], float]


def length(points: Floats, _camera: Floats) -> float:
    """Return the distance of two points, mm."""
    return math.dist(points[0], points[1])


def point_to_line(points: Floats, _camera: Floats) -> float:
    """Return how far the first point lies off the line through the others, mm; signed."""
    along = points[2] - points[1]
    return _cross(along, points[0] - points[1]) / math.hypot(*along)


def angle(points: Floats, _camera: Floats) -> float:
    """Return the angle at the second point, degrees, -180 to 180; the sign is the turn's."""
    one, other = points[0] - points[1], points[2] - points[1]
    return math.degrees(math.atan2(_cross(one, other), one @ other))


def parallel_distance(points: Floats, _camera: Floats) -> float:
    """Return the distance of two lines of two points each, mm; signed.

    Between the middles of both lines, across their common direction; the longer line counts for
    more in the direction.
    """
    one, other = across_both(points)
    return other - one


def round_bar(points: Floats, camera: Floats) -> float:
    """Return the diameter of a round bar lying on the plane, from both sides of its outline, mm.

    Points are where the sight lines along its outline meet the plane it lies on. Looked at along
    the bar, the two sight lines and the plane are the sides of a triangle with the camera in its
    corner, and the bar is the circle inscribed in it: its radius is twice the triangle's area
    over its perimeter (Euclid, Elements IV.4). Signed like the distance of the lines.
    """
    one, other = across_both(points)
    here = float(_common_normal(points) @ camera[:2])
    height = float(camera[2])
    sight_lines = math.hypot(one - here, height) + math.hypot(other - here, height)
    perimeter = abs(other - one) + sight_lines
    return 2 * (other - one) * height / perimeter


def across_both(points: Floats) -> tuple[float, float]:
    """Return where two lines (two points each) lie across their common direction, mm."""
    normal = _common_normal(points)
    places = points @ normal
    return float(places[:2].mean()), float(places[2:].mean())


def lines_angle(points: Floats) -> float:
    """Return the angle between two lines of two points each, degrees, 0 to 90."""
    one, other = points[1] - points[0], points[3] - points[2]
    return math.degrees(math.atan2(abs(_cross(one, other)), abs(one @ other)))


SIZES: dict[str, Size] = {
    "length": length,
    "point-to-line": point_to_line,
    "angle": angle,
    "parallel-distance": parallel_distance,
    "round-bar": round_bar,
}


def _common_normal(points: Floats) -> Floats:
    import numpy as np

    one, other = points[1] - points[0], points[3] - points[2]
    along = one + (other if one @ other >= 0 else -other)
    return np.array([-along[1], along[0]]) / math.hypot(*along)


def _cross(one: Floats, other: Floats) -> float:
    return float(one[0] * other[1] - one[1] * other[0])
