"""Small pictures of a printed card, drawn from a camera that is known to the last digit."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache

import cv2
import numpy as np
from numpy.typing import NDArray

from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker
from desktop_app.part_photos.bench_card.marker_modules import marker_modules
from desktop_app.part_photos.camera.lens import rays_from, turned, unbent
from desktop_app.part_photos.photo_pixels import PhotoPixels

Floats = NDArray[np.float64]
DOTS = 10  # of the card's drawing, per mm: every module of a 14 mm marker ends on a dot's border
FINE = 3  # each pixel is the mean of 3 by 3 looks at the card


def small_card(name: str = "card", first: int = 0, dictionary: str = "DICT_5X5_100") -> CardLayout:
    """A card 120 by 100 mm with ten markers round a free field, like a bench card."""
    columns, rows = (6, 38, 70, 102), (6, 43, 80)
    places = [(x, y) for y in rows for x in columns if y != 43 or x in (6, 102)]
    markers = tuple(
        CardMarker(first + n, ((x, y), (x + 14, y), (x + 14, y + 14), (x, y + 14)))
        for n, (x, y) in enumerate(places)
    )
    return CardLayout(name, dictionary, "test", markers, 80.0)


@dataclass(frozen=True)
class View:
    """Where the camera stands over the middle of a small card, and what its picture is like."""

    distance: float = 220.0
    tilt: float = 0.0
    towards: float = 0.0  # direction of the tilt, degrees
    roll: float = 0.0
    size: tuple[int, int] = (800, 600)
    focal: float = 960.0
    k1: float = 0.03
    blur: float = 0.6
    noise: float = 0.004
    margin: tuple[float, float] = (60.0, 50.0)
    seed: int = 1
    black: float = 0.04
    white: float = 0.75
    fingers: tuple[tuple[float, float, float, float], ...] = field(default=())

    def theta(self) -> Floats:
        """The camera, as lens.py has it."""
        tilt, towards, roll = np.radians([self.tilt, self.towards, self.roll])
        lean = turned(np.array([np.cos(towards) * tilt, np.sin(towards) * tilt, 0.0]))
        matrix = lean @ turned(np.array([0.0, 0.0, roll]))
        shift = np.array([0, 0, self.distance]) - matrix @ np.array([*self.margin, 0.0])
        centre = [(self.size[0] - 1) / 2, (self.size[1] - 1) / 2]
        rotation = cv2.Rodrigues(matrix)[0].ravel()
        return np.array([np.log(self.focal), *centre, self.k1, 0.0, *rotation, *shift])


@cache
def drawn(layout: CardLayout, view: View) -> PhotoPixels:
    """Photograph the card: anti-aliased in linear light, blurred, noisy, then sRGB's curve."""
    wide, high = view.size
    dots = _card_points(view) * DOTS - 0.5
    light = cv2.remap(
        *(_print(layout, view), dots[..., 0], dots[..., 1], cv2.INTER_LINEAR),
        borderMode=cv2.BORDER_CONSTANT,
        borderValue=view.white * 0.6,
    )
    light = light.reshape(high, FINE, wide, FINE).mean((1, 3))
    light = cv2.GaussianBlur(light, (0, 0), view.blur) if view.blur else light
    light = light + np.random.default_rng(view.seed).normal(0, view.noise, light.shape)
    light = np.clip(light, 0, 1)
    values = np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)
    grey = np.round(values * 255).astype(np.uint8)
    focal_35 = view.focal * 43.267 / float(np.hypot(wide, high))
    return PhotoPixels(np.repeat(grey[..., None], 3, axis=2), focal_35, as_taken=True)


def _card_points(view: View) -> NDArray[np.float32]:
    """Where on the card, mm, each pixel looks, FINE times along both sides: (h, w, 2)."""
    wide, high = view.size
    theta = view.theta()
    # The lens undone as a polynomial in the squared radius: millions of points go through it.
    radius = np.linspace(0.0, 1.05 * np.hypot(wide, high) / 2 / view.focal, 200)[1:]
    plain = unbent(np.column_stack([radius, 0 * radius]), view.k1, 0.0)[:, 0]
    stretch = np.polynomial.Polynomial.fit(radius**2, plain / radius, 6).convert().coef
    xs, ys = (((np.arange(n * FINE) + 0.5) / FINE - 0.5).astype(np.float32) for n in view.size)
    x, y = (xs - theta[1])[None] / view.focal, (ys - theta[2])[:, None] / view.focal
    square = (x * x + y * y).astype(np.float32)
    factor = np.full_like(square, stretch[-1])
    for term in stretch[-2::-1]:
        factor = factor * square + np.float32(term)
    place, axes = rays_from(theta, np.array([theta[1:3]]))[0], turned(theta[5:8])
    # A ray (x f, y f, 1) seen from the card, met with z = 0.
    falls = factor * (x * axes[0, 2] + y * axes[1, 2]).astype(np.float32) + axes[2, 2]
    steps = (-place[2] / falls).astype(np.float32)
    both = [
        place[n] + steps * (factor * (x * axes[0, n] + y * axes[1, n]) + axes[2, n]) for n in (0, 1)
    ]
    return np.stack(both, -1).astype(np.float32)


def _print(layout: CardLayout, view: View) -> NDArray[np.float32]:
    corners = np.array([marker.corners_mm for marker in layout.markers])
    wide, high = (np.ceil(corners.max((0, 1)) + 6) * DOTS).astype(int)
    paper = np.full((high, wide), view.white, np.float32)
    for marker in layout.markers:
        (x0, y0), _, (x1, _), _ = marker.corners_mm
        black = np.array(marker_modules(layout.dictionary, marker.id))
        each = round((x1 - x0) * DOTS / len(black))
        modules = np.kron(black, np.ones((each, each), bool))
        left, top = round(x0 * DOTS), round(y0 * DOTS)
        area = paper[top : top + len(modules), left : left + len(modules)]
        area[modules] = view.black
    for x0, y0, x1, y1 in view.fingers:
        paper[round(y0 * DOTS) : round(y1 * DOTS), round(x0 * DOTS) : round(x1 * DOTS)] = 0.2
    return paper
