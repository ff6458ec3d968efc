"""How much of a photo its marks take, and how large a millimetre is there."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.part_photos.mark_lines import mark_lines
from desktop_app.part_photos.marks.mark import SIZED, Mark, Pixel
from desktop_app.parts_compared.sheet_crop import MarksTake

if TYPE_CHECKING:
    from desktop_app.part_photos.camera.plane_scale import PlaneScale

_NEAR_PX = 16.0  # over which a photo's scale is told at a spot


def marks_take(
    size: tuple[int, int], marks: Sequence[Mark], scale: PlaneScale | None
) -> MarksTake | None:
    """Return what the marks take of a photo of this size in pixels; None where it has none."""
    drawn = [mark_lines(one, scale) for one in marks]
    lines = [line for one in drawn for line in (*one.lines, *one.sizes, *one.arrows)]
    spots = [spot for line in lines for spot in line]
    if not spots:
        return None
    width, height = size
    across, down = zip(*spots, strict=True)
    edges = (min(across), min(down), max(across), max(down))
    most = (width, height, width, height)
    left, top, right, bottom = (
        min(max(edge, 0.0), float(end)) for edge, end in zip(edges, most, strict=True)
    )
    middle = ((left + right) / 2, (top + bottom) / 2)
    return MarksTake(size, (left, top, right, bottom), _px_per_mm(marks, scale, middle))


def _px_per_mm(marks: Sequence[Mark], scale: PlaneScale | None, at: Pixel) -> float | None:
    """Return how many pixels make a mm at a spot, at the height of the sized marks (the median).

    None without a scale, without such marks, or where the plane isn't seen.
    """
    import numpy as np

    heights = [one.height_mm for one in marks if one.type in SIZED]
    if scale is None or not heights:
        return None
    beside = np.array(at) + np.array([[0.0, 0.0], [_NEAR_PX, 0.0], [0.0, _NEAR_PX]])
    corner, right, down = scale.on_plane(beside, float(np.median(heights)))
    one, other = right - corner, down - corner
    area = abs(float(one[0] * other[1] - one[1] * other[0]))
    return _NEAR_PX / math.sqrt(area) if math.isfinite(area) and area > 0 else None
