"""Painted metal of known condition: bare with brush marks, with rust and burn marks in blots.

The painting is done in linear light and turned into sRGB at the end, as a camera does; it shares
no code with the program.
"""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from desktop_app.part_photos.photo_pixels import PhotoPixels

# Linear reflectances, invented: paper, bare steel, rust, a straw-coloured heat tint, soot.
PAPER = (0.82, 0.82, 0.80)
STEEL = (0.36, 0.36, 0.355)
RUST = (0.22, 0.095, 0.04)
TINT = (0.42, 0.31, 0.13)
SOOT = (0.030, 0.028, 0.026)

# Where things lie, in pixels: a strip of paper above, the part below, a corner that is all bare.
WHITE = ((20, 20), (500, 20), (500, 90), (20, 90))
PART = ((40, 130), (480, 130), (480, 430), (40, 430))
BARE = ((40, 440), (480, 440), (480, 490), (40, 490))


@dataclass(frozen=True)
class Painted:
    """A photo and the share of PART that is truly covered."""

    pixels: PhotoPixels
    share: float


def painted(
    share: float,
    seed: int,
    cover: tuple[float, float, float] = RUST,
    cast: tuple[float, float, float] = (1.0, 1.0, 1.0),
    exposure: float = 0.9,
    noise: float = 0.012,
    light_falls: float = 0.2,
) -> Painted:
    """Paint a part whose surface is covered to about this share, and photograph it.

    `cast` is the light's colour, `noise` the sensor's, as a standard deviation of full scale,
    `light_falls` how much darker the right edge is lit than the left.
    """
    rng = np.random.default_rng(seed)
    height, width = 520, 520
    scene = np.empty((height, width, 3))
    scene[:] = STEEL
    brushed = rng.normal(1, 0.05, (height, 1, 1)) * rng.normal(1, 0.02, (height, width, 1))
    scene *= brushed
    blots = cv2.GaussianBlur(rng.normal(0, 1, (300, 440)), (0, 0), 9)
    covered = np.zeros((height, width), bool)
    covered[130:430, 40:480] = blots > np.quantile(blots, 1 - share)
    scene[covered] = np.array(cover) * rng.normal(1, 0.08, (int(covered.sum()), 1))
    scene[:110] = PAPER
    scene *= np.linspace(1, 1 - light_falls, width)[:, None]
    light = cv2.GaussianBlur(scene * cast * exposure, (0, 0), 0.9)
    light += rng.normal(0, noise, light.shape)
    return Painted(PhotoPixels(camera_values(light)), float(covered[130:430, 40:480].mean()))


def camera_values(light: NDArray[np.float64]) -> NDArray[np.uint8]:
    """Linear light as sRGB (IEC 61966-2-1), through a JPEG of quality 90."""
    light = np.clip(light, 0, 1)
    curve = np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)
    values = np.round(255 * curve).astype(np.uint8)
    done, file = cv2.imencode(".jpg", values[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, 90])
    assert done
    return np.ascontiguousarray(cv2.imdecode(file, cv2.IMREAD_COLOR)[..., ::-1])
