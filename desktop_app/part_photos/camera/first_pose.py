"""Where the camera may have stood, before anything is fitted: a flat card allows two poses."""

from __future__ import annotations

from typing import TYPE_CHECKING

CLEARLY_WORSE = 5.0  # reprojection error of the second pose, to that of the first

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.camera_model import Priors

    Floats = NDArray[np.float64]


def first_poses(object_mm: Floats, image_px: Floats, priors: Priors) -> list[Floats]:
    """Return one or two starts of shape (14,), the better one first; one where it's clearly better.

    Infinitesimal plane-based pose estimation: Collins and Bartoli, International Journal of
    Computer Vision 109, 2014. Raises numpy.linalg.LinAlgError where no pose is found.
    """
    import cv2
    import numpy as np

    middle = object_mm.mean(0)
    flat = np.column_stack([object_mm - middle, np.zeros(len(object_mm))])
    values = priors.means()
    focal = float(np.exp(values[0]))
    camera = np.array([[focal, 0, values[1]], [0, focal, values[2]], [0, 0, 1]])
    seen = np.ascontiguousarray(image_px, float)[:, None, :]
    found = cv2.solvePnPGeneric(flat, seen, camera, None, flags=cv2.SOLVEPNP_IPPE)
    count, turns, shifts, errors = found
    starts: list[Floats] = []
    for turn, shift, error in zip(turns[:count], shifts[:count], errors.ravel(), strict=False):
        if starts and error > CLEARLY_WORSE * errors.min():
            continue
        start = values.copy()
        start[5:8] = turn.ravel()
        matrix = cv2.Rodrigues(turn)[0]
        start[8:11] = shift.ravel() - matrix @ np.array([*middle, 0.0])
        if np.isfinite(start).all() and shift[2, 0] > 0:
            starts.append(start)
    if not starts:
        raise np.linalg.LinAlgError("no pose of the card explains its corners")
    return starts
