"""The one clear edge near a point of a photo, looked for along a given direction.

Measured in linear light: in a photo's own values a dark part on white comes out too small. The
figures in pixels were found by trials with photos of 12 megapixels whose sharp edges spread by
about one pixel (standard deviation); they grow with the spread of the card's own edges.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.linear_light import linear_grey

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

REACH_PX = 3.2  # an edge farther away is not what was clicked
ALONE_PX = 4.5  # a second edge nearer than this makes the choice a guess
SECOND = 0.25  # share of the strongest edge, from which on another one counts
WIDEST = 1.3  # spread of an edge over that of the card's: beyond, a shadow or a rounding
LEAST_CONTRAST = 0.01  # of linear light, 0 to 1
SMOOTH_PX = 0.8
HALF_WIDTH_PX = 3  # looked at to either side of the direction
SKEWS = (-0.75, -0.5, -0.25, 0.0, 0.25, 0.5, 0.75)  # slopes of the edge against straight across
STEP_PX = 0.125
USUAL_BLUR_PX = 1.0


def edge_near(
    rgb: NDArray[np.uint8],
    point: Floats,
    way: Floats,
    blur_px: float = USUAL_BLUR_PX,
    bend: float = 0.0,
) -> float | None:
    """Return how far along `way` (2,) the edge lies from `point` (2,), pixels; None: none is clear.

    `rgb` is (h, w, 3) sRGB; `way` has any length; `blur_px` is the spread (standard deviation) of
    the card's own edges; `bend` is 1 / radius (pixels) of a rim that `way` points out of. Refused
    are: no edge within reach, a second one beside it, an edge much
    less sharp than the card's, too little contrast, and a point at the picture's border.
    """
    import numpy as np

    wider = max(blur_px, USUAL_BLUR_PX) / USUAL_BLUR_PX
    alone = ALONE_PX * wider
    offsets = np.arange(-alone - 4 * wider, alone + 4 * wider + STEP_PX / 2, STEP_PX)
    slopes = _slopes_of_light(rgb, point, way / np.hypot(*way), offsets, bend)
    if slopes is None:
        return None
    near = np.abs(offsets) <= alone
    steepest = np.abs(slopes[:, near])
    best = np.abs(slopes[int(steepest.max(1).argmax())])
    place = _only_peak(offsets, best, near, REACH_PX * wider)
    if place is None or _too_weak_or_wide(offsets, best, place, blur_px, wider):
        return None
    return _centre(offsets, best, place)


def _slopes_of_light(
    rgb: NDArray[np.uint8], point: Floats, way: Floats, offsets: Floats, bend: float
) -> Floats | None:
    """The slope of the mean profile along the way, one row for each skew of the edge; smoothed."""
    import numpy as np
    from scipy.ndimage import gaussian_filter1d, map_coordinates

    beside = np.array([-way[1], way[0]])
    widths = np.arange(-HALF_WIDTH_PX, HALF_WIDTH_PX + 1.0)
    # Along the way, for each skew and width: how an edge runs off to both sides.
    shifts = np.array(SKEWS)[:, None] * widths - bend * widths**2 / 2
    along = offsets[None, None] + shifts[..., None]
    where = point + along[..., None] * way + widths[None, :, None, None] * beside
    low = np.floor(where.min((0, 1, 2))).astype(int)
    high = np.ceil(where.max((0, 1, 2))).astype(int) + 1
    if (low < 0).any() or high[0] > rgb.shape[1] or high[1] > rgb.shape[0]:
        return None
    light = linear_grey(rgb[low[1] : high[1], low[0] : high[0]]).astype(float)
    places = np.moveaxis((where - low)[..., ::-1], -1, 0)
    profiles = map_coordinates(light, places, order=1).mean(1)
    slopes = gaussian_filter1d(profiles, SMOOTH_PX / STEP_PX, axis=1, order=1, mode="nearest")
    return slopes / STEP_PX


def _only_peak(
    offsets: Floats, steepness: Floats, near: NDArray[np.bool_], reach: float
) -> int | None:
    """The index of the only peak that counts, where it lies within reach."""
    import numpy as np

    inner = steepness[1:-1]
    tops = 1 + np.flatnonzero((inner >= steepness[:-2]) & (inner > steepness[2:]))
    tops = tops[near[tops]]
    if not len(tops):
        return None
    counted = tops[steepness[tops] > SECOND * steepness[tops].max()]
    # One that still rises where the stretch ends is a second one too.
    ends = steepness[near][[0, -1]]
    rising = ends[ends > steepness[near][[1, -2]]]
    if len(counted) != 1 or (rising > SECOND * steepness[counted[0]]).any():
        return None
    return int(counted[0]) if abs(offsets[counted[0]]) <= reach else None


def _too_weak_or_wide(
    offsets: Floats, steepness: Floats, place: int, blur_px: float, wider: float
) -> bool:
    """Whether the edge is hardly there, or spreads more than the card's own."""
    import numpy as np

    hump = _hump(steepness, place, 0.5)
    width = float(offsets[hump][-1] - offsets[hump][0]) / 2.3548  # full width at half maximum
    # What smoothing added to the card's spread, in the same way.
    usual = float(np.hypot(blur_px, SMOOTH_PX))
    contrast = float(steepness[np.abs(offsets - offsets[place]) <= 3 * wider].sum()) * STEP_PX
    return contrast < LEAST_CONTRAST or width > WIDEST * usual


def _centre(offsets: Floats, steepness: Floats, place: int) -> float:
    """The middle of what rises above a third of the peak."""
    hump = _hump(steepness, place, 1 / 3)
    weights = steepness[hump] - steepness[place] / 3
    return float((offsets[hump] * weights).sum() / weights.sum())


def _hump(steepness: Floats, place: int, share: float) -> slice:
    """The stretch round a peak that stays above a share of it."""
    import numpy as np

    low = np.flatnonzero(steepness <= share * steepness[place])
    left, right = low[low < place], low[low > place]
    start = int(left[-1]) + 1 if len(left) else 0
    return slice(start, int(right[0]) if len(right) else len(steepness))
