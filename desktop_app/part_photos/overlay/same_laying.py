"""Whether two layings of the new photo on the old one are the same."""

from __future__ import annotations

import math
from collections.abc import Sequence

Matrix = Sequence[Sequence[float]]

AS_KEPT_PX = 3.0  # corners that lie no further from each other are the same laying
_SMALLEST = 1e-12


def is_same_laying(one: Matrix, other: Matrix, size: tuple[int, int]) -> bool:
    """Tell whether two 3 x 3, new pixels to old pixels, put a photo to the same place.

    `size` is the new photo's width and height in pixels.
    """
    right, bottom = size[0] - 1.0, size[1] - 1.0
    corners = ((0.0, 0.0), (right, 0.0), (right, bottom), (0.0, bottom))
    apart = [math.dist(_moved(one, corner), _moved(other, corner)) for corner in corners]
    return all(far <= AS_KEPT_PX for far in apart)  # not a number is never the same


def _moved(matrix: Matrix, point: tuple[float, float]) -> tuple[float, float]:
    x, y, w = (float(a * point[0] + b * point[1] + c) for a, b, c in matrix)
    w = w or _SMALLEST  # on the horizon: as far as can be
    return x / w, y / w
