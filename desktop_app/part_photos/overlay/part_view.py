"""A photo brought onto the plane of the part's outline: a picture with so many pixels a mm."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.photo_cannot import PhotoCannot

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.photo_pixels import PhotoPixels

Rect = tuple[float, float, float, float]  # left, top, right, bottom in mm

_FAR_PX = 1e5
_NODE = 16  # the map is worked out at every 16th pixel and is straight between


@dataclass(frozen=True, slots=True, eq=False)
class PartView:
    """`rgb` is (h, w, 3) uint8 sRGB; pixel (0, 0) has its centre at `origin_mm` of the plane.

    `seen` is (h, w), true where the photo has a pixel.
    """

    rgb: NDArray[np.uint8]
    seen: NDArray[np.bool_]
    origin_mm: tuple[float, float]
    per_mm: float

    def to_mm(self, points: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return mm on the plane of pixels of this view, both (n, 2)."""
        return points / self.per_mm + self.origin_mm

    def to_view(self, points_mm: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return pixels of this view of mm on the plane, both (n, 2)."""
        return (points_mm - self.origin_mm) * self.per_mm


def part_view(
    pixels: PhotoPixels, scale: PlaneScale, rect_mm: Rect, height_mm: float, per_mm: float
) -> PartView:
    """Return what the photo shows of a rectangle, as if all of it lay `height_mm` above the card.

    Where the photo has more pixels than the view, they are averaged first, so that fine grain
    doesn't turn into a coarse pattern. Raises PhotoCannot for a rectangle (nan) that reaches beyond
    what the camera can have seen.
    """
    import cv2
    import numpy as np

    if not np.isfinite(rect_mm).all():
        raise PhotoCannot(
            tr("The card's free field reaches further than the camera can see."),
            do=tr("Check free_field_mm in the card's layout."),
        )
    left, top, right, bottom = rect_mm
    wide = max(2, round((right - left) * per_mm) + 1)
    high = max(2, round((bottom - top) * per_mm) + 1)
    columns, rows = -(-wide // _NODE) + 1, -(-high // _NODE) + 1
    nodes = np.stack(np.meshgrid(np.arange(columns), np.arange(rows)), axis=-1)
    nodes_mm = np.asarray(nodes.reshape(-1, 2) * _NODE / per_mm + (left, top), np.float64)
    points = scale.to_pixels(nodes_mm, height_mm)
    # Beyond what the lens model describes there is no pixel, nor far outside the picture.
    near = np.clip(np.nan_to_num(points, nan=-_FAR_PX), -_FAR_PX, _FAR_PX)
    grid = near.reshape(rows, columns, 2).astype(np.float32)
    # Node n stands at pixel 16 n of the view: the map between is linear in both directions.
    x = np.arange(wide, dtype=np.float32) / _NODE
    y = np.arange(high, dtype=np.float32) / _NODE
    at_x, at_y = np.broadcast_to(x, (high, wide)), np.broadcast_to(y[:, None], (high, wide))
    dense = np.asarray(cv2.remap(grid, at_x.copy(), at_y.copy(), cv2.INTER_LINEAR), np.float32)
    step = float(np.median(np.hypot(*np.diff(dense[high // 2], axis=0).T)))
    small, factor = _reduced(pixels.rgb, step)
    across, down = (np.ascontiguousarray((dense[..., k] + 0.5) / factor - 0.5) for k in (0, 1))
    rgb = cv2.remap(small, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    tall, broad = small.shape[:2]
    inside = (across >= 0) & (across <= broad - 1) & (down >= 0) & (down <= tall - 1)
    return PartView(np.asarray(rgb, np.uint8), np.asarray(inside), (left, top), per_mm)


def _reduced(rgb: NDArray[np.uint8], step: float) -> tuple[NDArray[np.uint8], int]:
    """Return the photo at a whole fraction of its size that fits steps of `step` pixels."""
    import cv2
    import numpy as np

    factor = max(1, min(int(step + 0.3), *rgb.shape[:2]))
    if factor == 1:
        return rgb, 1
    high, wide = rgb.shape[0] // factor, rgb.shape[1] // factor
    cut = rgb[: high * factor, : wide * factor]
    return np.asarray(cv2.resize(cut, (wide, high), interpolation=cv2.INTER_AREA), np.uint8), factor
