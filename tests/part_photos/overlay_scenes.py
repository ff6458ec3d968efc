"""Prisms on a card before an exact pinhole camera: photos whose alignment is known."""

from __future__ import annotations

from dataclasses import dataclass, field

import cv2
import numpy as np
from numpy.typing import NDArray

from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.marker_modules import black_blocks, marker_modules
from desktop_app.part_photos.overlay.free_field import free_field
from desktop_app.part_photos.photo_pixels import PhotoPixels

Points = NDArray[np.float64]
FIELD = (30.0, 30.0, 180.0, 232.0)  # mm; inside the free field of every card of the program


@dataclass(frozen=True)
class Pinhole:
    """A camera without lens errors, whose place is known: a scale that says the exact truth.

    The camera stands at `eye_mm` (x, y, height above the card) and looks at `at_mm` on the card.
    """

    eye_mm: tuple[float, float, float]
    at_mm: tuple[float, float] = (105.0, 130.0)
    roll: float = 0.0
    focal_px: float = 940.0
    size: tuple[int, int] = (1200, 900)
    source: str = "card"
    theta: Points = field(default_factory=lambda: np.zeros(0))
    covariance: Points = field(default_factory=lambda: np.zeros((0, 0)))
    print_u: float = 0.0003
    flat_u_mm: float = 0.3
    warnings: tuple[str, ...] = ()

    @property
    def axes(self) -> Points:
        """The camera's axes as rows: right, down, forward."""
        x, y, height = self.eye_mm
        forward = np.array([self.at_mm[0] - x, self.at_mm[1] - y, height])
        forward /= np.linalg.norm(forward)
        right = np.cross(np.array([-np.sin(self.roll), np.cos(self.roll), 0.0]), forward)
        right /= np.linalg.norm(right)
        return np.array([right, np.cross(forward, right), forward])

    @property
    def tilt_deg(self) -> float:
        return float(np.degrees(np.arccos(self.axes[2, 2])))

    @property
    def distance_mm(self) -> float:
        return float(np.linalg.norm([*np.subtract(self.at_mm, self.eye_mm[:2]), self.eye_mm[2]]))

    def to_pixels(self, points_mm: Points, height_mm: float | Points = 0.0) -> Points:
        heights = np.broadcast_to(height_mm, len(points_mm))
        world = np.column_stack([points_mm - self.eye_mm[:2], self.eye_mm[2] - heights])
        seen = world @ self.axes.T
        middle = (np.array(self.size) - 1) / 2
        return np.asarray(seen[:, :2] / seen[:, 2:] * self.focal_px + middle)

    def rays(self, points_px: Points, theta: Points | None = None) -> tuple[Points, Points]:
        middle = (np.array(self.size) - 1) / 2
        flat = np.column_stack([(points_px - middle) / self.focal_px, np.ones(len(points_px))])
        directions = flat @ self.axes
        directions[:, 2] *= -1  # heights are upwards
        return np.array(self.eye_mm), directions

    def on_plane(
        self, points_px: Points, height_mm: float | Points = 0.0, theta: Points | None = None
    ) -> Points:
        eye, directions = self.rays(points_px)
        far = (np.asarray(height_mm) - eye[2]) / directions[:, 2]
        return np.asarray(eye[:2] + directions[:, :2] * np.reshape(far, (-1, 1)))


@dataclass(frozen=True)
class Prism:
    """A part with an upright wall: its outline about (0, 0) in mm, and where it was laid."""

    outline: Points
    height_mm: float = 0.0
    turn_deg: float = 0.0
    at_mm: tuple[float, float] = (105.0, 130.0)
    light: tuple[float, float, float] = (0.10, 0.11, 0.12)

    def laid(self, points: Points | None = None) -> Points:
        """Return points of the part where they lie on the card, mm."""
        c, s = np.cos(np.radians(self.turn_deg)), np.sin(np.radians(self.turn_deg))
        own = self.outline if points is None else points
        return np.asarray(own @ np.array([[c, s], [-s, c]]) + self.at_mm)


