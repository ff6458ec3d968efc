"""A camera known to the last digit over a card, and small pictures with edges at known places."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter

from desktop_app.part_photos.camera.card_scale import CardScale, view_of
from desktop_app.part_photos.camera.lens import turned
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.photo_pixels import PhotoPixels

Floats = NDArray[np.float64]
MIDDLE = np.array([105.0, 148.0])  # of the card, where the camera looks
# Standard uncertainties of a usual fit: ln focal length, centre, lens, rotation, shift (mm).
FIT_U = np.array([0.012, 15, 15, 0.015, 0.02, 0.003, 0.003, 4e-4, 0.2, 0.2, 3.0])


def scale_over_card(
    tilt_deg: float = 15.0, distance: float = 300.0, share_u: float = 0.1, print_u: float = 3e-4
) -> CardScale:
    """A camera of 12 megapixels over the card, with a lens; `share_u` of FIT_U is its doubt."""
    theta = np.zeros(11)
    theta[:5] = np.log(3000.0), 2000, 1500, 0.03, -0.04
    theta[5:8] = np.radians(tilt_deg), 0.05, 0.02
    theta[8:] = np.array([0, 0, distance]) - turned(theta[5:8]) @ [*MIDDLE, 0]
    view = view_of(theta, MIDDLE)
    return CardScale(
        theta=theta,
        covariance=np.diag((share_u * FIT_U) ** 2),
        print_u=print_u,
        tilt_deg=view.tilt_deg,
        distance_mm=view.distance_mm,
        mm_per_px=view.mm_per_px,
        middle_mm=(105.0, 148.0),
        card="card",
        markers_seen=tuple(range(20)),
        residual_px=0.1,
        blur_px=1.0,
    )


def seen(scale: CardScale, points_mm: Floats | Sequence[object], height_mm: float = 0.0) -> Floats:
    """Where the camera sees points (n, 2) that lie so high above the card: pixels (n, 2)."""
    return scale.to_pixels(np.asarray(points_mm, float), height_mm)


def clicks(points_px: Floats) -> tuple[Pixel, ...]:
    """Pixels as a mark has them."""
    return tuple((float(x), float(y)) for x, y in points_px)


def ring(
    radius: float, count: int, middle: Floats = MIDDLE, start: float = 0.3, turn: float = 6.28
) -> Floats:
    """Points on a circle, (count, 2)."""
    turns = start + turn * np.arange(count) / count
    return middle + radius * np.column_stack([np.cos(turns), np.sin(turns)])


def photo_of(light: Floats) -> PhotoPixels:
    """Linear light (h, w), 0 to 1, as a grey sRGB photo (IEC 61966-2-1)."""
    light = np.clip(light, 0, 1)
    values = np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)
    grey = np.round(values * 255).astype(np.uint8)
    return PhotoPixels(np.repeat(grey[..., None], 3, axis=2))


def looked_at(
    inside: NDArray[np.bool_], fine: int, blur_px: float, dark: float = 0.05, bright: float = 0.8
) -> Floats:
    """Dark where `inside` (h fine, w fine), averaged over each pixel and blurred: light (h, w)."""
    high, wide = inside.shape[0] // fine, inside.shape[1] // fine
    light = np.where(inside, dark, bright).astype(float)
    light = light.reshape(high, fine, wide, fine).mean((1, 3))
    return np.asarray(gaussian_filter(light, blur_px) if blur_px else light)


def fine_grid(wide: int, high: int, fine: int = 8) -> tuple[Floats, Floats]:
    """Pixel coordinates x, y of a grid `fine` times as dense as the pixels."""
    xs, ys = ((np.arange(n * fine) + 0.5) / fine - 0.5 for n in (wide, high))
    x, y = np.meshgrid(xs, ys)
    return np.asarray(x), np.asarray(y)
