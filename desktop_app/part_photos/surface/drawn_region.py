"""What lies inside an outline that was drawn on a photo: light, and which pixels say nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.linear_light import to_linear
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Outline = Sequence[tuple[float, float]]

LEAST_PIXELS = 400  # fewer are a spot, not a surface
GLARE, DEEP_SHADOW = 250, 12  # of 255: a channel at its end, or nothing but the sensor's noise


@dataclass(frozen=True, slots=True, eq=False)
class DrawnRegion:
    """The pixels inside an outline: `light` (n, 3) linear, `at` (n, 2) their x and y.

    `tells` (n,) is false where a pixel is glare or deep shadow. Light is the mean of 3 × 3 pixels,
    which takes the sensor's noise down and the JPEG's blocks with it.
    """

    light: NDArray[np.float32]
    at: NDArray[np.int64]
    tells: NDArray[np.bool_]

    @property
    def left_out(self) -> float:
        """The share of its pixels that say nothing of the colour, 0 to 1."""
        return 1.0 - float(self.tells.mean())


def drawn_region(pixels: PhotoPixels, outline: Outline, name: str) -> DrawnRegion:
    """Return what an outline of upright pixels (x, y) holds.

    Raises PhotoCannot for an outline with fewer than three points, or that holds fewer than 400
    pixels of the photo; `name` says which outline that is, "The white" for one.
    """
    import cv2
    import numpy as np

    if len(outline) < 3:
        raise PhotoCannot(
            tr("{name} has no outline yet.", name=name),
            do=tr("Draw at least three points round it."),
        )
    corners = np.array(outline, float)
    size = np.array([pixels.width, pixels.height])
    low = np.clip(np.floor(corners.min(0)).astype(int) - 1, 0, size)
    high = np.clip(np.ceil(corners.max(0)).astype(int) + 2, 0, size)
    crop = pixels.rgb[low[1] : high[1], low[0] : high[0]]
    mask = np.zeros(crop.shape[:2], np.uint8)
    if mask.size:
        sixteenths = np.round((corners - low) * 16).astype(np.int32)
        cv2.fillPoly(mask, [sixteenths], 1, shift=4)
    inside = mask > 0
    if inside.sum() < LEAST_PIXELS:
        raise PhotoCannot(
            tr(
                "{name} is too small to count: fewer than {least_pixels} pixels.",
                name=name,
                least_pixels=LEAST_PIXELS,
            ),
            do=tr("Draw a larger outline, or take the photo from nearer."),
        )
    light = np.asarray(cv2.blur(to_linear(crop), (3, 3)), np.float32)[inside]
    own = crop[inside]
    tells = (own.max(1) < GLARE) & (own.max(1) > DEEP_SHADOW)
    return DrawnRegion(light, np.argwhere(inside)[:, ::-1] + low, tells)
