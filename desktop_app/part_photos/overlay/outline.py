"""A part's outline in millimetres: points every quarter of a millimetre, on the edge itself."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.linear_light import to_linear
from desktop_app.part_photos.overlay.plane_move import PlaneMove

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.overlay.part_view import PartView

SPACING_MM = 0.25
MOST_POINTS = 1500
SEARCH_MM = 1.0  # how far from the mask's rim the edge is looked for


@dataclass(frozen=True, slots=True, eq=False)
class Outline:
    """`points` and outward `normals`, both (n, 2), run once round the part.

    `wall` (n,) is how far a wall below the outline may stand out beyond it in the photo, in the
    unit of the points: 0 on the sides that face away from the camera. Doubt where the part ends
    (a pale rim, a sharp shadow that might be metal) counts like a wall.
    """

    points: NDArray[np.float64]
    normals: NDArray[np.float64]
    wall: NDArray[np.float64]

    def moved(self, move: PlaneMove) -> Outline:
        """Return the outline after a move."""
        return Outline(move(self.points), move.turned(self.normals), self.wall * move.stretch)

    def turned_over(self) -> Outline:
        """Return the mirror picture of the outline; it still runs clockwise."""
        import numpy as np

        over = np.array([-1.0, 1.0])
        points, normals = self.points[::-1] * over, self.normals[::-1] * over
        return Outline(points, normals, self.wall[::-1])

    def thinned(self, most: int) -> Outline:
        """Return about `most` of its points, evenly spread."""
        every = max(1, len(self.points) // most)
        return Outline(self.points[::every], self.normals[::every], self.wall[::every])

    def middle(self) -> NDArray[np.float64]:
        """Return the centroid of the area inside, shape (2,)."""
        import numpy as np

        x, y = (self.points - self.points[0]).T
        cross = x * np.roll(y, -1) - np.roll(x, -1) * y
        twice = float(cross.sum())
        both = [((v + np.roll(v, -1)) * cross).sum() / (3 * twice) for v in (x, y)]
        return np.asarray(self.points[0] + both)

    def area(self) -> float:
        """Return the area inside, above 0, in the squared unit of the points."""
        import numpy as np

        x, y = self.points.T
        return abs(float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())) / 2

    def size(self) -> float:
        """Return the diagonal of its bounds."""
        import numpy as np

        return float(np.hypot(*np.ptp(self.points, axis=0)))


def mask_rim(mask: NDArray[np.bool_]) -> NDArray[np.float64]:
    """Return the rim of a one-piece mask in its pixels, (n, 2), half a pixel outside its own."""
    import cv2
    import numpy as np

    # At twice the size the rim of the outermost pixels lies where the mask ends.
    doubled = mask.astype(np.uint8).repeat(2, axis=0).repeat(2, axis=1)
    found, _ = cv2.findContours(doubled, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    rim = max(found, key=cv2.contourArea)[:, 0].astype(np.float64)
    return np.asarray((rim - 0.5) / 2)


def evenly(points: NDArray[np.float64], spacing: float, smooth: float) -> NDArray[np.float64]:
    """Return a closed line resampled at even spacing, smoothed over `smooth` (standard width)."""
    import numpy as np
    from scipy.ndimage import gaussian_filter1d

    closed = np.vstack([points, points[:1]])
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(closed, axis=0).T))])
    count = int(np.clip(round(along[-1] / spacing), 24, MOST_POINTS))
    at = np.arange(count) * (along[-1] / count)
    even = np.column_stack([np.interp(at, along, closed[:, k]) for k in (0, 1)])
    width = smooth * count / along[-1]
    return np.asarray(gaussian_filter1d(even, width, axis=0, mode="wrap") if width > 0.2 else even)


def outward_normals(points: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return unit normals of a closed line that point away from its inside, (n, 2)."""
    import numpy as np

    along = np.roll(points, -2, axis=0) - np.roll(points, 2, axis=0)
    normals = np.column_stack([along[:, 1], -along[:, 0]])
    normals /= np.maximum(np.hypot(*normals.T), 1e-12)[:, None]
    x, y = (points - points.mean(axis=0)).T
    clockwise = float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())
    return normals if clockwise > 0 else -normals


def on_the_edge(view: PartView, rim_mm: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return a closed line moved along its normals onto the steepest edge near it, mm.

    In linear light: with a display's tone curve dark parts come out too small. What lies far
    from its neighbours (a scratch, a shadow's rim) takes their place.
    """
    import cv2
    import numpy as np
    from scipy.ndimage import gaussian_filter1d, median_filter

    normals = outward_normals(rim_mm)
    step = 0.5 / view.per_mm
    reach = int(SEARCH_MM / step)
    offsets = np.arange(-reach - 3, reach + 4) * step
    at = rim_mm[:, None] + normals[:, None] * offsets[None, :, None]
    places = view.to_view(at.reshape(-1, 2)).astype(np.float32)
    x, y = (np.ascontiguousarray(places[:, k]).reshape(at.shape[:2]) for k in (0, 1))
    seen = cv2.remap(view.rgb, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    light = to_linear(np.asarray(seen, np.uint8)).astype(np.float64)
    light = gaussian_filter1d(light, 1.2, axis=0, mode="wrap")  # along the outline: grain
    slope = np.abs(np.gradient(gaussian_filter1d(light, 1.6, axis=1), axis=1)).sum(axis=-1)
    slope *= np.exp(-0.5 * (offsets / (0.6 * SEARCH_MM)) ** 2)
    inner = slope[:, 3:-3]
    best = np.clip(np.argmax(inner, axis=1) + 3, 1, len(offsets) - 2)
    each = np.arange(len(rim_mm))
    before, top, after = (slope[each, best + k] for k in (-1, 0, 1))
    bent = before - 2 * top + after
    part = np.where(bent < 0, 0.5 * (before - after) / np.where(bent < 0, bent, -1.0), 0.0)
    shift = offsets[best] + np.clip(part, -0.5, 0.5) * step
    usual = median_filter(shift, 9, mode="wrap")
    shift = np.where(np.abs(shift - usual) > 0.2, usual, shift)
    return np.asarray(rim_mm + normals * shift[:, None])
