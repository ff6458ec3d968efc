"""Irregularity: seamless cloudy noise that makes surfaces look like matter."""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray
from PIL import Image

Pixels = NDArray[np.float32]

_SIDE = 1024
_LARGEST = 64  # texels across the largest blotch of a flat texture
_CUBE = 128
_CUBE_LARGEST = 16
_SAME_MATTER = 20  # the textures never change; each photo looks at another place in them


@cache
def _sheet(number: int, octaves: int, keep: float) -> Pixels:
    """A seamless flat texture with mean 0 and standard deviation 1."""
    rng = np.random.default_rng([_SAME_MATTER, number])
    total = np.zeros((_SIDE, _SIDE), np.float32)
    for octave in range(octaves):
        cells = (_SIDE // _LARGEST) << octave
        lattice = np.pad(rng.standard_normal((cells, cells)).astype(np.float32), 2, mode="wrap")
        step = _SIDE // cells
        side = (cells + 4) * step
        wide = Image.fromarray(lattice).resize((side, side), Image.Resampling.BICUBIC)
        rim = 2 * step
        total += keep**octave * np.asarray(wide)[rim : rim + _SIDE, rim : rim + _SIDE]
    result: Pixels = (total - total.mean()) / total.std()
    return result


@cache
def _volume() -> Pixels:
    """A seamless texture in space with mean 0 and standard deviation 1."""
    rng = np.random.default_rng([_SAME_MATTER, 7])
    total = np.zeros((_CUBE,) * 3, np.float32)
    for octave, strength in enumerate((1.0, 0.7, 0.5, 0.35)):
        cells = (_CUBE // _CUBE_LARGEST) << octave
        values = rng.standard_normal((cells,) * 3).astype(np.float32)
        while len(values) < _CUBE:
            for axis in range(3):
                values = _doubled(values, axis)
        total += np.float32(strength) * values / values.std()
    result: Pixels = (total - total.mean()) / total.std()
    return result


def _doubled(values: Pixels, axis: int) -> Pixels:
    after = np.roll(values, -1, axis)
    pair = np.stack([values, (values + after) / 2], axis + 1)
    shape = list(values.shape)
    shape[axis] *= 2
    return pair.reshape(shape)


class Grain:
    """Noise that is looked up by position in millimetres; the same seed gives the same matter."""

    def __init__(self, rng: np.random.Generator) -> None:
        self._soft = _sheet(1, 3, 0.5)
        self._sharp = _sheet(2, 6, 0.72)
        self._shift = rng.uniform(0, 500, 3).astype(np.float32)
        self._jitter = rng.uniform(-0.7, 0.7, (3, 1 << 17)).astype(np.float32)

    def soft(self, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
        """Smooth blotches about `blotch_mm` across, standard deviation 1."""
        return _lookup(self._soft, u + self._shift[0], v + self._shift[1], blotch_mm)

    def sharp(self, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
        """Blotches with fine detail in them, standard deviation 1."""
        return _lookup(self._sharp, u + self._shift[1], v + self._shift[2], blotch_mm)

    def spots(self, x: Pixels, y: Pixels, z: Pixels, blotch_mm: float) -> Pixels:
        """Blotches in space with fine detail, alike on faces that lean any way."""
        x, y, z = x + self._shift[0], y + self._shift[1], z + self._shift[2]
        scale = np.float32(_CUBE_LARGEST / blotch_mm)
        large = _trilinear(_volume(), x * scale, y * scale, z * scale)
        fine = scale * np.float32(5.3)
        i, j, k = self._cells(
            (0.8 * x + 0.6 * y) * fine, (0.8 * y - 0.6 * x) * fine, (z + np.float32(0.3) * x) * fine
        )
        mixed = (large + np.float32(0.42) * _volume()[k, j, i]) / 1.08
        return np.asarray(mixed, np.float32)

    def slopes(
        self, x: Pixels, y: Pixels, z: Pixels, blotch_mm: float
    ) -> tuple[Pixels, Pixels, Pixels]:
        """How a rough surface leans at points in space, along x, y and z."""
        scale = np.float32(_CUBE_LARGEST / blotch_mm)
        volume = _volume()
        i, j, k = self._cells(x * scale, y * scale, z * scale)
        here = volume[k, j, i]
        return (
            volume[k, j, (i + 1) & (_CUBE - 1)] - here,
            volume[k, (j + 1) & (_CUBE - 1), i] - here,
            volume[(k + 1) & (_CUBE - 1), j, i] - here,
        )

    def _cells(self, x: Pixels, y: Pixels, z: Pixels) -> list[NDArray[np.int32]]:
        """Cells of the volume, each point strayed a little so that no cell's edge is seen."""
        return [
            np.floor(a + np.resize(stray, a.shape)).astype(np.int32) & (_CUBE - 1)
            for a, stray in zip((x, y, z), self._jitter, strict=True)
        ]


def _lookup(texture: Pixels, u: Pixels, v: Pixels, blotch_mm: float) -> Pixels:
    texel = np.float32(_LARGEST / blotch_mm)
    x, y = u * texel, v * texel
    left, top = np.floor(x), np.floor(y)
    fx, fy = x - left, y - top
    c0, r0 = left.astype(np.int32) & (_SIDE - 1), top.astype(np.int32) & (_SIDE - 1)
    c1, r1 = (c0 + 1) & (_SIDE - 1), (r0 + 1) & (_SIDE - 1)
    upper = texture[r0, c0] * (1 - fx) + texture[r0, c1] * fx
    lower = texture[r1, c0] * (1 - fx) + texture[r1, c1] * fx
    result: Pixels = upper * (1 - fy) + lower * fy
    return result


def _trilinear(volume: Pixels, x: Pixels, y: Pixels, z: Pixels) -> Pixels:
    low = [np.floor(a) for a in (x, y, z)]
    fx, fy, fz = (a - b for a, b in zip((x, y, z), low, strict=True))
    i0, j0, k0 = (b.astype(np.int32) & (_CUBE - 1) for b in low)
    i1, j1, k1 = ((a + 1) & (_CUBE - 1) for a in (i0, j0, k0))
    layers = []
    for k in (k0, k1):
        rows = [volume[k, j, i0] * (1 - fx) + volume[k, j, i1] * fx for j in (j0, j1)]
        layers.append(rows[0] * (1 - fy) + rows[1] * fy)
    result: Pixels = layers[0] * (1 - fz) + layers[1] * fz
    return result


def flatten(x: Pixels, y: Pixels, z: Pixels) -> tuple[Pixels, Pixels]:
    """Two texture coordinates for a point in space, slanted so that no usual face is streaked."""
    return (
        np.float32(0.88) * x + np.float32(0.31) * z + np.float32(0.17) * y,
        np.float32(0.93) * y - np.float32(0.53) * z + np.float32(0.11) * x,
    )
