"""The four edges of one marker in linear light: fitted lines, and the corners where they meet."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, cast

from desktop_app.part_photos.linear_light import linear_grey

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Flags = NDArray[np.bool_]

MOST_REACH_PX = 12.0  # how far across an edge is looked, to either side
# In modules, from the edge: the border's far side has white bits again, outside there are none.
INSIDE, OUTSIDE = 0.65, 0.9
MOST_PLACES = 48  # along an edge, where it is looked across
STEP_PX = 0.3
CURVE_U_PX = 0.05  # how much a side of a marker may bend, by the lens
LEAST_CONTRAST = 0.02  # of white to black, linear


@dataclass(frozen=True, slots=True, eq=False)
class MarkerEdges:
    """Refined corners (4, 2) px, clockwise as handed in, and how well each side's edge fits.

    For each side, beginning at the first corner: `good` is the share of places along it where
    there is an edge on the line, `rms_px` how far these scatter, `blur_px` the standard deviation
    of the edge's spread, `across` whether the edge is looked across sideways rather than upright.
    """

    corners_px: Floats
    good: Floats
    rms_px: Floats
    blur_px: Floats
    across: Flags


def marker_edges(rgb: NDArray[np.uint8], corners_px: Floats, modules: int) -> MarkerEdges:
    """Refine a marker's corners (4, 2), roughly known, from its edges; `modules` along a side.

    Where an edge is covered, `good` tells. Only the marker's surroundings are converted to light.
    """
    import numpy as np

    module = float(np.linalg.norm(corners_px - np.roll(corners_px, -1, 0), axis=1).min()) / modules
    reach = float(np.clip(OUTSIDE * module, 2.0, MOST_REACH_PX))
    low = np.maximum(np.floor(corners_px.min(0) - reach - 2).astype(int), 0)
    high = np.ceil(corners_px.max(0) + reach + 3).astype(int)
    light = linear_grey(rgb[low[1] : high[1], low[0] : high[0]])
    edges = _looked_at(light, corners_px - low, reach)
    # Again from there, where the window sits evenly over the edges.
    edges = _looked_at(light, edges.corners_px, reach)
    return replace(edges, corners_px=edges.corners_px + low)


def _looked_at(light: NDArray[np.float32], corners: Floats, reach: float) -> MarkerEdges:
    import numpy as np

    sides = np.roll(corners, -1, 0) - corners
    length = np.linalg.norm(sides, axis=1)
    # Corners run clockwise as seen (y down), so the white lies to the left of each side.
    normals = np.column_stack([sides[:, 1], -sides[:, 0]]) / length[:, None]
    places = np.linspace(0.1, 0.9, int(np.clip(length.mean() / 2, 8, MOST_PLACES)))
    inside = reach * INSIDE / OUTSIDE
    offsets = np.linspace(-inside, reach, int(np.ceil((inside + reach) / STEP_PX)) + 1)
    profiles = _profiles(light, corners, sides, normals, places, offsets)
    levels, crossings = _crossings(profiles, offsets)
    lines, good, rms = _lines(2 * places - 1, crossings)
    blur = np.array([_spread(*side, offsets) for side in zip(profiles, levels, good, strict=True)])
    met = _met(corners, sides, normals, lines)
    return MarkerEdges(met, good.mean(1), rms, blur, np.abs(normals[:, 0]) > np.abs(normals[:, 1]))


def _profiles(
    light: NDArray[np.float32],
    corners: Floats,
    sides: Floats,
    normals: Floats,
    places: Floats,
    offsets: Floats,
) -> Floats:
    """Light across each side, from black to white: (4, places, offsets); nan off the picture."""
    import cv2
    import numpy as np

    along = corners[:, None, None] + sides[:, None, None] * places[:, None, None]
    where = (along + normals[:, None, None] * offsets[:, None]).astype(np.float32)
    flat = where.reshape(-1, len(offsets), 2)
    found = cv2.remap(
        light,
        np.ascontiguousarray(flat[..., 0]),
        np.ascontiguousarray(flat[..., 1]),
        cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_CONSTANT,
        borderValue=float("nan"),
    )
    return cast("Floats", found.reshape(4, len(places), len(offsets)).astype(float))


def _crossings(profiles: Floats, offsets: Floats) -> tuple[Floats, Floats]:
    """Black and white of each profile, and where it crosses their middle; nan without an edge."""
    import numpy as np

    ends = max(2, len(offsets) // 6)
    black, white = profiles[..., :ends].mean(-1), profiles[..., -ends:].mean(-1)
    middle = (black + white) / 2
    above = profiles - middle[..., None]
    rises = (above[..., :-1] <= 0) & (above[..., 1:] > 0)
    nearest = np.where(rises, np.abs(offsets[:-1]), np.inf).argmin(-1)[..., None]
    before, after = (np.take_along_axis(above, nearest + n, -1)[..., 0] for n in (0, 1))
    step = after - before
    crossing = offsets[nearest[..., 0]] - before / np.where(step > 0, step, np.nan) * (
        offsets[1] - offsets[0]
    )
    edge = rises.any(-1) & (white - black > LEAST_CONTRAST)
    return np.stack([black, white], -1), np.where(edge, crossing, np.nan)


def _lines(along: Floats, crossings: Floats) -> tuple[Floats, Flags, Floats]:
    """Offset, slope and slight bend (4, 3) of each side over -1 to 1; which places count; rms."""
    import numpy as np

    powers = np.stack([np.ones_like(along), along, along**2], -1)
    there = ~np.isnan(crossings)
    values = np.where(there, crossings, 0.0)
    # The median keeps a finger's edge out of the first fit.
    level = np.sort(crossings, axis=1)[np.arange(4), there.sum(1) // 2]  # nan is sorted last
    good = there & (np.abs(values - level[:, None]) < 4.0)
    for _ in range(5):
        weights = good.astype(float)
        normal = np.einsum("sp,pi,pj->sij", weights, powers, powers)
        # A prior of the bend, at a scatter of .1 px; a trace on the rest keeps it solvable.
        normal += np.diag([1e-9, 1e-9, (0.1 / CURVE_U_PX) ** 2])
        right = np.einsum("sp,sp,pi->si", weights, values, powers)
        lines = np.linalg.solve(normal, right[..., None])[..., 0]
        off = np.abs(values - lines @ powers.T)
        robust = 1.4826 * np.median(np.where(there, off, 1e3), axis=1)
        good = there & (off < np.clip(3 * robust, 0.15, 1.8)[:, None])
    count = np.maximum(good.sum(1), 1)
    return lines, good, np.sqrt(np.where(good, off**2, 0.0).sum(1) / count)


def _spread(profiles: Floats, levels: Floats, good: Flags, offsets: Floats) -> float:
    """Standard deviation of an edge's blur, px: half the way from 16 to 84 % of its step."""
    import numpy as np

    if not good.any():
        return float("nan")
    black, white = levels[good].mean(0)
    share = (profiles[good].mean(0) - black) / (white - black)
    rising = np.maximum.accumulate(share)
    rising = rising + np.arange(len(rising)) * 1e-9
    low, high = np.interp([0.1587, 0.8413], rising, offsets)
    return float(high - low) / 2


def _met(corners: Floats, sides: Floats, normals: Floats, lines: Floats) -> Floats:
    """Where neighbouring sides meet, each continued by its tangent at the corner: (4, 2)."""
    import numpy as np

    def ends(u: float) -> tuple[Floats, Floats]:
        offset, slope = lines @ [1.0, u, u * u], lines @ [0.0, 1.0, 2 * u]
        points = corners + sides * (u + 1) / 2 + normals * offset[:, None]
        return points, sides / 2 + normals * slope[:, None]

    point, ahead = ends(-1.0)
    other, behind = (np.roll(ends_of, 1, axis=0) for ends_of in ends(1.0))
    # point + a ahead = other + b behind, for each corner.
    matrix = np.stack([ahead, -behind], -1)
    steps = np.linalg.solve(matrix, (other - point)[..., None])[:, 0]
    return point + steps * ahead
