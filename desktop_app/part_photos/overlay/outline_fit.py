"""One outline laid on another: points to lines, from starts all round, and how sure that is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.overlay.outline import Outline
from desktop_app.part_photos.overlay.plane_move import PlaneMove, about

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

STARTS = 36
SAME_WAY = 0.7  # cosine between the normals of points that may belong together
WALL_MM = 0.25  # of the outline's points those count behind which no more wall can show
RIVAL_DEG = 6.0
FAR = 3.0  # times `within`: no wear, but another shape


@dataclass(frozen=True, slots=True, eq=False)
class OutlineFit:
    """`move` brings new points onto old ones; lengths in the unit of the outlines.

    `inliers`: the share of comparable points within `within` of the other outline. `overlap`: area
    in common over area of both together. `rival`: inliers of the best fit turned 6 degrees away or
    more, over these. `far_off` and `rival_off`: the share of all points that lie far off here and
    there. `covariance` is that of (turn, x, y) about the old outline's middle.
    """

    move: PlaneMove
    inliers: float
    rms: float
    overlap: float
    rival: float
    far_off: float
    rival_off: float
    covariance: NDArray[np.float64]

    @property
    def shift_u(self) -> float:
        """The standard uncertainty of the shift in the direction where it is largest."""
        import numpy as np

        return float(np.sqrt(np.linalg.eigvalsh(self.covariance[1:, 1:])[-1]))


@dataclass(frozen=True, slots=True, eq=False)
class _Try:
    move: PlaneMove
    inliers: float
    rms: float


class _Onto:
    """The old outline with its look-up tree."""

    def __init__(self, old: Outline, within: float, wall: float, turning: bool = True) -> None:
        from scipy.spatial import cKDTree

        self.old, self.within, self.wall, self.turning = old, within, wall, turning
        self.tree = cKDTree(old.points)
        self.middle = old.middle()

    def matched(
        self, new: Outline, move: PlaneMove
    ) -> tuple[NDArray[np.float64], NDArray[np.intp], NDArray[np.float64], NDArray[np.bool_]]:
        """Return moved points, their nearest old ones, distances along the normal, which count."""
        import numpy as np

        points = move(new.points)
        _, near = self.tree.query(points)
        normals = self.old.normals[near]
        off = ((points - self.old.points[near]) * normals).sum(axis=1)
        counts = (new.wall <= self.wall) & (self.old.wall[near] <= self.wall)
        return points, np.asarray(near), off, counts

    def closer(self, new: Outline, move: PlaneMove, reach: float, stretch: bool) -> PlaneMove:
        """Return a better move: one step of Gauss-Newton, Tukey's weights of width `reach`."""
        import numpy as np

        points, near, off, counts = self.matched(new, move)
        normals = self.old.normals[near]
        same = (move.turned(new.normals) * normals).sum(axis=1) > SAME_WAY
        weight = np.where(counts & same, np.clip(1 - (off / reach) ** 2, 0, None) ** 2, 0.0)
        if (weight > 0).sum() < 8:
            return move
        rows = self.rows(points, normals, stretch)
        rows[:, 0] *= self.turning
        normal = rows.T @ (rows * weight[:, None])
        normal += np.eye(len(normal)) * 1e-9 * np.trace(normal)
        step = np.linalg.solve(normal, -(rows.T @ (weight * off)))
        grown = 1.0 + float(np.clip(step[3], -0.1, 0.1)) if stretch else 1.0
        turn = PlaneMove(float(np.clip(step[0], -0.3, 0.3)), stretch=grown)
        x, y = self.middle - turn(self.middle[None])[0] + step[1:3]
        return move.then(PlaneMove(turn.turn, (float(x), float(y)), grown))

    def rows(
        self, points: NDArray[np.float64], normals: NDArray[np.float64], stretch: bool = False
    ) -> NDArray[np.float64]:
        """Return how the distances change with (turn, x, y[, stretch]) about the middle."""
        import numpy as np

        arm = points - self.middle
        turning = normals[:, 1] * arm[:, 0] - normals[:, 0] * arm[:, 1]
        columns = [turning, normals[:, 0], normals[:, 1]]
        if stretch:
            columns.append((normals * arm).sum(axis=1))
        return np.column_stack(columns)

    def tried(self, new: Outline, move: PlaneMove) -> _Try:
        """Return how well a move fits."""
        import numpy as np

        points, near, off, counts = self.matched(new, move)
        same = (move.turned(new.normals) * self.old.normals[near]).sum(axis=1) > SAME_WAY
        gap = np.hypot(*(points - self.old.points[near]).T)
        # What lies farther off than any wall could make it is off, wall or no wall.
        counts = counts | (gap > 2 * self.within + float(self.old.wall.max() + new.wall.max()))
        if counts.sum() < 8:
            return _Try(move, 0.0, float("inf"))
        good = counts & same & (np.abs(off) < self.within) & (gap < 2 * self.within)
        share = float(good.sum() / counts.sum())
        rms = float(np.sqrt(np.mean(off[good] ** 2))) if good.any() else float("inf")
        return _Try(move, share, rms)


