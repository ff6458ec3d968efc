"""A scale without a card: two points in the photo whose distance is known."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import dist, isfinite, sqrt
from typing import TYPE_CHECKING, Literal, NoReturn

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

CLICK_U_PX = 1.15  # standard uncertainty of a clicked point along x and along y; found by trials
LEAST_PX = 20.0  # nearer than this, two clicks give no length
LEAST_MM, MOST_MM = 0.01, 10_000.0


@dataclass(frozen=True, slots=True)
class TwoPointScale:
    """Millimetres from two points of known distance (a PlaneScale).

    `length_mm` is their distance, `length_u_mm` half the width of the range it certainly lies in
    (a rectangular distribution). theta is (mm for each pixel,), shape (1,); its doubt is the
    length's and that of both clicks (JCGM 100, 5.1.6). It takes the camera to look straight down
    at the plane in which both points lie, so heights change nothing. Raises ShopTrouble for
    points or lengths that give no scale.
    """

    points_px: tuple[tuple[float, float], tuple[float, float]]
    length_mm: float
    length_u_mm: float = 0.0
    source: Literal["points"] = field(default="points", init=False)

    def __post_init__(self) -> None:
        if not all(isfinite(value) for point in self.points_px for value in point):
            _refuse(tr("The scale's points are no pixels."), tr("two points of the photo"))
        if not LEAST_MM <= self.length_mm <= MOST_MM:
            _refuse(
                tr("A scale of {length_mm:g} mm can't be.", length_mm=self.length_mm),
                tr(
                    "a distance of {least_mm:g} to {most_mm:g} mm",
                    least_mm=LEAST_MM,
                    most_mm=MOST_MM,
                ),
            )
        if not 0 <= self.length_u_mm < self.length_mm:
            _refuse(
                tr(
                    "The scale's length can't be off by {length_u_mm:g} mm.",
                    length_u_mm=self.length_u_mm,
                ),
                tr("0 or more, and less than its {length_mm:g} mm", length_mm=self.length_mm),
            )
        if dist(*self.points_px) < LEAST_PX:
            _refuse(
                tr("The scale's two points lie too close together."),
                tr(
                    "two points {least_px:g} pixels apart or more, better far apart",
                    least_px=LEAST_PX,
                ),
            )

    @property
    def theta(self) -> Floats:
        """Millimetres for each pixel, shape (1,)."""
        import numpy as np

        return np.array([self.length_mm / dist(*self.points_px)])

    @property
    def covariance(self) -> Floats:
        """The variance of theta, shape (1, 1)."""
        import numpy as np

        of_length = self.length_u_mm / sqrt(3) / self.length_mm
        of_clicks = sqrt(2) * CLICK_U_PX / dist(*self.points_px)
        relative = of_length**2 + of_clicks**2
        return np.array([[float(self.theta[0]) ** 2 * relative]])

    @property
    def print_u(self) -> float:
        """Nothing is printed."""
        return 0.0

    @property
    def flat_u_mm(self) -> float:
        """There is no paper."""
        return 0.0

    @property
    def tilt_deg(self) -> float | None:
        """Not known."""
        return None

    @property
    def distance_mm(self) -> float | None:
        """Not known."""
        return None

    @property
    def warnings(self) -> tuple[str, ...]:
        """What two points can't do."""
        return (
            tr(
                "The scale comes from two points: it holds only in the plane they lie in, "
                "seen straight from above. What lies nearer to the camera measures too "
                "large, what lies askew too small, and ± doesn't know of it. Use the bench "
                "card where it counts."
            ),
        )

    def on_plane(
        self, points_px: Floats, height_mm: float | Floats = 0.0, theta: Floats | None = None
    ) -> Floats:
        """Return mm, shape (n, 2), of pixels, shape (n, 2); the height is not used.

        With `theta` (..., 1), shape (..., n, 2).
        """
        import numpy as np

        mm_per_px = (self.theta if theta is None else theta)[..., None]
        return np.asarray(points_px, float) * mm_per_px

    def rays(self, points_px: Floats, theta: Floats | None = None) -> NoReturn:
        """Raise TypeError: two points don't tell where the camera stood."""
        raise TypeError("two points give no camera")

    def to_pixels(self, points_mm: Floats, height_mm: float | Floats = 0.0) -> Floats:
        """Return pixels, shape (n, 2), of mm, shape (n, 2); the height is not used."""
        import numpy as np

        return np.asarray(points_mm, float) / float(self.theta[0])


def _refuse(what: str, accepted: str) -> NoReturn:
    raise ShopTrouble(what, do=tr("Accepted: {accepted}.", accepted=accepted))
