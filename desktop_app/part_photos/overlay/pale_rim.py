"""A rim of the part as pale as the paper, burnt metal or oxide: told by its colour."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.overlay.over_paper import CLEAR_MM, OverPaper

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

STEP_MM = 0.05
FRINGE_MM = 0.4  # a picture stores colour coarsely: so far a strong one runs over its edge
LEAST_MM2 = 0.25


def pale_rim(
    seen: OverPaper, edge_mm: NDArray[np.float64], normals: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return how far, mm, a pale rim goes on outwards from each point of an outline, (n,).

    0 where paper, bare or in shade, lies beside the outline. Only colour is looked at, for a
    shadow's light is like that of many a part. What goes on farther than 2 mm is no rim but light
    that the part throws on the paper.
    """
    import cv2
    import numpy as np

    per_mm, coloured = seen.view.per_mm, seen.coloured()
    beyond = (coloured & (seen.away > FRINGE_MM)).astype(np.uint8)
    count, labels, facts, _ = cv2.connectedComponentsWithStats(beyond)
    rim = np.zeros(count, bool)
    for one in range(1, count):
        if facts[one, cv2.CC_STAT_AREA] >= LEAST_MM2 * per_mm**2:
            rim[one] = float(seen.away[labels == one].max()) < CLEAR_MM
    if not rim.any():
        return np.zeros(len(edge_mm))
    near = 2 * round((FRINGE_MM + 0.1) * per_mm) + 1
    grown = cv2.dilate(rim[labels].astype(np.uint8), np.ones((near, near), np.uint8)) > 0
    offsets = np.arange(2 * STEP_MM, CLEAR_MM, STEP_MM)
    whole = (seen.away == 0) | (grown & coloured)
    goes_on = seen.across(whole, edge_mm, normals, offsets)
    far = np.minimum.accumulate(goes_on, axis=1).sum(axis=1) * STEP_MM + STEP_MM
    return np.asarray(np.where(far > FRINGE_MM, far, 0.0), np.float64)
