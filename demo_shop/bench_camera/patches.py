"""Simple surfaces that a line of sight may meet: cone walls, rings, flat faces, balls."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

import numpy as np

from demo_shop.bench_camera.pinhole import Floats

Triple = tuple[Floats, Floats, Floats]
_RING = np.linspace(0, 2 * np.pi, 25)[:-1]
_WIDER = 1 / np.cos(np.pi / 24)


class Patch(Protocol):
    """A piece of surface in its part's own frame, in mm."""

    def rim(self) -> Floats:
        """Points (n, 3) whose hull holds the patch."""
        ...

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """How far along each line from `o` the patch is met; infinite where it is missed."""
        ...

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Surface direction at points of the patch; either side, any length."""
        ...


@dataclass(frozen=True, slots=True)
class ConeWall:
    """The wall of a cone or cylinder about z, from (r0, z0) to (r1, z1); may be an arc of it."""

    r0: float
    z0: float
    r1: float
    z1: float
    arc: tuple[float, float] | None = None  # degrees, counted up from the first

    def rim(self) -> Floats:
        """Points around both ends."""
        c, s = np.cos(_RING) * _WIDER, np.sin(_RING) * _WIDER
        ends = [
            np.stack([r * c, r * s, np.full_like(c, z)], 1)
            for r, z in ((self.r0, self.z0), (self.r1, self.z1))
        ]
        return np.concatenate(ends)

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """Nearest of the two roots that lies on the wall."""
        slope = (self.r1 - self.r0) / (self.z1 - self.z0)
        start = self.r0 + slope * (o[2] - self.z0)
        a = dx * dx + dy * dy - slope * slope * dz * dz
        a = np.where(np.abs(a) < 1e-12, 1e-12, a)
        b = o[0] * dx + o[1] * dy - slope * start * dz
        c = o[0] ** 2 + o[1] ** 2 - start**2
        inside = b * b - a * c
        root = np.sqrt(np.maximum(inside, 0))
        best = np.full(dx.shape, np.inf)
        low, high = min(self.z0, self.z1), max(self.z0, self.z1)
        for t in ((-b - root) / a, (-b + root) / a):
            z = o[2] + t * dz
            good = (inside > 0) & (t > 0) & (z >= low) & (z <= high) & (t < best)
            good &= self.r0 + slope * (z - self.z0) >= 0
            if self.arc is not None:
                good &= _within(o[0] + t * dx, o[1] + t * dy, self.arc)
            best = np.where(good, t, best)
        return best

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Outward, leaning with the cone."""
        r = np.hypot(x, y) + 1e-9
        slope = (self.r1 - self.r0) / (self.z1 - self.z0)
        return x / r, y / r, np.full_like(x, -slope)


