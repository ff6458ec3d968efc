"""A mark in millimetres or degrees, with its expanded uncertainty and what makes it up."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.camera.lens import LENS
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import CLICK_U_PX
from desktop_app.part_photos.marks.cautions import cautions
from desktop_app.part_photos.marks.mark import OUTLINES, Mark, Measured
from desktop_app.part_photos.marks.mark_shape import MarkShape, shape_of
from desktop_app.part_photos.photo_cannot import PhotoCannot

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

SNAPPED_U_PX = 0.5  # standard uncertainty of a point on a found edge; found by trials
COVERAGE_FACTOR = 1.96  # for 95 %, normal distribution: JCGM 100:2008, table G.1
_STEP_PX, _STEP_MM = 0.05, 0.05  # for slopes; far above rounding, far below any curvature


def measure(mark: Mark, scale: PlaneScale) -> Measured:
    """Return what a mark measures, its expanded uncertainty (95 %) and its budget.

    The uncertainty is the law of propagation of first order (JCGM 100:2008, 5.1.2) with numeric
    slopes: pointing of both coordinates of every point; the scale's fitted values with their
    covariance; the height, anywhere within its range (rectangular: 4.3.7); the paper, which may
    not lie flat; the print. A note measures nothing. A count
    needs the picture: see count.py. Raises ShopTrouble (PhotoCannot) for points that make no such
    shape, and for points or heights that the camera can't have seen.
    """
    if mark.type == "count":
        raise PhotoCannot(tr("A count is taken from the picture, not from its scale."))
    if mark.type in OUTLINES:
        raise PhotoCannot(tr("An outline round a surface has no size; its share is counted."))
    if mark.type == "note":
        return Measured(None, "", None)
    if mark.type == "round-bar" and scale.source == "points":
        raise PhotoCannot(
            tr(
                "A round bar can't be measured by two points: where the camera stood must be known."
            ),
            do=tr("Take the photo with the bench card, or measure it with a calliper."),
        )
    points = points_array(mark)
    placed = _placed(mark, scale, points)
    shape = shape_of(mark, placed)
    value = abs(shape.value)
    by_theta, per_mm = _slopes(mark, scale, shape, points, placed)
    camera, lens = _from_scale(scale, by_theta)
    budget = {
        "pointing": _from_pointing(mark, scale, shape, points),
        "scale": camera,
        "height": per_mm * mark.height_u_mm / math.sqrt(3),
        "flatness": per_mm * scale.flat_u_mm,
        "lens": lens,
        "print": 0.0 if shape.unit == "deg" else value * scale.print_u,
    }
    expanded = COVERAGE_FACTOR * math.hypot(*budget.values())
    return Measured(
        value=value,
        unit=shape.unit,
        expanded_uncertainty=expanded,
        budget=budget,
        warnings=cautions(mark, scale, shape, expanded),
    )


def points_array(mark: Mark) -> Floats:
    """Return a mark's points as an array (n, 2), pixels."""
    import numpy as np

    return np.array(mark.points_px, float).reshape(-1, 2)


def _placed(
    mark: Mark,
    scale: PlaneScale,
    points_px: Floats,
    heights_mm: Floats | None = None,
    theta: Floats | None = None,
) -> Floats:
    """The mark's points on its plane, then the camera over that plane: 2 n + 3 values.

    Only a round bar asks where the camera stands; for other marks these three are nought. With
    theta (m, k) and heights (m, 1) there are m rows, one for each camera and height.
    """
    import numpy as np

    height = np.array([float(mark.height_mm)]) if heights_mm is None else heights_mm
    if mark.type == "round-bar":
        place, ways = scale.rays(points_px, theta)
        falls = np.where(ways[..., 2:] < 0, ways[..., 2:], np.nan)
        steps = (height - place[..., 2:])[..., None] / falls
        flat = place[..., None, :2] + steps * ways[..., :2]
        camera = place - height * np.array([0.0, 0.0, 1.0])
    else:
        flat = scale.on_plane(points_px, height, theta)
        camera = np.zeros((*flat.shape[:-2], 3))
    placed = np.concatenate([flat.reshape(*flat.shape[:-2], -1), camera], -1)
    if not np.isfinite(placed).all() or (camera[..., 2] < 0).any():
        name = mark.name or tr(mark.type)
        raise PhotoCannot(
            tr(
                "“{name}” can't lie {height_mm:g} mm above the card where it is marked: "
                "the camera would have to look from below.",
                name=name,
                height_mm=mark.height_mm,
            ),
            do=tr("Check its height and its points."),
        )
    return placed


