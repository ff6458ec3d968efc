"""How sure a distance between two laid outlines is, point by point (JCGM 100, first order)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.overlay.height_doubt import HeightDoubt
from desktop_app.part_photos.overlay.outline_fit import OutlineFit
from desktop_app.part_photos.overlay.part_seen import PartSeen
from desktop_app.part_photos.overlay.plane_move import PlaneMove

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.plane_scale import PlaneScale

U_EDGE_PX = 0.7  # of an edge found by itself, in the photo's pixels
EXPAND = 1.96
BESIDE_WALL_MM = 0.6  # where outlines meet a wall at a slant
WALK_MM = 0.2
INWARDS_MM = 0.2
TURNED_AWAY = -0.2  # sine: an outline turned less far from the camera may be a wall's side
FEW = 60


def outline_doubt(
    old: PartSeen,
    new: PartSeen,
    fit: OutlineFit,
    old_scale: PlaneScale,
    new_scale: PlaneScale,
    height: HeightDoubt,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Return the expanded uncertainty, mm, of the distance at each point of both outlines, (n,).

    Counted are the edge in both photos, the alignment, both cameras, a height that is wrong in
    both photos alike, and in each photo paper that lies off its plane and the scale of its print;
    of these only what no turn and shift of the whole outline takes up; then, where the photos look
    from two sides, pieces of the outline that lie higher or lower than the rest. The two prints are
    taken to be two: nothing tells that both photos show the same one.
    A wall that shows can carry the outline outwards, never inwards. What stands out beyond the
    other outline must do so by more than its own wall; the other's wall makes it look smaller.
    """
    import numpy as np
    from scipy.spatial import cKDTree

    points, normals = old.outline.points, old.outline.normals
    edge = U_EDGE_PX**2 * (old.mm_per_px**2 + new.mm_per_px**2)
    rows = _rigid_rows(points, normals, old.outline.middle())
    aligned = np.einsum("ni,ij,nj->n", rows, fit.covariance, rows)
    few = np.unique(np.linspace(0, len(points) - 1, FEW).astype(int))
    stays = _Stays(rows[few], normals[few])
    there = _Lengths(stays, old_scale, points[few], height.height_mm, PlaneMove())
    here = _Lengths(stays, new_scale, fit.move.back()(points[few]), height.height_mm, fit.move)
    both = there.by_theta() + here.by_theta()
    both += (height.whole_u * (there.by_height() - here.by_height())) ** 2
    both += (height.pieces_u * _pieces_apart(there, here, normals[few], height)) ** 2
    for one, scale in ((there, old_scale), (here, new_scale)):
        both += (scale.flat_u_mm * one.by_height()) ** 2 + (scale.print_u * one.by_print()) ** 2
    cameras = np.interp(np.arange(len(points)), few, both)
    plain = EXPAND * np.sqrt(edge + aligned + cameras)
    moved = fit.move(new.outline.points)
    near_new = np.asarray(cKDTree(points).query(moved)[1])
    near_old = np.asarray(cKDTree(moved).query(points)[1])
    return (
        plain + shown_wall(old, height.height_mm) + new.outline.wall[near_old],
        plain[near_new] + shown_wall(new, height.height_mm) + old.outline.wall[near_new],
    )


def untold_doubt(
    old: PartSeen, new: PartSeen, fit: OutlineFit
) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Return where either outline may be a shadow's rim, for the points of both, (n,) each."""
    import numpy as np
    from scipy.spatial import cKDTree

    points, moved = old.outline.points, fit.move(new.outline.points)
    near_new = np.asarray(cKDTree(points).query(moved)[1])
    near_old = np.asarray(cKDTree(moved).query(points)[1])
    return old.untold | new.untold[near_old], new.untold | old.untold[near_new]


def shown_wall(part: PartSeen, height_mm: float) -> NDArray[np.float64]:
    """Return how far, mm, a wall may have carried each point of a part's outline outwards, (n,).

    A wall shows below its top edge in the direction of the point under the camera. So a point of
    the outline can only be carried as far as one may walk back inside what is seen: not at all
    where the outline faces away, by all that is seen of the wall in corners and along its sides.
    """
    import numpy as np
    from scipy.ndimage import maximum_filter1d

    points, normals = part.outline.points, part.outline.normals
    way = (part.eye_mm[:2] - points) / (part.eye_mm[2] - height_mm) * height_mm
    length = np.hypot(*way.T)
    way /= np.maximum(length, 1e-9)[:, None]
    steps = np.arange(0.0, float(length.max()) + WALK_MM, WALK_MM)
    walked = (points - INWARDS_MM * normals)[:, None] - steps[None, :, None] * way[:, None]
    stays = np.minimum.accumulate(_inside(points, walked), axis=1).sum(axis=1) * WALK_MM
    faces = (normals * way).sum(axis=1) > TURNED_AWAY
    carried = np.maximum(np.where(faces, np.minimum(length, stays), 0.0), part.outline.wall)
    step = float(np.median(np.hypot(*np.diff(points, axis=0).T)))
    beside = 2 * max(1, round(BESIDE_WALL_MM / step)) + 1
    return np.asarray(maximum_filter1d(carried, beside, mode="wrap"))


