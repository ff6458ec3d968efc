"""The pinhole camera: where it stands, and where a point of the bench falls in its picture."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Camera:
    """A camera without lens faults; mm, z up from the bench; pixel centres at whole numbers.

    `turn` takes bench directions to camera directions (x right, y down, z away from the camera).
    """

    focal_px: float
    width: int
    height: int
    turn: Floats
    place: Floats

    @property
    def centre_px(self) -> tuple[float, float]:
        """The principal point, in the middle of the picture."""
        return (self.width - 1) / 2, (self.height - 1) / 2

    def project(self, points_mm: Floats) -> Floats:
        """Pixel positions, shape (n, 2), of bench points, shape (n, 3), all before the camera."""
        seen = (np.atleast_2d(points_mm) - self.place) @ self.turn.T
        centre = np.array(self.centre_px)
        pixels: Floats = self.focal_px * seen[:, :2] / seen[:, 2:3] + centre
        return pixels

    def depth(self, points_mm: Floats) -> Floats:
        """Distance along the optical axis, in mm, of points of shape (n, 3)."""
        return np.asarray((np.atleast_2d(points_mm) - self.place) @ self.turn[2])


def turn_about(axis: str, degrees: float) -> Floats:
    """Rotation matrix about one bench axis, right-handed."""
    c, s = np.cos(np.radians(degrees)), np.sin(np.radians(degrees))
    if axis == "x":
        return np.array([[1, 0, 0], [0, c, -s], [0, s, c]])
    if axis == "y":
        return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1.0]])


def look_at(
    target: Floats,
    distance: float,
    elevation: float,
    azimuth: float,
    roll: float,
    focal_px: float,
    size: tuple[int, int],
) -> Camera:
    """A camera `distance` mm from the target; degrees, elevation 90 looks straight down."""
    e, a = np.radians(elevation), np.radians(azimuth)
    outward = np.array([np.cos(e) * np.cos(a), np.cos(e) * np.sin(a), np.sin(e)])
    right = np.array([-np.sin(a), np.cos(a), 0.0])
    down = np.cross(-outward, right)
    level = np.stack([right, down, -outward])
    spin = turn_about("z", roll)
    return Camera(focal_px, size[0], size[1], spin @ level, target + distance * outward)
