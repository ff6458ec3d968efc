"""Whether the wall under a top edge is seen so narrowly that both edges look like one."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.linear_light import linear_grey

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

NARROWEST_PX = 0.6  # below, taking the wall's foot for the edge does less harm than a click
BESIDE_PX = 4.0  # where the light to both sides of an edge is looked at


def feet_of(points_px: Floats, ways: Floats, height_mm: float, scale: PlaneScale | None) -> Floats:
    """Return how far along its way each point's foot on the card is seen, pixels, shape (n,).

    Noughts where nothing tells: no camera, or a mark on the card itself.
    """
    import numpy as np

    if scale is None or scale.source != "card" or height_mm <= 0:
        return np.zeros(len(points_px))
    flat = scale.on_plane(points_px, height_mm)
    feet = ((scale.to_pixels(flat) - points_px) * ways).sum(1)
    return np.asarray(np.nan_to_num(feet), float)


def hides_a_wall(
    rgb: NDArray[np.uint8], edge: Floats, way: Floats, foot_px: float, wider: float, far_px: float
) -> bool:
    """Whether an edge may be the foot of a wall instead of its rim.

    It may where the foot would be seen on the brighter side, which is the card's, and too near to
    be an edge of its own. `wider` is how much blurrier than usual the photo is.
    """
    import numpy as np

    if not NARROWEST_PX * wider < abs(foot_px) < far_px:
        return False
    beside = edge + np.array([[-1.0], [1.0]]) * (BESIDE_PX * wider + abs(foot_px)) * way
    columns, rows = np.clip(
        np.round(beside.T).astype(int), 1, np.array([rgb.shape[1], rgb.shape[0]])[:, None] - 2
    )
    before, behind = (
        float(linear_grey(rgb[row - 1 : row + 2, column - 1 : column + 2]).mean())
        for row, column in zip(rows, columns, strict=True)
    )
    return (behind - before) * foot_px > 0