def _inside(line: NDArray[np.float64], points: NDArray[np.float64]) -> NDArray[np.bool_]:
    """Return which points, (n, k, 2), lie inside a closed line, to a tenth of a millimetre."""
    import cv2
    import numpy as np

    low = line.min(axis=0) - 1.0
    wide, high = (int(side) for side in np.ceil((np.ptp(line, axis=0) + 2.0) / WALK_MM * 2))
    filled = np.zeros((high, wide), np.uint8)
    cv2.fillPoly(filled, [np.round((line - low) / WALK_MM * 32).astype(np.int32)], 1, shift=4)
    x, y = np.moveaxis(np.round((points - low) / WALK_MM * 2).astype(int), -1, 0)
    there = (x >= 0) & (y >= 0) & (x < wide) & (y < high)
    inside = filled[np.clip(y, 0, high - 1), np.clip(x, 0, wide - 1)] > 0
    return np.asarray(there & inside, np.bool_)


def _rigid_rows(
    points: NDArray[np.float64], normals: NDArray[np.float64], middle: NDArray[np.float64]
) -> NDArray[np.float64]:
    import numpy as np

    arm = points - middle
    turning = normals[:, 1] * arm[:, 0] - normals[:, 0] * arm[:, 1]
    return np.column_stack([turning, normals])


def _pieces_apart(
    there: _Lengths, here: _Lengths, normals: NDArray[np.float64], height: HeightDoubt
) -> NDArray[np.float64]:
    """Return how far apart both photos put a piece that lies 1 mm off the outline's height, (n,).

    Along the normals. Where nobody said a height, many pieces lie off it, which turns and shifts
    the whole fit: then it is the whole way in any direction.
    """
    import numpy as np

    apart = there.higher() - here.higher()
    if height.highest_mm is not None:
        return np.asarray(np.hypot(*apart.T))
    return np.asarray((apart * normals).sum(axis=1))


class _Stays:
    """What of a change along the normals no turn and shift takes up."""

    def __init__(self, rows: NDArray[np.float64], normals: NDArray[np.float64]) -> None:
        self.rows, self.normals = rows, normals

    def of(self, change: NDArray[np.float64]) -> NDArray[np.float64]:
        import numpy as np

        along = (change * self.normals).sum(axis=1)
        return np.asarray(along - self.rows @ np.linalg.lstsq(self.rows, along, rcond=None)[0])


class _Lengths:
    """How points of one photo's plane move with what was fitted and with the height."""

    def __init__(
        self,
        stays: _Stays,
        scale: PlaneScale,
        points: NDArray[np.float64],
        height_mm: float,
        move: PlaneMove,
    ) -> None:
        self.stays, self.scale, self.move, self.height = stays, scale, move, height_mm
        self.pixels = scale.to_pixels(points, height_mm)
        self.points = scale.on_plane(self.pixels, height_mm)

    def by_height(self) -> NDArray[np.float64]:
        """Return the change along the normals for 1 mm more height of the whole outline, (n,)."""
        return self.stays.of(self.higher())

    def by_print(self) -> NDArray[np.float64]:
        """Return the change along the normals where the print is as large again, (n,)."""
        return self.stays.of(self.move.turned(self.points))

    def higher(self) -> NDArray[np.float64]:
        """Return the change, (n, 2), where a point alone lies 1 mm higher."""
        higher = self.scale.on_plane(self.pixels, self.height + 1.0)
        return self.move.turned(higher - self.points)

    def by_theta(self) -> NDArray[np.float64]:
        """Return the variance along the normals from what was fitted, mm^2, (n,)."""
        import numpy as np

        theta, covariance = np.asarray(self.scale.theta), np.asarray(self.scale.covariance)
        changes = np.zeros((len(theta), len(self.pixels)))
        for k, u in enumerate(np.sqrt(np.diag(covariance)) if len(theta) else ()):
            step = max(0.1 * float(u), 1e-9)
            other = theta.copy()
            other[k] += step
            moved = self.scale.on_plane(self.pixels, self.height, other)
            changes[k] = self.stays.of(self.move.turned(moved - self.points)) / step
        return np.asarray(np.einsum("kn,kl,ln->n", changes, covariance, changes))
