"""Ribs, teeth, splines or grooves counted along a line drawn across them."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.linear_light import linear_grey
from desktop_app.part_photos.marks.bands import Uncountable, bands_along
from desktop_app.part_photos.marks.mark import Mark, Measured
from desktop_app.part_photos.photo_pixels import PhotoPixels

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

HALF_WIDTH_PX = 3
LONGEST_PX = 20_000


def count_along(mark: Mark, pixels: PhotoPixels) -> Measured:
    """Return how many bands of the other kind the line crosses between its ends.

    The line begins and ends in a gap (or on the same kind of thing): what differs from its ends is
    counted, dark bands between bright ends or bright ones between dark. The light along the line
    is averaged over 3 pixels to either side. Unless the bands are clear, evenly spaced, and the
    same in number in each third of that width, the value is None and a warning says why it can't
    be counted.
    """
    try:
        found = bands_along(_profiles(mark, pixels))
    except Uncountable as why:
        return Measured(None, "", None, warnings=(tr("This can't be counted: {why}.", why=why),))
    said = (
        tr("Counted are the bright bands; the line begins and ends beside them.")
        if found.bright
        else tr("Counted are the dark bands; the line begins and ends beside them.")
    )
    return Measured(float(found.number), "", 0.0, warnings=(said,))


def _profiles(mark: Mark, pixels: PhotoPixels) -> Floats:
    """Linear light along the line in steps of a pixel, in seven rows side by side: (7, n)."""
    import numpy as np
    from scipy.ndimage import map_coordinates

    if len(mark.points_px) != 2:
        raise Uncountable(tr("the line has no two ends"))
    start, end = np.array(mark.points_px, float)
    length = math.dist(start, end)
    if not 1 <= length <= LONGEST_PX:
        raise Uncountable(tr("the line is too short"))
    along = (end - start) / length
    beside = np.array([-along[1], along[0]])
    steps = np.linspace(0, length, math.ceil(length) + 1)
    widths = np.arange(-HALF_WIDTH_PX, HALF_WIDTH_PX + 1.0)
    where = start + steps[None, :, None] * along + widths[:, None, None] * beside
    last = [pixels.width - 1, pixels.height - 1]
    if (where < 0).any() or (where > last).any():
        inside = ((start >= 0) & (start <= last) & (end >= 0) & (end <= last)).all()
        raise Uncountable(
            tr("the line is within {width} pixels of the picture's edge", width=HALF_WIDTH_PX)
            if inside
            else tr("the line leaves the picture")
        )
    low = np.floor(where.min((0, 1))).astype(int)
    high = np.ceil(where.max((0, 1))).astype(int) + 1
    light = linear_grey(pixels.rgb[low[1] : high[1], low[0] : high[0]]).astype(float)
    return np.asarray(map_coordinates(light, np.moveaxis((where - low)[..., ::-1], -1, 0), order=1))
