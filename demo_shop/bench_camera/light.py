"""The shop's light: one big soft lamp, the room's glow, what shines, and what lies in shadow."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from PIL import Image

from demo_shop.bench_camera.exposure import Exposure
from demo_shop.bench_camera.grain import Pixels
from demo_shop.bench_camera.pieces import Piece, Pose
from demo_shop.bench_camera.pinhole import Floats, look_at

_MAP = 420
_TAPS = 11


@dataclass(frozen=True, slots=True)
class Lamp:
    """A soft lamp: where it stands (degrees), its colour, how strong against the room's glow."""

    elevation: float
    azimuth: float
    colour: tuple[float, float, float]
    strength: float

    @property
    def direction(self) -> Floats:
        """Unit vector from the bench towards the lamp."""
        e, a = np.radians(self.elevation), np.radians(self.azimuth)
        return np.array([np.cos(e) * np.cos(a), np.cos(e) * np.sin(a), np.sin(e)])


class Shade:
    """The shadow the part throws: how much of the lamp a place sees, 0 to 1."""

    def __init__(
        self,
        lamp: Lamp,
        pieces: Sequence[Piece],
        standing: Pose,
        middle: Floats,
        reach: float,
        rng: np.random.Generator,
    ) -> None:
        distance = 8 * max(reach, float(np.linalg.norm(middle)))
        focal = _MAP * distance / (3.0 * reach)
        self._reach = reach
        camera = look_at(middle, distance, lamp.elevation, lamp.azimuth, 0, focal, (_MAP, _MAP))
        seen = Exposure(camera)
        seen.take(pieces, standing, depth_only=True)
        for edge in (0, -1):  # whatever lies outside the map is lit
            seen.depth[edge, :] = seen.depth[:, edge] = np.inf
        self._seen = seen
        angle = rng.uniform(0, 2 * np.pi, _TAPS)
        radius = np.sqrt((np.arange(_TAPS) + 0.5) / _TAPS) * _MAP * 0.014
        self._taps = np.stack([radius * np.cos(angle), radius * np.sin(angle)], 1)

    def lit(self, world: Pixels, normal: Pixels | None = None) -> Pixels:
        """Share of the lamp seen at bench points (n, 3); normals keep a face off its own shadow."""
        if normal is not None:
            world = world + normal * np.float32(0.02 * self._reach)
        camera = self._seen.camera
        local = (world - camera.place.astype(np.float32)) @ camera.turn.T.astype(np.float32)
        scale = camera.focal_px / local[:, 2]
        px = local[:, 0] * scale + camera.centre_px[0] + 0.5
        py = local[:, 1] * scale + camera.centre_px[1] + 0.5
        total = np.zeros(len(world), np.float32)
        for sx, sy in self._taps:
            column = np.clip(px + np.float32(sx), 0, _MAP - 1).astype(np.int32)
            row = np.clip(py + np.float32(sy), 0, _MAP - 1).astype(np.int32)
            total += self._seen.depth[row, column] > local[:, 2] - 0.028 * self._reach
        return np.asarray(total / _TAPS, np.float32)


def closeness(height: Pixels, radius: int) -> Pixels:
    """How open each pixel lies to the room, 0 to 1, from heights over the bench."""
    around = soften(height, radius)
    around = 0.6 * around + 0.4 * soften(height, max(1, radius // 3))
    spread = float(np.ptp(height)) + 1e-3
    return np.asarray(1 / (1 + 3.2 * np.maximum(0, around - height) / spread), np.float32)


def soften(values: Pixels, radius: int) -> Pixels:
    """Two box blurs in both directions."""
    result = values
    for _ in range(2):
        for axis in (0, 1):
            result = _box_blur(result, radius, axis)
    return result


def round_edges(normals: Pixels) -> Pixels:
    """Normals (h, w, 3) blended with their neighbours: the small radius every real edge has."""
    for axis in (0, 1):
        pad = [(1, 1) if a == axis else (0, 0) for a in range(3)]
        wide = np.pad(normals, pad, mode="edge")
        size = normals.shape[axis]
        before, here, after = (np.take(wide, range(i, i + size), axis) for i in range(3))
        normals = before * np.float32(0.25) + here * np.float32(0.5) + after * np.float32(0.25)
    return normals


def _box_blur(values: Pixels, radius: int, axis: int) -> Pixels:
    pad = [(0, 0)] * values.ndim
    pad[axis] = (radius + 1, radius)
    total = np.cumsum(np.pad(values, pad, mode="edge"), axis=axis, dtype=np.float64)
    width = 2 * radius + 1
    head = [slice(None)] * values.ndim
    tail = [slice(None)] * values.ndim
    head[axis], tail[axis] = slice(width, None), slice(None, -width)
    return ((total[tuple(head)] - total[tuple(tail)]) / width).astype(np.float32)


def enlarge(values: Pixels, width: int, height: int) -> Pixels:
    """A coarse picture brought to full size."""
    wide = Image.fromarray(values).resize((width, height), Image.Resampling.BILINEAR)
    return np.asarray(wide, np.float32)


def room(reflected: Pixels, gloss: Pixels, lamp: Lamp, bench: tuple[float, float, float]) -> Pixels:
    """Light (n, 3) that comes along directions (n, 3): lamp, a window strip, ceiling, bench."""
    up = reflected[:, 2]
    toward = reflected @ lamp.direction.astype(np.float32)
    sharp = 6 + 260 * gloss**3
    glow = np.exp(-(1 - np.clip(toward, -1, 1)) * sharp) * (0.45 + 3.6 * gloss)
    strip = np.exp(-(((reflected[:, 0] * 0.8 - reflected[:, 1] * 0.6 - 0.35) / 0.16) ** 2))
    strip = strip * np.clip(up * 2, 0, 1) * 0.55 * gloss
    sky = 0.10 + 0.42 * np.clip(up, 0, 1) + strip
    blend = np.clip(up * (2 + 8 * gloss) + 0.5, 0, 1)
    lamp_colour = np.array(lamp.colour, np.float32)
    above = sky[:, None] * np.array([0.95, 1.0, 1.06], np.float32) + glow[:, None] * lamp_colour
    below = np.array(bench, np.float32) * 0.5
    return np.asarray(above * blend[:, None] + below * (1 - blend[:, None]), np.float32)
