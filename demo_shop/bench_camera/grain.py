"""Irregularity: seamless cloudy noise that makes surfaces look like matter."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PIL import Image

Pixels = NDArray[np.float32]

_SIDE = 1024
_LARGEST = 64  # texels across the largest blotch


def _clouds(rng: np.random.Generator, octaves: int, keep: float) -> Pixels:
    """A seamless texture with mean 0 and standard deviation 1."""
    total = np.zeros((_SIDE, _SIDE), np.float32)
    for octave in range(octaves):
        cells = (_SIDE // _LARGEST) << octave
        lattice = rng.standard_normal((cells, cells)).astype(np.float32)
        wrapped = np.pad(lattice, 2, mode="wrap")
        step = _SIDE // cells
        wide = Image.fromarray(wrapped).resize(
            ((cells + 4) * step, (cells + 4) * step), Image.Resampling.BICUBIC
        )
        rim = 2 * step
        total += keep**octave * np.asarray(wide)[rim : rim + _SIDE, rim : rim + _SIDE]
    result: Pixels = (total - total.mean()) / total.std()
    return result


class Grain:
    """Noise that is looked up by position in millimetres; the same seed gives the same matter."""

    def __init__(self, rng: np.random.Generator) -> None:
        self._soft = _clouds(rng, 3, 0.5)
        self._sharp = _clouds(rng, 6, 0.72)
        self._slope_u = (np.roll(self._sharp, -1, 1) - np.roll(self._sharp, 1, 1)) * 4
        self._slope_v = (np.roll(self._sharp, -1, 0) - np.roll(self._sharp, 1, 0)) * 4

    def soft(self, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
        """Smooth blotches about `blotch_mm` across, standard deviation 1."""
        return _lookup(self._soft, u, v, blotch_mm)

    def sharp(self, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
        """Blotches with fine detail in them, standard deviation 1."""
        return _lookup(self._sharp, u, v, blotch_mm)

    def spots(self, x: Pixels, y: Pixels, z: Pixels, blotch_mm: float) -> Pixels:
        """Blotches in space, for surfaces that lean any way; standard deviation 1."""
        u, v = flatten(x, y, z)
        first = _lookup(self._sharp, u, v, blotch_mm)
        second = _lookup(self._sharp, 0.7 * x - 0.6 * z + 19, 0.7 * y + 0.7 * z - 0.5 * x, blotch_mm)
        result: Pixels = (first + second) * np.float32(0.72)
        return result

    def slopes(self, u: Pixels, v: Pixels, blotch_mm: float) -> tuple[Pixels, Pixels]:
        """How a rough surface leans along u and v."""
        texel = np.float32(_LARGEST / blotch_mm)
        column = (u * texel).astype(np.int32) % _SIDE
        row = (v * texel).astype(np.int32) % _SIDE
        return self._slope_u[row, column], self._slope_v[row, column]


def _lookup(texture: Pixels, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
    texel = np.float32(_LARGEST / blotch_mm)
    x, y = u * texel, v * texel
    left, top = np.floor(x), np.floor(y)
    fx, fy = (x - left).astype(np.float32), (y - top).astype(np.float32)
    c0, r0 = left.astype(np.int32) % _SIDE, top.astype(np.int32) % _SIDE
    c1, r1 = (c0 + 1) % _SIDE, (r0 + 1) % _SIDE
    upper = texture[r0, c0] * (1 - fx) + texture[r0, c1] * fx
    lower = texture[r1, c0] * (1 - fx) + texture[r1, c1] * fx
    result: Pixels = upper * (1 - fy) + lower * fy
    return result


def flatten(x: Pixels, y: Pixels, z: Pixels) -> tuple[Pixels, Pixels]:
    """Two texture coordinates for a point in space; slanted, so that no usual face is streaked."""
    return (
        np.float32(0.88) * x + np.float32(0.31) * z + np.float32(0.17) * y,
        np.float32(0.93) * y - np.float32(0.53) * z + np.float32(0.11) * x,
    )