@dataclass(frozen=True, slots=True)
class Ring:
    """A flat ring across the z axis, with round holes (x, y, radius)."""

    inner: float
    outer: float
    z: float
    holes: tuple[tuple[float, float, float], ...] = ()
    arc: tuple[float, float] | None = None

    def rim(self) -> Floats:
        """Points around the outer edge."""
        c, s = np.cos(_RING) * _WIDER * self.outer, np.sin(_RING) * _WIDER * self.outer
        return np.stack([c, s, np.full_like(c, self.z)], 1)

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """Where the line passes the plane inside the ring."""
        t = (self.z - o[2]) / np.where(np.abs(dz) < 1e-12, 1e-12, dz)
        x, y = o[0] + t * dx, o[1] + t * dy
        squared = x * x + y * y
        good = (t > 0) & (squared >= self.inner**2) & (squared <= self.outer**2)
        for hx, hy, hr in self.holes:
            good &= (x - hx) ** 2 + (y - hy) ** 2 > hr * hr
        if self.arc is not None:
            good &= _within(x, y, self.arc)
        return np.where(good, t, np.inf)

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Along the axis."""
        return np.zeros_like(x), np.zeros_like(x), np.ones_like(x)


@dataclass(frozen=True, slots=True)
class Face:
    """A flat face at height z with any outline (n, 2) and round holes."""

    outline: Floats
    z: float
    holes: tuple[tuple[float, float, float], ...] = ()

    def rim(self) -> Floats:
        """The outline's corners."""
        return np.column_stack([self.outline, np.full(len(self.outline), self.z)])

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """Even-odd rule for the outline."""
        t = (self.z - o[2]) / np.where(np.abs(dz) < 1e-12, 1e-12, dz)
        x, y = o[0] + t * dx, o[1] + t * dy
        odd = np.zeros(x.shape, bool)
        after = np.roll(self.outline, -1, axis=0)
        for (ax, ay), (bx, by) in zip(self.outline, after, strict=True):
            if ay != by:
                odd ^= ((y < ay) != (y < by)) & (x < ax + (y - ay) * ((bx - ax) / (by - ay)))
        good = odd & (t > 0)
        for hx, hy, hr in self.holes:
            good &= (x - hx) ** 2 + (y - hy) ** 2 > hr * hr
        return np.where(good, t, np.inf)

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Along z."""
        return np.zeros_like(x), np.zeros_like(x), np.ones_like(x)


@dataclass(frozen=True, slots=True)
class Wall:
    """An upright wall over one edge of an outline; the normals blend towards the neighbours."""

    a: Floats
    b: Floats
    z0: float
    z1: float
    normal_a: Floats
    normal_b: Floats

    def rim(self) -> Floats:
        """Its four corners."""
        return np.array(
            [[*self.a, self.z0], [*self.b, self.z0], [*self.a, self.z1], [*self.b, self.z1]]
        )

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """Where the line passes the wall's plane between its ends."""
        edge = self.b - self.a
        nx, ny = edge[1], -edge[0]
        down = nx * dx + ny * dy
        reach = nx * (self.a[0] - o[0]) + ny * (self.a[1] - o[1])
        t = reach / np.where(np.abs(down) < 1e-12, 1e-12, down)
        along = (o[0] + t * dx - self.a[0]) * edge[0] + (o[1] + t * dy - self.a[1]) * edge[1]
        z = o[2] + t * dz
        good = (t > 0) & (along >= 0) & (along <= edge @ edge) & (z >= self.z0) & (z <= self.z1)
        return np.where(good, t, np.inf)

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Blended from the normals at both ends."""
        edge = self.b - self.a
        along = ((x - self.a[0]) * edge[0] + (y - self.a[1]) * edge[1]) / (edge @ edge)
        nx = self.normal_a[0] * (1 - along) + self.normal_b[0] * along
        ny = self.normal_a[1] * (1 - along) + self.normal_b[1] * along
        return nx, ny, np.zeros_like(x)


@dataclass(frozen=True, slots=True)
class Ball:
    """A whole ball."""

    centre: Floats
    radius: float

    def rim(self) -> Floats:
        """The corners of a box around it."""
        corners = np.array([[i, j, k] for i in (-1, 1) for j in (-1, 1) for k in (-1, 1)])
        return np.asarray(self.centre + self.radius * corners)

    def meet(self, o: Floats, dx: Floats, dy: Floats, dz: Floats) -> Floats:
        """The nearer root."""
        q = o - self.centre
        a = dx * dx + dy * dy + dz * dz
        b = q[0] * dx + q[1] * dy + q[2] * dz
        inside = b * b - a * (q @ q - self.radius**2)
        t = (-b - np.sqrt(np.maximum(inside, 0))) / a
        return np.where((inside > 0) & (t > 0), t, np.inf)

    def normal(self, x: Floats, y: Floats, z: Floats) -> Triple:
        """Away from the centre."""
        return x - self.centre[0], y - self.centre[1], z - self.centre[2]


def _within(
    x: Floats, y: Floats, arc: tuple[float, float]
) -> np.ndarray[tuple[int, ...], np.dtype[np.bool_]]:
    turned = (np.degrees(np.arctan2(y, x)) - arc[0]) % 360
    return np.asarray(turned <= arc[1] - arc[0])
