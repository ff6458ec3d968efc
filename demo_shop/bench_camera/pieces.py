"""Building blocks of a part: turned bodies, slabs, bars, rods and hoses, each of one material."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

import numpy as np

from demo_shop.bench_camera.finishes import Finish
from demo_shop.bench_camera.patches import Ball, ConeWall, Face, Patch, Ring, Wall
from demo_shop.bench_camera.pinhole import Floats

Hole = tuple[float, float, float]
Place = Sequence[float] | Floats


@dataclass(frozen=True, slots=True)
class Pose:
    """How a frame stands in the one around it: turned, then shifted (mm)."""

    turn: Floats = field(default_factory=lambda: np.eye(3))
    shift: Floats = field(default_factory=lambda: np.zeros(3))

    def out(self, points: Floats) -> Floats:
        """Points (n, 3) of this frame, seen from the one around it."""
        return np.atleast_2d(points) @ self.turn.T + self.shift

    def within(self, outer: Pose) -> Pose:
        """This pose seen from one frame further out."""
        return Pose(outer.turn @ self.turn, outer.turn @ self.shift + outer.shift)


@dataclass(frozen=True, slots=True)
class Piece:
    """Surfaces of one material in one frame."""

    patches: tuple[Patch, ...]
    finish: Finish
    pose: Pose = field(default_factory=Pose)

    def moved(self, x: float = 0, y: float = 0, z: float = 0, turn: Floats | None = None) -> Piece:
        """The same piece turned about its origin and then shifted."""
        step = Pose(np.eye(3) if turn is None else turn, np.array([x, y, z], float))
        return Piece(self.patches, self.finish, self.pose.within(step))


def turned(
    profile: Sequence[tuple[float, float]],
    finish: Finish,
    arc: tuple[float, float] | None = None,
    holes: tuple[Hole, ...] = (),
) -> Piece:
    """A body turned about z from (radius, height) points; `holes` pierce its flat faces."""
    patches: list[Patch] = []
    for (r0, z0), (r1, z1) in pairwise(profile):
        if abs(z1 - z0) < 1e-9:
            if r0 != r1:
                patches.append(Ring(min(r0, r1), max(r0, r1), z0, holes, arc))
        else:
            patches.append(ConeWall(r0, z0, r1, z1, arc))
    return Piece(tuple(patches), finish)


def profile(radii: Sequence[float], heights: Sequence[float]) -> list[tuple[float, float]]:
    """Points of a turned body from its radii and its heights, in order."""
    return list(zip(radii, heights, strict=True))


def slab(
    outline: Iterable[tuple[float, float]],
    z0: float,
    z1: float,
    finish: Finish,
    holes: tuple[Hole, ...] = (),
) -> Piece:
    """A plate of any outline (counter-clockwise) between two heights, with round holes."""
    edge = np.array(list(outline), float)
    if _signed_area(edge) < 0:
        edge = edge[::-1]
    after = np.roll(edge, -1, axis=0)
    run = after - edge
    run /= np.linalg.norm(run, axis=1, keepdims=True)
    out = np.stack([run[:, 1], -run[:, 0]], 1)
    patches: list[Patch] = [Face(edge, z0, holes), Face(edge, z1, holes)]
    for i in range(len(edge)):
        before, following = out[i - 1], out[(i + 1) % len(edge)]
        na = out[i] + before if out[i] @ before > 0.8 else out[i]
        nb = out[i] + following if out[i] @ following > 0.8 else out[i]
        ends = na / np.linalg.norm(na), nb / np.linalg.norm(nb)
        patches.append(Wall(edge[i], after[i], z0, z1, ends[0], ends[1]))
    plate = Piece(tuple(patches), finish)
    if not holes:
        return plate
    bores: tuple[Patch, ...] = tuple(_shifted_bore(hole, z0, z1) for hole in holes)
    return Piece(plate.patches + bores, finish)


def _shifted_bore(hole: Hole, z0: float, z1: float) -> Patch:
    return OffsetBore(hole[0], hole[1], ConeWall(hole[2], z0, hole[2], z1))


@dataclass(frozen=True, slots=True)
class OffsetBore:
    """A round hole's wall whose axis stands at (x, y)."""

    x: float
    y: float
    wall: ConeWall

    def rim(self) -> Floats:
        """The wall's rim at its place."""
        return np.asarray(self.wall.rim() + np.array([self.x, self.y, 0.0]))

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """As the wall, from a shifted origin."""
        return self.wall.meet(o - np.array([self.x, self.y, 0.0]), dx, dy, dz)

    def normal(self, x: Floats, y: Floats, z: Floats) -> tuple[Floats, Floats, Floats]:
        """As the wall."""
        return self.wall.normal(x - self.x, y - self.y, z)


