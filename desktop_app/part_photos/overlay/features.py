"""Alignment by small features of texture: for photos of one scene without card or clear rim."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.agreeing_blocks import agreeing_blocks
from desktop_app.part_photos.overlay.alignment import Alignment

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.photo_pixels import PhotoPixels

LOOKED_AT_PX = 1200
MOST_FEATURES = 4000
CLEARLY_BETTER = 0.75  # than the second best (Lowe, IJCV 60 (2004) 91)
LEAST_MATCHES, LEAST_SHARE = 30, 0.4  # of the matches that fit
MOST_RMS_PX = 1.5  # in the pictures looked at
LEAST_SPREAD = 0.06  # of both pictures' area, inside the hull of what fits
LEAST_AGREE = 0.7  # of the blocks with something in them


def by_features(old: PhotoPixels, new: PhotoPixels) -> Alignment | None:
    """Align by a homography from matched SIFT features; None where a strict test fails.

    A background that fits is not enough: what lies on it must agree too, block by block.
    """
    import cv2
    import numpy as np

    (first, a), (second, b) = (_small(one) for one in (old, new))
    matched = _matches(first, second)
    if matched is None:
        return None
    onto, points = matched
    _, good = cv2.findHomography(points, onto, cv2.USAC_MAGSAC, 2.0, maxIters=5000)
    fits: NDArray[np.bool_] = np.ravel(good) > 0  # no homography at all: nothing fits
    if fits.sum() < LEAST_MATCHES or fits.sum() < LEAST_SHARE * len(fits):
        return None
    found = np.asarray(cv2.findHomography(points[fits], onto[fits], 0)[0], np.float64)
    if found.shape != (3, 3) or not _plausible(found, points[fits], first, second):
        return None
    laid = cv2.perspectiveTransform(points[fits][:, None], found)[:, 0]
    rms = float(np.sqrt(((laid - onto[fits]) ** 2).sum(axis=1).mean()))
    if rms > MOST_RMS_PX or (agreeing_blocks(first, second, found) or 0.0) < LEAST_AGREE:
        return None
    transform = _enlarging(a) @ found @ np.linalg.inv(_enlarging(b))
    return Alignment(
        aligned=True,
        why=tr(
            "Laid on each other by {number} features that both photos show. There is no card "
            "on both, so nothing in it has a size.",
            number=int(fits.sum()),
        ),
        method="features",
        transform=transform / transform[2, 2],
        residual_px=rms * a,
    )


def _small(pixels: PhotoPixels) -> tuple[NDArray[np.uint8], int]:
    import cv2
    import numpy as np

    factor = max(1, round(max(pixels.width, pixels.height) / LOOKED_AT_PX))
    grey = np.asarray(cv2.cvtColor(pixels.rgb, cv2.COLOR_RGB2GRAY), np.uint8)
    high, wide = max(1, grey.shape[0] // factor), max(1, grey.shape[1] // factor)
    cut = grey[: high * factor, : wide * factor]
    return np.asarray(cv2.resize(cut, (wide, high), interpolation=cv2.INTER_AREA), np.uint8), factor


def _enlarging(factor: int) -> NDArray[np.float64]:
    """Return small px -> full px as a matrix, centres at whole numbers."""
    import numpy as np

    move = (factor - 1) / 2
    return np.array([[factor, 0, move], [0, factor, move], [0, 0, 1.0]])


def _matches(
    old: NDArray[np.uint8], new: NDArray[np.uint8]
) -> tuple[NDArray[np.float64], NDArray[np.float64]] | None:
    """Return matched points, old and new, (n, 2) each: best in both directions, and clearly."""
    import cv2
    import numpy as np

    sift = cv2.SIFT.create(MOST_FEATURES)
    (spots, signs), (others, their) = (sift.detectAndCompute(one, None) for one in (old, new))
    if signs is None or their is None or min(len(spots), len(others)) < LEAST_MATCHES:
        return None
    matcher = cv2.BFMatcher(cv2.NORM_L2)
    back = {one.trainIdx: one.queryIdx for one in matcher.match(their, signs)}
    pairs = []
    for two in matcher.knnMatch(signs, their, k=2):
        best, second = two
        clear = best.distance < CLEARLY_BETTER * second.distance
        if clear and back.get(best.queryIdx) == best.trainIdx:
            pairs.append((spots[best.queryIdx].pt, others[best.trainIdx].pt))
    if len(pairs) < LEAST_MATCHES:
        return None
    both = np.array(pairs, np.float64)
    return both[:, 0], both[:, 1]


def _plausible(
    found: NDArray[np.float64],
    points: NDArray[np.float64],
    old: NDArray[np.uint8],
    new: NDArray[np.uint8],
) -> bool:
    """Whether two photos of one scene can lie so: no mirror, half to double size, well spread."""
    import cv2
    import numpy as np

    laid = cv2.perspectiveTransform(points[:, None], found)[:, 0]
    for hull_of, picture in ((points, new), (laid, old)):
        hull = cv2.convexHull(hull_of.astype(np.float32))
        if cv2.contourArea(hull) < LEAST_SPREAD * picture.size:
            return False
    high, wide = new.shape
    corners = np.array([[0, 0], [wide, 0], [wide, high], [0, high]], np.float64)
    depth = np.column_stack([corners, np.ones(4)]) @ found[2]
    if (depth <= 0.2 * depth.max()).any():
        return False
    middle = np.array([[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]]) + points.mean(axis=0)
    here, right, down = cv2.perspectiveTransform(middle[:, None], found)[:, 0]
    across, along = right - here, down - here
    grown = float(across[0] * along[1] - across[1] * along[0])
    return 0.25 <= grown <= 4.0
