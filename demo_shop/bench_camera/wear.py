"""What use leaves on a part: crust, rust, soot, tracks, cracks, grooves, oil."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import numpy as np

from demo_shop.bench_camera.finishes import Coat, Colour
from demo_shop.bench_camera.grain import Grain, Pixels, flatten
from demo_shop.bench_camera.pinhole import Floats

Where = Callable[[Pixels, Pixels, Pixels], Pixels]

RUST: Colour = (0.20, 0.075, 0.025)
DARK_RUST: Colour = (0.085, 0.036, 0.018)
SOOT: Colour = (0.012, 0.011, 0.011)
GREEN_CRUST: Colour = (0.20, 0.42, 0.34)
WHITE_CRUST: Colour = (0.62, 0.63, 0.58)
OIL: Colour = (0.030, 0.020, 0.010)
DUST: Colour = (0.20, 0.17, 0.13)
TARNISH: Colour = (0.17, 0.095, 0.045)
HEAT_BLUE: Colour = (0.09, 0.10, 0.17)


def _step(value: Pixels, edge: float, width: float) -> Pixels:
    soft: Pixels = np.clip((value - edge) / width + 0.5, 0, 1)
    return soft


def everywhere(x: Pixels, y: Pixels, z: Pixels) -> Pixels:
    """All of the surface alike."""
    return np.ones_like(x)


def near(px: float, py: float, pz: float, reach: float) -> Where:
    """Close to one point of the part; fades over `reach` mm."""

    def where(x: Pixels, y: Pixels, z: Pixels) -> Pixels:
        squared = (x - px) ** 2 + (y - py) ** 2 + (z - pz) ** 2
        return np.asarray(np.exp(-squared / (reach * reach)), np.float32)

    return where


def beyond(axis: int, start: float, fade: float) -> Where:
    """Where one coordinate passes `start`; a negative fade means below it."""

    def where(x: Pixels, y: Pixels, z: Pixels) -> Pixels:
        value = (x, y, z)[axis]
        return np.asarray(np.clip((value - start) / fade, 0, 1), np.float32)

    return where


def spread(
    colour: Colour,
    amount: float,
    blotch_mm: float,
    where: Where = everywhere,
    *,
    gloss: float = 0.08,
    rough: float = 0.3,
    edge: float = 0.5,
    speckle: float = 0.2,
) -> Coat:
    """A patchy deposit; `amount` 0 is none, 1 nearly closed."""

    def cover(x: Pixels, y: Pixels, z: Pixels, grain: Grain) -> Pixels:
        level = where(x, y, z) * np.float32(amount * 4.2) - np.float32(2.2)
        maybe = level > -2.6 if where is everywhere else level > -2.15
        share = np.zeros_like(x)
        spots = grain.spots(x[maybe], y[maybe], z[maybe], blotch_mm)
        share[maybe] = _step(spots + level[maybe], 0.0, edge) * min(1.0, 0.25 + amount)
        return share

    return Coat(colour, cover, gloss, rough, speckle)


def film_of(colour: Colour, strength: float, where: Where = everywhere, gloss: float = 0.3) -> Coat:
    """An even veil: dust, tarnish, heat tint, oil."""

    def cover(x: Pixels, y: Pixels, z: Pixels, grain: Grain) -> Pixels:
        u, v = flatten(x, y, z)
        veil = strength * where(x, y, z) * (1 + 0.35 * grain.soft(u, v, 14.0))
        return np.asarray(np.clip(veil, 0, 1), np.float32)

    return Coat(colour, cover, gloss, 0.08, 0.1)


def track(points: list[tuple[float, float, float]], width: float, colour: Colour = SOOT) -> Coat:
    """A carbon track: a crooked burned line through points on the surface."""
    line = np.array(points, np.float64)

    def cover(x: Pixels, y: Pixels, z: Pixels, grain: Grain) -> Pixels:
        low, high = line.min(0) - 3 - width, line.max(0) + 3 + width
        close = np.nonzero(
            (x > low[0])
            & (x < high[0])
            & (y > low[1])
            & (y < high[1])
            & (z > low[2])
            & (z < high[2])
        )
        share = np.zeros_like(x)
        share[close] = _near_line(line, width, (x[close], y[close], z[close]), grain)
        return share

    return Coat(colour, cover, 0.35, 0.2, 0.1)


def _near_line(
    line: Floats, width: float, at: tuple[Pixels, Pixels, Pixels], grain: Grain
) -> Pixels:
    u, v = flatten(*at)
    sx, sy = grain.sharp(u, v, 7.0) * np.float32(0.7), grain.sharp(v, u, 9.0) * np.float32(0.7)
    nearest = np.full(u.shape, np.inf)
    for a, b in pairwise(line):
        edge = b - a
        qx, qy, qz = at[0] + sx - a[0], at[1] + sy - a[1], at[2] - a[2]
        along = np.clip((qx * edge[0] + qy * edge[1] + qz * edge[2]) / (edge @ edge), 0, 1)
        gap = (qx - along * edge[0]) ** 2 + (qy - along * edge[1]) ** 2
        nearest = np.minimum(nearest, gap + (qz - along * edge[2]) ** 2)
    thick = np.maximum(width * (1 + 0.35 * grain.sharp(u, v, 5.0)), 0.05)
    return np.asarray(np.clip(1.5 - np.sqrt(nearest) / thick, 0, 1), np.float32)


def cracks(places: list[float], axis: int, width: float, where: Where = everywhere) -> Coat:
    """Fine dark cracks across one axis at the given places, each a little crooked."""

    def cover(x: Pixels, y: Pixels, z: Pixels, grain: Grain) -> Pixels:
        value, side, third = ((x, y, z)[(axis + i) % 3] for i in range(3))
        total = np.zeros_like(x)
        for number, place in enumerate(places):
            close = np.nonzero(np.abs(value - np.float32(place)) < 2.5)
            a, b = side[close] + np.float32(31.0 * number), third[close]
            away = value[close] - np.float32(place) + np.float32(0.5) * grain.sharp(a, b, 6.0)
            lively = _step(grain.soft(a * 2, b + number, 9.0), -0.25, 0.5)
            total[close] = np.maximum(
                total[close], np.clip(1.4 - np.abs(away) / np.float32(width), 0, 1) * lively
            )
        return np.asarray(total * where(x, y, z), np.float32)

    return Coat((0.006, 0.006, 0.006), cover, 0.0, 0.1, 0.0)


def grooves(step_mm: float, depth: float, colour: Colour, *, axis: int | None = None) -> Coat:
    """Fine scores: circles about z when no axis is named, else straight ones across that axis."""

    def cover(x: Pixels, y: Pixels, z: Pixels, grain: Grain) -> Pixels:
        place = np.hypot(x, y) if axis is None else (x, y, z)[axis]
        along = np.zeros_like(x)
        lines = grain.sharp(place.astype(np.float32), along, step_mm * 6)
        return np.asarray(np.clip(depth * (0.5 + 0.6 * lines), 0, 1), np.float32)

    return Coat(colour, cover, 0.35, 0.12, 0.05)


def rusted(grime: float) -> tuple[Coat, ...]:
    """Bare iron that has seen winters: dark and bright rust, some old grease."""
    return (
        film_of(DARK_RUST, 0.7 * grime, gloss=0.05),
        spread(RUST, 0.85 * grime, 10, edge=1.4),
        spread((0.02, 0.016, 0.012), 0.5 * grime, 16, edge=1.5, gloss=0.5),
    )