def _from_pointing(mark: Mark, scale: PlaneScale, shape: MarkShape, points: Floats) -> float:
    """Each point may be off along x and along y, on its own; a circle's as far as they scatter."""
    import numpy as np

    if scale.source == "points":
        per_px = np.eye(2)[None] * scale.theta[0]
    else:
        steps = _STEP_PX * np.array([[1.0, 0], [0, 1], [-1, 0], [0, -1]])
        moved = scale.on_plane((points[:, None] + steps).reshape(-1, 2), mark.height_mm)
        sets = moved.reshape(-1, 4, 2)
        per_px = (sets[:, :2] - sets[:, 2:]) / (2 * _STEP_PX)
    slopes = shape.slopes[:-3].reshape(-1, 1, 2)
    of_points = (slopes * per_px).sum(-1)  # (n, 2): by x and by y of each pixel
    found = mark.snapped or (False,) * len(points)
    u_px = np.where(np.array(found), SNAPPED_U_PX, CLICK_U_PX)
    pointed = float(np.sqrt(((of_points * u_px[:, None]) ** 2).sum()))
    if shape.of_each_mm is None:
        return pointed
    # Points that lie off the circle by more than pointing explains say how well they are known.
    return max(pointed, shape.of_each_mm * float(np.linalg.norm(shape.slopes[:-3])))


def _slopes(
    mark: Mark, scale: PlaneScale, shape: MarkShape, points: Floats, placed: Floats
) -> tuple[Floats, float]:
    """How the size changes with each of the scale's fitted values (k,), and with 1 mm of height.

    All steps are placed at once: a shop's marks are worked out anew by the hundred.
    """
    import numpy as np

    theta = scale.theta
    # A thousandth of a standard deviation is small, and never lost in rounding.
    usual = 1e-3 * np.sqrt(np.diag(scale.covariance))
    steps = np.maximum(usual, 1e-9 * np.maximum(1.0, np.abs(theta)))
    k = len(theta)
    thetas = np.vstack([theta + np.diag(steps), theta, theta])
    heights = np.full((k + 2, 1), float(mark.height_mm))
    heights[k:, 0] += _STEP_MM, -_STEP_MM
    moved = _placed(mark, scale, points, heights, thetas)
    by_theta = (moved[:k] - placed) @ shape.slopes / steps
    per_mm = abs(float(shape.slopes @ (moved[k] - moved[k + 1]))) / (2 * _STEP_MM)
    return by_theta, per_mm


def _from_scale(scale: PlaneScale, slopes: Floats) -> tuple[float, float]:
    """The camera's fitted values, with what they have in common; then the lens's own part.

    The lens has what would be gone if its bending were known: the variance less what stays of it
    then (law of total variance), so that the squares of all parts add up.
    """
    import numpy as np

    spread = scale.covariance
    whole = max(float(slopes @ spread @ slopes), 0.0)
    if scale.source == "points":
        return math.sqrt(whole), 0.0
    shared = spread[:, LENS]
    known = spread - shared @ np.linalg.pinv(spread[LENS, LENS]) @ shared.T
    rest = min(max(float(slopes @ known @ slopes), 0.0), whole)
    return math.sqrt(rest), math.sqrt(whole - rest)
