"""The bench card's own white, nearest to what is looked at and not hidden by the part."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.surface.drawn_region import Outline, drawn_region

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

PLAIN = 0.06  # median deviation over median, a channel: paper with nothing on it
BRIGHT = 0.6  # of the lightest plain patch: paper that lies in no shadow


def card_white(
    pixels: PhotoPixels,
    scale: PlaneScale,
    patches_mm: Sequence[tuple[float, float, float, float]],
    near_px: Outline,
) -> tuple[tuple[float, float], ...] | None:
    """Return the outline, in pixels, of the white patch nearest to `near_px`, or None.

    `patches_mm` are (left, top, right, bottom) on the card where it is bare paper. A patch counts
    when it lies in the photo, is of one plain colour, and is lit as the others are.
    """
    import numpy as np

    middle = np.mean(np.array(near_px, float), axis=0)
    found = []
    for left, top, right, bottom in patches_mm:
        corners = np.array([(left, top), (right, top), (right, bottom), (left, bottom)], float)
        outline = scale.to_pixels(corners)
        light = _plain_light(pixels, outline)
        if light is not None:
            away = float(np.hypot(*(outline.mean(0) - middle)))
            found.append((away, light, tuple((float(x), float(y)) for x, y in outline)))
    if not found:
        return None
    lightest = max(light for _, light, _ in found)
    return min(patch for patch in found if patch[1] >= BRIGHT * lightest)[2]


def _plain_light(pixels: PhotoPixels, outline: NDArray[np.float64]) -> float | None:
    """Return the light of a patch of plain paper, 0 to 1; None for anything else."""
    import numpy as np

    size = np.array([pixels.width - 1, pixels.height - 1])
    if not np.isfinite(outline).all() or (outline < 0).any() or (outline > size).any():
        return None
    try:
        patch = drawn_region(pixels, [(float(x), float(y)) for x, y in outline], "The white")
    except PhotoCannot:
        return None  # too few pixels to be sure of
    if patch.left_out > 0.1:
        return None
    light = patch.light[patch.tells]
    mid = np.median(light, axis=0)
    if (np.median(np.abs(light - mid), axis=0) > PLAIN * mid).any():
        return None
    return float(mid.mean())