def fit_outlines(
    old: Outline,
    new: Outline,
    within: float,
    start: PlaneMove | None = None,
    stretch: bool = False,
    reach: float | None = None,
    turning: bool = True,
) -> OutlineFit | None:
    """Lay the new outline on the old one; None where too little of both can be compared.

    Without `start` the search begins at 36 turns about the middles. Iterated closest points,
    distances taken along the old outline's normals: Chen and Medioni, Image and Vision Computing
    10 (1992) 145. With `start` and `reach`, no point farther off than `reach` is heeded; without
    `turning` the turn of `start` stays.
    """
    import numpy as np

    wall = WALL_MM / 0.5 * within
    onto = _Onto(old, within, wall, turning)
    few, size = new.thinned(140), old.size()
    usable = float((new.wall <= wall).mean()), float((old.wall <= wall).mean())
    if min(usable) < 0.2:
        return None
    if start is not None:
        found = [_run(onto, new, start, (reach or 4 * within, 2 * within, within), stretch)]
    else:
        grown = float(np.sqrt(old.area() / new.area())) if stretch else 1.0
        coarse = []
        for turn in np.linspace(-np.pi, np.pi, STARTS, endpoint=False):
            begun = about(float(turn), new.middle() * grown, onto.middle)
            begun = PlaneMove(begun.turn, begun.shift, 1.0)
            begun = PlaneMove(0.0, stretch=grown).then(begun)
            coarse.append(_run(onto, few, begun, (0.1 * size, 4 * within), stretch, 6))
        coarse.sort(key=lambda one: -one.inliers)
        some = new.thinned(300)
        found = [
            _run(onto, some, one.move, (3 * within, within), stretch, 8)
            for one in _different(coarse, 6)
        ]
        found.sort(key=lambda one: (-round(one.inliers, 2), one.rms))
        found[0] = _run(onto, new, found[0].move, (within,), stretch)
    best = found[0]
    away = [one for one in found[1:] if _apart(one.move, best.move) > RIVAL_DEG]
    rival = max(away, key=lambda one: one.inliers, default=None)
    laid = new.moved(best.move)
    return OutlineFit(
        best.move,
        best.inliers,
        best.rms,
        _overlap(old, laid),
        rival.inliers / max(best.inliers, 1e-9) if rival else 0.0,
        _far_off(old, laid, FAR * within),
        _far_off(old, new.moved(rival.move), FAR * within) if rival else 1.0,
        _covariance(onto, new, best),
    )


def _run(
    onto: _Onto,
    new: Outline,
    move: PlaneMove,
    reaches: tuple[float, ...],
    stretch: bool,
    steps: int = 12,
) -> _Try:
    for reach in reaches:
        for _ in range(steps):
            closer = onto.closer(new, move, reach, stretch)
            still = abs(closer.turn - move.turn) < 1e-6 and (
                abs(closer.shift[0] - move.shift[0]) + abs(closer.shift[1] - move.shift[1])
                < 1e-4 * onto.within
            )
            move = closer
            if still:
                break
    return onto.tried(new, move)


def _different(tries: list[_Try], most: int) -> list[_Try]:
    """Return the best tries that differ from each other by a turn of 4 degrees or more."""
    kept: list[_Try] = []
    for one in tries:
        if len(kept) < most and all(_apart(one.move, other.move) > 4.0 for other in kept):
            kept.append(one)
    return kept


def _apart(one: PlaneMove, other: PlaneMove) -> float:
    """Return the angle between two turns, 0 to 180 degrees."""
    import math

    return abs(math.degrees(math.remainder(one.turn - other.turn, 2 * math.pi)))


def _overlap(old: Outline, new: Outline) -> float:
    import cv2
    import numpy as np

    both = np.vstack([old.points, new.points])
    low, per = both.min(axis=0), 300 / max(float(np.ptp(both, axis=0).max()), 1e-9)
    filled = []
    for outline in (old, new):
        picture = np.zeros((304, 304), np.uint8)
        points = np.round(((outline.points - low) * per + 1) * 16).astype(np.int32)
        cv2.fillPoly(picture, [points], 1, shift=4)
        filled.append(picture > 0)
    return float((filled[0] & filled[1]).sum() / max((filled[0] | filled[1]).sum(), 1))


def _far_off(old: Outline, new: Outline, far: float) -> float:
    """Return the share of the points of either outline that lie far from the other one."""
    import numpy as np
    from scipy.spatial import cKDTree

    there = np.asarray(cKDTree(old.points).query(new.points)[0])
    back = np.asarray(cKDTree(new.points).query(old.points)[0])
    return float(max(np.mean(there > far), np.mean(back > far)))


def _covariance(onto: _Onto, new: Outline, best: _Try) -> NDArray[np.float64]:
    """Return the covariance of (turn, x, y): neighbours within 2 mm err together."""
    import numpy as np

    points, near, off, counts = onto.matched(new, best.move)
    good = counts & (np.abs(off) < onto.within)
    if good.sum() < 8:
        return np.eye(3) * 1e6
    rows = onto.rows(points[good], onto.old.normals[near[good]])
    length = float(np.hypot(*np.diff(points, axis=0).T).sum())
    together = max(1.0, 4 * onto.within * len(points) / max(length, 1e-9))
    normal = rows.T @ rows + np.eye(3) * 1e-9
    return np.asarray(np.linalg.inv(normal) * best.rms**2 * together)
