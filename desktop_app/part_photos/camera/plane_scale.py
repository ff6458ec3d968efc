"""What a photo needs before anything in it has a size: a way from pixels to millimetres."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, Protocol

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

ScaleSource = Literal["card", "points"]


class PlaneScale(Protocol):
    """Brings pixels onto a plane parallel to the card, at a height above it.

    Pixels are (x, y) with centres at whole numbers. Millimetres are the card's: x to the right,
    y down on the card, heights up from the card towards the camera. `theta` is what was fitted,
    shape (k,), and `covariance` its covariance, shape (k, k): a mark's doubt about the scale comes
    from numeric derivatives by theta. `print_u` is the relative standard uncertainty of the print;
    `flat_u_mm` is how far the paper may lie off a plane (standard uncertainty, mm).
    """

    @property
    def source(self) -> ScaleSource:
        """Whether a card or two points gave it."""
        ...

    @property
    def theta(self) -> NDArray[np.float64]:
        """The fitted values."""
        ...

    @property
    def covariance(self) -> NDArray[np.float64]:
        """Their covariance."""
        ...

    @property
    def print_u(self) -> float:
        """Relative standard uncertainty of all lengths from the print."""
        ...

    @property
    def flat_u_mm(self) -> float:
        """Standard uncertainty of the height from paper that doesn't lie flat, mm."""
        ...

    @property
    def tilt_deg(self) -> float | None:
        """The angle between the camera's axis and straight down; None where unknown."""
        ...

    @property
    def distance_mm(self) -> float | None:
        """From the camera to where its axis meets the card; None where unknown."""
        ...

    @property
    def warnings(self) -> tuple[str, ...]:
        """Plain sentences about what this scale can't do."""
        ...

    def on_plane(
        self,
        points_px: NDArray[np.float64],
        height_mm: float | NDArray[np.float64] = 0.0,
        theta: NDArray[np.float64] | None = None,
    ) -> NDArray[np.float64]:
        """Return mm, shape (n, 2), of pixels, shape (n, 2), that lie `height_mm` above the card.

        With `theta`, as if that had been fitted; with shape (..., k) for each of them, shape
        (..., n, 2), where `height_mm` may have shape (..., 1).
        """
        ...

    def rays(
        self, points_px: NDArray[np.float64], theta: NDArray[np.float64] | None = None
    ) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Return where the camera stands, shape (3,), and directions, shape (n, 3), card mm, z up.

        With `theta` of shape (..., k), shapes (..., 3) and (..., n, 3).

        Raises TypeError where there is no camera (two points).
        """
        ...

    def to_pixels(
        self, points_mm: NDArray[np.float64], height_mm: float | NDArray[np.float64] = 0.0
    ) -> NDArray[np.float64]:
        """Return pixels, shape (n, 2), of points on the plane `height_mm` above the card."""
        ...