def bar(
    x: tuple[float, float],
    y: tuple[float, float],
    z: tuple[float, float],
    finish: Finish,
    corner: float = 0.0,
) -> Piece:
    """A box from three spans; `corner` rounds the upright edges."""
    return slab(rounded(x[0], x[1], y[0], y[1], corner), z[0], z[1], finish)


def rod(a: Place, b: Place, radius: float, finish: Finish, end: float | None = None) -> Piece:
    """A round rod from a to b; `end` is the radius at b when it tapers."""
    start, stop = np.array(a, float), np.array(b, float)
    length = float(np.linalg.norm(stop - start))
    last = radius if end is None else end
    body = turned([(0, 0), (radius, 0), (last, length), (0, length)], finish)
    frame = Pose(_frame_along((stop - start) / length), start)
    return Piece(body.patches, finish, frame)


def hose(path: Floats, radius: float, finish: Finish, closed: bool = False) -> list[Piece]:
    """A round cord along a path (n, 3), with balls at the bends."""
    points = np.vstack([path, path[:1]]) if closed else path
    pieces: list[Piece] = []
    for a, b in pairwise(points):
        length = float(np.linalg.norm(b - a))
        wall = ConeWall(radius, 0, radius, length)
        pieces.append(Piece((wall,), finish, Pose(_frame_along((b - a) / length), a)))
    pieces.append(Piece(tuple(Ball(p, radius) for p in points), finish))
    return pieces


def thread(
    outer: float, pitch: float, z0: float, z1: float, depth: float
) -> list[tuple[float, float]]:
    """Profile of a screw thread drawn as rings, from z0 up to z1."""
    turns = max(1, round((z1 - z0) / pitch))
    step = (z1 - z0) / turns
    points: list[tuple[float, float]] = [(outer - depth, z0)]
    for i in range(turns):
        low = z0 + i * step
        points += [
            (outer, low + 0.42 * step),
            (outer, low + 0.58 * step),
            (outer - depth, low + step),
        ]
    return points


def circle(radius: float, count: int = 40, x: float = 0, y: float = 0) -> list[tuple[float, float]]:
    """A round outline."""
    angles = np.linspace(0, 2 * np.pi, count, endpoint=False)
    return [(x + radius * float(np.cos(a)), y + radius * float(np.sin(a))) for a in angles]


def ring_piece(inner: float, outer: float, low: float, high: float) -> list[tuple[float, float]]:
    """Outline of a piece of a flat ring about the origin, between two angles in degrees."""
    out = np.radians(np.linspace(low, high, 8))
    return [(outer * float(np.cos(a)), outer * float(np.sin(a))) for a in out] + [
        (inner * float(np.cos(a)), inner * float(np.sin(a))) for a in out[::-1]
    ]


def around(radius: float, degrees: float, z: float = 0.0) -> tuple[float, float, float]:
    """A point at a radius and an angle about z."""
    a = np.radians(degrees)
    return radius * float(np.cos(a)), radius * float(np.sin(a)), z


def hexagon(across_flats: float) -> list[tuple[float, float]]:
    """A hexagonal outline by its width across flats."""
    corner = across_flats / np.sqrt(3)
    return [
        (float(corner * np.cos(a)), float(corner * np.sin(a))) for a in np.arange(6) * np.pi / 3
    ]


def rounded(x0: float, x1: float, y0: float, y1: float, corner: float) -> list[tuple[float, float]]:
    """A rectangle with rounded corners."""
    if corner <= 0:
        return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
    places = (
        (x1 - corner, y0 + corner, -90),
        (x1 - corner, y1 - corner, 0),
        (x0 + corner, y1 - corner, 90),
        (x0 + corner, y0 + corner, 180),
    )
    return [
        (cx + corner * float(np.cos(a)), cy + corner * float(np.sin(a)))
        for cx, cy, first in places
        for a in np.radians(np.linspace(first, first + 90, 5))
    ]


def _signed_area(edge: Floats) -> float:
    after = np.roll(edge, -1, axis=0)
    return float(np.sum(edge[:, 0] * after[:, 1] - after[:, 0] * edge[:, 1]))


def _frame_along(axis: Floats) -> Floats:
    helper = np.array([0, 0, 1.0]) if abs(axis[2]) < 0.9 else np.array([1.0, 0, 0])
    side = np.cross(helper, axis)
    side /= np.linalg.norm(side)
    return np.stack([side, np.cross(axis, side), axis], 1)
