"""The bench card's own white, nearest to what is looked at and not hidden by the part."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.surface.drawn_region import Outline, drawn_region

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

PLAIN = 0.06  # median deviation over median, a channel: paper with nothing on it
# How far apart patches of one paper look over a page: chromaticity (shares of red and green), and
# light, as a share of the middle one. By trials under a lamp beside a window; rust lies .1 off.
ONE_COLOUR, BRIGHT = 0.03, 0.6
LEAST_ALIKE = 3  # fewer may all lie under the part


def card_white(
    pixels: PhotoPixels,
    scale: PlaneScale,
    patches_mm: Sequence[tuple[float, float, float, float]],
    near_px: Outline,
) -> tuple[tuple[float, float], ...] | None:
    """Return the outline, in pixels, of the white patch nearest to `near_px`, or None.

    `patches_mm` are (left, top, right, bottom) on the card where it is bare paper. A patch counts
    when it lies in the photo, is of one plain colour, and looks like most of the others: what a
    part covers does not. None where fewer than three, or fewer than half of the plain ones, agree.
    """
    import numpy as np

    middle = np.mean(np.array(near_px, float), axis=0)
    outlines, lights = [], []
    for left, top, right, bottom in patches_mm:
        corners = np.array([(left, top), (right, top), (right, bottom), (left, bottom)], float)
        outline = scale.to_pixels(corners)
        light = _plain_light(pixels, outline)
        if light is not None:
            outlines.append(outline)
            lights.append(light)
    if len(lights) < LEAST_ALIKE:
        return None
    alike = np.flatnonzero(_alike(np.array(lights)))
    if len(alike) < max(LEAST_ALIKE, len(lights) / 2):
        return None
    nearest = min(alike, key=lambda n: float(np.hypot(*(outlines[n].mean(0) - middle))))
    return tuple((float(x), float(y)) for x, y in outlines[nearest])


def _alike(lights: NDArray[np.float64]) -> NDArray[np.bool_]:
    """Tell which lights, (n, 3), have the middle colour, and of these the middle brightness."""
    import numpy as np

    whole = lights.sum(1)
    colour = lights[:, :2] / whole[:, None]
    alike = np.hypot(*(colour - np.median(colour, axis=0)).T) <= ONE_COLOUR
    if not alike.any():
        return np.asarray(alike)
    bright = whole / np.median(whole[alike])
    return np.asarray(alike & (bright >= BRIGHT) & (bright <= 1 / BRIGHT))


def _plain_light(pixels: PhotoPixels, outline: NDArray[np.float64]) -> NDArray[np.float64] | None:
    """Return the light of a plain patch, (3,), 0 to 1 each; None for anything else."""
    import numpy as np

    size = np.array([pixels.width - 1, pixels.height - 1])
    if not np.isfinite(outline).all() or (outline < 0).any() or (outline > size).any():
        return None
    try:
        patch = drawn_region(pixels, [(float(x), float(y)) for x, y in outline], tr("The white"))
    except PhotoCannot:
        return None  # too few pixels to be sure of
    if patch.left_out > 0.1:
        return None
    light = patch.light[patch.tells]
    mid = np.median(light, axis=0).astype(np.float64)
    if (np.median(np.abs(light - mid), axis=0) > PLAIN * mid).any() or not (mid > 0).all():
        return None
    return np.asarray(mid)
