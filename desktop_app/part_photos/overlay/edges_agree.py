"""A second look at an alignment: do the edges inside and round the part say the same?"""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.linear_light import linear_grey
from desktop_app.part_photos.overlay.outline import Outline
from desktop_app.part_photos.overlay.part_view import PartView
from desktop_app.part_photos.overlay.plane_move import PlaneMove

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

PER_MM = 4.0
ROUND_MM = 2.0
WALL_MM = 0.25
MOST_STEPS = 40
LEAST_CORRELATION = 0.3


def edges_off_mm(old: PartView, new: PartView, outline: Outline, move: PlaneMove) -> float | None:
    """Return how far, mm rms over the old outline, edges alone would move the new part further.

    The strengths of the edges are aligned by their correlation (Evangelidis and Psarakis, IEEE
    Trans. PAMI 30 (2008) 1858), where no wall shows. None where that finds no agreement.
    """
    import cv2
    import numpy as np

    low = outline.points.min(axis=0) - ROUND_MM
    size = np.ceil((np.ptp(outline.points, axis=0) + 2 * ROUND_MM) * PER_MM).astype(int) + 1
    first = _edges(old, np.eye(3), low, size)
    second = _edges(new, move.back().matrix(), low, size)
    mask = _where(outline, low, size)
    criteria = (cv2.TERM_CRITERIA_EPS | cv2.TERM_CRITERIA_COUNT, MOST_STEPS, 1e-4)
    warp = np.eye(2, 3, dtype=np.float32)
    try:
        fit, found = cv2.findTransformECC(
            first, second, warp, cv2.MOTION_EUCLIDEAN, criteria, mask, 5
        )
    except cv2.error:  # it says so where it doesn't converge
        return None
    if fit < LEAST_CORRELATION:
        return None
    warp = np.asarray(found, np.float32)
    points = (outline.points - low) * PER_MM
    moved = points @ warp[:, :2].T + warp[:, 2]
    return float(np.sqrt(((moved - points) ** 2).sum(axis=1).mean()) / PER_MM)


def _edges(
    view: PartView, to_plane: NDArray[np.float64], low: NDArray[np.float64], size: NDArray[np.intp]
) -> NDArray[np.float32]:
    """Return the strength of the edges, (h, w), of a view brought onto the old part's plane."""
    import cv2
    import numpy as np

    # Pixel of the result -> mm of the old plane -> mm of this view's plane -> pixel of the view.
    out = np.array([[1 / PER_MM, 0, low[0]], [0, 1 / PER_MM, low[1]], [0, 0, 1]])
    x, y = view.origin_mm
    p = view.per_mm
    inner = np.array([[p, 0, -x * p], [0, p, -y * p], [0, 0, 1]])
    grey = cv2.GaussianBlur(linear_grey(view.rgb), (0, 0), max(0.5, p / PER_MM / 2))
    there = (inner @ to_plane @ out)[:2]
    flat = cv2.warpAffine(
        np.log(grey + 0.02),
        there,
        (int(size[0]), int(size[1])),
        flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_REPLICATE,
    )
    smooth = cv2.GaussianBlur(flat, (0, 0), 1.0)
    strength = np.hypot(cv2.Sobel(smooth, cv2.CV_32F, 1, 0), cv2.Sobel(smooth, cv2.CV_32F, 0, 1))
    # A glint's rim is no stronger evidence than an edge of the part.
    strength = np.minimum(strength, 2.0 * float(np.percentile(strength, 97)) + 1e-6)
    return np.asarray(strength, np.float32)


def _where(outline: Outline, low: NDArray[np.float64], size: NDArray[np.intp]) -> NDArray[np.uint8]:
    import cv2
    import numpy as np

    mask = np.zeros((int(size[1]), int(size[0])), np.uint8)
    points = np.round((outline.points - low) * PER_MM * 16).astype(np.int32)
    cv2.fillPoly(mask, [points], 255, shift=4)
    reach = 2 * round(PER_MM * 1.5) + 1
    mask = np.asarray(cv2.dilate(mask, np.ones((reach, reach), np.uint8)), np.uint8)
    for point, wall in zip(points, outline.wall, strict=True):
        if wall > WALL_MM:
            at = (int(point[0]) // 16, int(point[1]) // 16)
            cv2.circle(mask, at, round((wall + 0.7) * PER_MM), 0, cv2.FILLED)
    return mask
