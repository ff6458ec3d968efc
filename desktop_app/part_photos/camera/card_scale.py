"""The scale that a bench card gives a photo: a camera, its doubt, and pixels in millimetres."""

from __future__ import annotations

import json
from dataclasses import dataclass, field, replace
from math import acos, degrees, exp
from typing import TYPE_CHECKING, Any, Literal

from desktop_app.part_photos.camera.lens import CAMERA, project, rays_from, turned
from desktop_app.part_photos.kept_json import kept_list, kept_number, kept_object

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

FLAT_U_MM = 0.3  # how far paper on a bench lies off its mean plane; found by trials


@dataclass(frozen=True, slots=True, eq=False)
class CardScale:
    """A photo's camera as its bench card tells it (a PlaneScale).

    `theta` has shape (11,): see lens.py; `covariance` (11, 11). The paper's arch and the black's
    growth were fitted beside them and are accounted for in the covariance; they describe the paper,
    not the part. Heights count from the mean plane of the markers that were seen; by how much the
    table under the part differs from it is `flat_u_mm`.

    `blur_px` is the standard deviation of an edge's spread (the blurrier of upright and sideways),
    `residual_px` how far the corners lie from the fit (root mean square along x and y), `mm_per_px`
    the size of a pixel at `middle_mm`, the middle of the markers that were seen.
    """

    theta: Floats
    covariance: Floats
    print_u: float
    tilt_deg: float
    distance_mm: float
    mm_per_px: float
    middle_mm: tuple[float, float]
    card: str
    markers_seen: tuple[int, ...]
    residual_px: float
    blur_px: float
    warnings: tuple[str, ...] = ()
    flat_u_mm: float = FLAT_U_MM
    source: Literal["card"] = field(default="card", init=False)

    def rays(self, points_px: Floats, theta: Floats | None = None) -> tuple[Floats, Floats]:
        """Return where the camera stands (3,) and directions (n, 3) of pixels (n, 2), mm, z up.

        With `theta` (..., 11): (..., 3) and (..., n, 3). nan for pixels beyond what the lens model
        describes.
        """
        import numpy as np

        place, directions = rays_from(self.theta if theta is None else theta, points_px)
        up = np.array([1.0, 1.0, -1.0])
        return place * up, directions * up

    def on_plane(
        self, points_px: Floats, height_mm: float | Floats = 0.0, theta: Floats | None = None
    ) -> Floats:
        """Return mm, shape (n, 2), of pixels (n, 2) that lie `height_mm` above the card.

        With `theta` (..., 11), shape (..., n, 2); heights may then have shape (..., 1). nan where
        the pixel's ray doesn't meet that plane: past the horizon, or a plane at or above the
        camera.
        """
        import numpy as np

        place, directions = self.rays(points_px, theta)
        falls = directions[..., 2]
        steps = (height_mm - place[..., 2, None]) / np.where(falls < 0, falls, np.nan)
        steps = np.where(steps > 0, steps, np.nan)
        return place[..., None, :2] + steps[..., None] * directions[..., :2]

    def to_pixels(self, points_mm: Floats, height_mm: float | Floats = 0.0) -> Floats:
        """Return pixels (n, 2) of points (n, 2) in mm on the plane `height_mm` above the card.

        nan where the point lies behind the camera.
        """
        import numpy as np

        points = np.asarray(points_mm, float)
        heights = np.broadcast_to(height_mm, len(points))
        return project(self.theta, np.column_stack([points, -heights]))

    def printed_otherwise(self, times: float, print_u: float) -> CardScale:
        """Return the scale for a card printed `times` as large, with the print's own doubt.

        All lengths on the card grow alike, and with them the camera's distance: the picture stays.
        """
        import numpy as np

        grows = np.ones(len(self.theta))
        grows[8:11] = times
        x, y = self.middle_mm
        return replace(
            self,
            theta=self.theta * grows,
            covariance=self.covariance * np.outer(grows, grows),
            print_u=print_u,
            distance_mm=self.distance_mm * times,
            mm_per_px=self.mm_per_px * times,
            middle_mm=(x * times, y * times),
        )

    def as_json(self) -> str:
        """Return the whole scale as JSON, to the last digit."""
        names = [name for name in _KEPT if name not in ("theta", "covariance")]
        facts: dict[str, Any] = {name: getattr(self, name) for name in names}
        facts |= {"theta": self.theta.tolist(), "covariance": self.covariance.tolist()}
        return json.dumps(facts, ensure_ascii=False)

    @staticmethod
    def from_json(text: str) -> CardScale:
        """Return the scale that `as_json` wrote; raises ValueError for anything else."""
        import numpy as np

        facts = kept_object(text)
        seen, said = kept_list(facts, "markers_seen"), kept_list(facts, "warnings")
        middle = [kept_number(one, *_ANYWHERE) for one in kept_list(facts, "middle_mm")]
        rows = [_numbers(row, CAMERA) for row in kept_list(facts, "covariance")]
        if len(middle) != 2 or len(rows) != CAMERA or not all(map(_is_id, seen)):
            raise ValueError("not the scale of a card")
        if not isinstance(facts.get("card"), str) or not all(isinstance(one, str) for one in said):
            raise ValueError("not the scale of a card")
        covariance = np.array(rows)
        if not _is_covariance(covariance):
            raise ValueError("no covariance")
        return CardScale(
            theta=np.array(_numbers(facts.get("theta"), CAMERA)),
            covariance=covariance,
            card=facts["card"],
            markers_seen=tuple(seen),
            middle_mm=(middle[0], middle[1]),
            warnings=tuple(said),
            **{name: kept_number(facts.get(name), *ends) for name, ends in _FIGURES.items()},
        )