def photo(
    camera: Pinhole,
    part: Prism | None,
    seed: int = 1,
    shadow: float = 0.0,
    card: CardLayout | None = None,
) -> PhotoPixels:
    """Photograph a part on a tinted field on white paper, in linear light, with grain."""
    high, wide = camera.size[1], camera.size[0]
    fine = np.full((high * 2, wide * 2, 3), 0.85, np.float32)
    left, top, right, bottom = FIELD if card is None else free_field(card)
    corners = np.array([[left, top], [right, top], [right, bottom], [left, bottom]])
    _fill(fine, camera.to_pixels(corners), (0.55, 0.62, 0.69))
    for square in () if card is None else _black_squares(card):
        _fill(fine, camera.to_pixels(square), (0.04, 0.04, 0.04))
    if part is not None:
        foot, head = (camera.to_pixels(part.laid(), h) for h in (0.0, part.height_mm))
        if shadow:
            fine *= _shadow(fine.shape, foot, shadow)
        after = np.roll(np.arange(len(foot)), -1)
        for one, other in enumerate(after):
            quad = np.array([foot[one], foot[other], head[other], head[one]])
            _fill(fine, quad, tuple(0.6 * value for value in part.light))
        _fill(fine, head, part.light)
    light = cv2.GaussianBlur(
        cv2.resize(fine, (wide, high), interpolation=cv2.INTER_AREA), (0, 0), 0.7
    )
    light = light * (1 - 0.1 * np.linspace(-1, 1, wide, dtype=np.float32)[None, :, None])
    grain = np.random.default_rng(seed).normal(0, 1.5, light.shape)
    return PhotoPixels(np.clip(_encoded(light) * 255 + grain, 0, 255).astype(np.uint8))


def _black_squares(card: CardLayout) -> list[Points]:
    """Return the outlines, mm, of everything black in the card's markers."""
    squares = []
    for marker in card.markers:
        start, across, _, down = (np.array(corner) for corner in marker.corners_mm)
        for run in black_blocks(marker_modules(card.dictionary, marker.id)):
            count = len(marker_modules(card.dictionary, marker.id))
            left, top, right, bottom = (value / count for value in run)
            at = np.array([[left, top], [right, top], [right, bottom], [left, bottom]])
            squares.append(start + at @ np.array([across - start, down - start]))
    return squares


def _encoded(light: NDArray[np.float32]) -> NDArray[np.float32]:
    """Return sRGB of linear light (IEC 61966-2-1)."""
    low = light * 12.92
    high = 1.055 * np.maximum(light, 1e-6) ** (1 / 2.4) - 0.055
    return np.asarray(np.where(light <= 0.0031308, low, high), np.float32)


def _fill(picture: NDArray[np.float32], points_px: Points, light: tuple[float, ...]) -> None:
    points = np.round((points_px * 2 + 0.5) * 64).astype(np.int32)
    cv2.fillPoly(picture, [points], light, shift=6)


def _shadow(shape: tuple[int, ...], foot: Points, strength: float) -> NDArray[np.float32]:
    dark = np.zeros(shape[:2], np.float32)
    cv2.fillPoly(dark, [np.round((foot + np.array([14, 10])) * 2).astype(np.int32)], 1.0)
    return np.asarray(1 - strength * cv2.GaussianBlur(dark, (0, 0), 18), np.float32)[..., None]


def plate(notch: float = 8.0) -> Points:
    """A plate 60 by 40 mm with a notch in one long side and a cut corner."""
    return np.array(
        [
            *([-30, -20], [5, -20], [5, -20 + notch], [15, -20 + notch], [15, -20], [30, -20]),
            *([30, 12], [22, 20], [-30, 20]),
        ],
        float,
    )


def rotor(tip: float = 6.0) -> Points:
    """A round hub with an arm that carries a tip of this length."""
    turns = np.radians(np.linspace(25, 335, 60))
    hub = np.column_stack([np.cos(turns), np.sin(turns)]) * 14
    arm = np.array([[24, -6], [24, -2.5], [24 + tip, -2.5], [24 + tip, 2.5], [24, 2.5], [24, 6]])
    return np.vstack([arm, hub]).astype(float)


def disc(radius: float = 20.0) -> Points:
    """A round part."""
    turns = np.linspace(0, 2 * np.pi, 120, endpoint=False)
    return np.column_stack([np.cos(turns), np.sin(turns)]) * radius