_ANYWHERE = (-1e7, 1e7)
_FIGURES = {
    "print_u": (0.0, 0.1),
    "tilt_deg": (0.0, 90.0),
    "distance_mm": (1.0, 1e5),
    "mm_per_px": (1e-4, 10.0),
    "residual_px": (0.0, 1e3),
    "blur_px": (0.0, 1e3),
    "flat_u_mm": (0.0, 100.0),
}


def _numbers(found: object, count: int) -> list[float]:
    if not isinstance(found, list) or len(found) != count:
        raise ValueError("not the scale of a card")
    return [kept_number(one, -1e12, 1e12) for one in found]


def _is_id(one: object) -> bool:
    return isinstance(one, int) and not isinstance(one, bool) and one >= 0


def _is_covariance(matrix: Floats) -> bool:
    """Tell whether a matrix is symmetric and has no variance below nought (rounding aside)."""
    import numpy as np

    if not np.allclose(matrix, matrix.T, rtol=1e-6, atol=1e-12):
        return False
    spread = np.sqrt(np.maximum(np.diag(matrix), 0))
    scaled = matrix / np.where(np.outer(spread, spread) > 0, np.outer(spread, spread), 1)
    return bool(np.linalg.eigvalsh(scaled).min() > -1e-6)


_KEPT = tuple(name for name in CardScale.__dataclass_fields__ if name != "source")


@dataclass(frozen=True, slots=True)
class View:
    """How a camera looks at the card: tilt, distance along its axis, and a pixel's size there."""

    tilt_deg: float
    distance_mm: float
    mm_per_px: float


def view_of(theta: Floats, middle_mm: Floats) -> View:
    """Return the view of a camera theta (11,); `mm_per_px` at `middle_mm` (2,) on the card."""
    import numpy as np

    down = turned(theta[5:8])
    place = -down.T @ theta[8:11]
    upright = float(np.clip(down[2, 2], -1.0, 1.0))
    spread = middle_mm + 0.5 * np.array([[-1.0, 0], [1, 0], [0, -1], [0, 1]])
    seen = project(theta, np.column_stack([spread, np.zeros(4)]))
    area = abs(float(np.linalg.det(np.stack([seen[1] - seen[0], seen[3] - seen[2]]))))
    distance = -float(place[2]) / upright if upright > 0.05 else float("inf")
    size = area**-0.5 if area > 0 else float(-place[2] / exp(float(theta[0])))
    return View(degrees(acos(upright)), distance, size)
