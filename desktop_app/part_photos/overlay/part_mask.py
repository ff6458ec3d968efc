"""What in a view is the part and what is paper: a paper fit, a flood up to the sharpest edge."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.linear_light import to_linear

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

# Natural logarithms of light in ratio to the paper's. Found on rendered and real pictures.
PAPER_WITHIN = 0.10  # grain, and what a smooth fit leaves over
CHROMA_WITHIN = 0.07
BRIGHTER = 0.22  # a glint: no paper is that much brighter than the paper
DARKER = -0.9  # an even shadow on a bench keeps more than 40 % of the light
# A deeper shadow: below one lamp, of a part that stands high. Its rim is soft, its colour is the
# paper's or, the deeper the more, that of the light from elsewhere.
DEEPEST = -2.4
SOFT_PER_MM = 0.6  # steeper is no penumbra
LEVEL_PER_MM = 0.1  # flatter is grain
SHARP = 1.4  # times as steep as after more smoothing: an edge that is not soft by itself
SHADE_CHROMA = 0.16  # in ratio to its depth
LEAST_LEFT = 0.25  # of what is dark, when shadows are taken away
LEAST_PART_MM = 0.8  # what is narrower is dirt or grain
LEAST_SHARE = 0.001  # of the field
ALONG_RIM = 0.12  # share of a piece's outline on the field's rim: it may go on outside
PART = 2  # as a seed; paper is 1
DARK = 0.004  # added to the light: black has no logarithm


def part_mask(
    rgb: NDArray[np.uint8], field: NDArray[np.bool_], per_mm: float
) -> NDArray[np.bool_] | None:
    """Return where the part lies in a view: one filled piece, (h, w) bool; None where none is.

    `field` is where paper or part may be. A shadow with a soft rim is taken for paper: it is
    reached from the paper without crossing a sharp edge.
    """
    masks = part_masks(rgb, field, per_mm)
    return None if masks is None else masks[1]


def part_masks(
    rgb: NDArray[np.uint8], field: NDArray[np.bool_], per_mm: float
) -> tuple[NDArray[np.bool_], NDArray[np.bool_]] | None:
    """Return the least and the most of what may be the part, each as `part_mask` does.

    Between the two lies what is even and of the paper's colour: a shadow with a sharp rim, or
    bright metal. Nothing tells which.
    """
    import cv2
    import numpy as np

    paper = _paper_residual(rgb, field)
    if paper is None:
        return None
    light = paper.mean(axis=-1)
    chroma = np.linalg.norm(paper - light[..., None], axis=-1)
    coloured = chroma > CHROMA_WITHIN
    sure_paper = field & (np.abs(light) < PAPER_WITHIN) & ~coloured
    sure_part = field & (coloured | (light < DARKER) | (light > BRIGHTER))
    reach = max(1, round(LEAST_PART_MM * per_mm / 2))
    wide = 2 * reach + 1
    kernel = np.asarray(cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (wide, wide)), np.uint8)
    # What mixes paper and part at the edge is sure of neither.
    sure_part = _opened(sure_part, kernel)
    shade = _soft_shade(paper, light, chroma, sure_paper, per_mm)
    left = _opened(sure_part & ~shade, kernel)
    # Where hardly anything is left the part itself was reached, through a gap in its edge.
    if left.sum() > LEAST_LEFT * sure_part.sum():
        sure_part, sure_paper = left, sure_paper | shade
    sure_part = cv2.erode(sure_part.astype(np.uint8), np.ones((3, 3), np.uint8)) > 0
    seeds = np.zeros(field.shape, np.int32)
    seeds[sure_paper] = 1
    seeds[sure_part & ~sure_paper] = PART
    if not (seeds == PART).any() or not (seeds == 1).any():
        return None
    seeds[~field] = 1
    least = LEAST_SHARE * float(field.sum())
    # The flood follows contrast, so dark shades are lifted: sRGB does that already.
    picture = np.ascontiguousarray(rgb)
    flooded = cv2.watershed(picture, seeds.copy())
    most = _one_piece(_opened((flooded == PART) & field, kernel), field, least)
    even = _steepness(paper, 1.0) * per_mm < SOFT_PER_MM / 2
    like_shade = field & even & ~coloured & (light > DARKER) & (light < PAPER_WITHIN)
    seeds[_opened(like_shade, kernel) & (seeds == 0)] = 1
    flooded = cv2.watershed(picture, seeds)
    part = _one_piece(_opened((flooded == PART) & field, kernel), field, least)
    if most is None:
        return None
    return (most if part is None else part, most)


def _soft_shade(
    paper: NDArray[np.float64],
    light: NDArray[np.float64],
    chroma: NDArray[np.float64],
    sure_paper: NDArray[np.bool_],
    per_mm: float,
) -> NDArray[np.bool_]:
    """Return paper and the shadows on it that are reached from it without a sharp edge, (h, w)."""
    import cv2
    import numpy as np

    steep, smoother = (_steepness(paper, wide) * per_mm for wide in (0.7, 2.0))
    edge = (steep > SOFT_PER_MM) | ((steep > LEVEL_PER_MM) & (steep > SHARP * smoother))
    like_shade = chroma < CHROMA_WITHIN + SHADE_CHROMA * np.maximum(-light, 0.0)
    soft = ~edge & like_shade & (light > DEEPEST) & (light < PAPER_WITHIN)
    # No leak is followed through a gap in the part's edge.
    soft = _opened(soft, np.ones((3, 3), np.uint8))
    count, labels = cv2.connectedComponents(soft.astype(np.uint8), connectivity=4)
    if count < 2 or not (sure_paper & soft).any():
        return np.zeros(soft.shape, bool)
    return np.asarray(labels == np.bincount(labels[sure_paper & soft], minlength=count).argmax())


def _steepness(paper: NDArray[np.float64], smooth_px: float) -> NDArray[np.float32]:
    """Return the steepest of the three colours' slopes a pixel, (h, w)."""
    import cv2
    import numpy as np

    smooth = cv2.GaussianBlur(paper.astype(np.float32), (0, 0), smooth_px)
    across, down = (cv2.Sobel(smooth, cv2.CV_32F, *way, scale=1 / 8) for way in ((1, 0), (0, 1)))
    return np.asarray(np.hypot(across, down).max(axis=-1), np.float32)


def _opened(mask: NDArray[np.bool_], kernel: NDArray[np.uint8]) -> NDArray[np.bool_]:
    import cv2
    import numpy as np

    opened = cv2.morphologyEx(mask.astype(np.uint8), cv2.MORPH_OPEN, kernel)
    return np.asarray(opened > 0)


def _one_piece(
    mask: NDArray[np.bool_], field: NDArray[np.bool_], least: float
) -> NDArray[np.bool_] | None:
    """Return the largest piece with its holes filled; None where two are about as large.

    A piece along the field's rim (print, the table) gives way to one that lies free.
    """
    import cv2
    import numpy as np

    found, _ = cv2.findContours(mask.astype(np.uint8), cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    pieces = [(float(cv2.contourArea(one)), np.asarray(one, np.int32)) for one in found]
    pieces = [(size, one) for size, one in pieces if size >= least]
    inner = cv2.erode(np.pad(field, 1).astype(np.uint8), np.ones((5, 5), np.uint8))[1:-1, 1:-1] > 0
    free = [(size, one) for size, one in pieces if _inside(one, inner) > 1 - ALONG_RIM]
    pieces = sorted(free or pieces, key=lambda piece: -piece[0])
    if not pieces or (len(pieces) > 1 and pieces[1][0] > 0.5 * pieces[0][0]):
        return None
    filled = np.zeros(mask.shape, np.uint8)
    cv2.drawContours(filled, [pieces[0][1]], 0, 1, cv2.FILLED)
    return filled > 0


def _inside(contour: NDArray[np.int32], inner: NDArray[np.bool_]) -> float:
    x, y = contour[:, 0].T
    return float(inner[y, x].mean())


def _paper_residual(rgb: NDArray[np.uint8], field: NDArray[np.bool_]) -> NDArray[np.float64] | None:
    """Return log light over the paper's own, (h, w, 3): the paper is a quadratic surface.

    It starts from the rim of the field, where the part hardly lies, and is fitted anew to what
    looks like paper. None where the field shows no even paper.
    """
    import cv2
    import numpy as np

    light = np.log(to_linear(np.asarray(cv2.GaussianBlur(rgb, (0, 0), 0.8), np.uint8)) + DARK)
    rows, columns = np.nonzero(field)
    if len(rows) < 200:
        return None
    high, wide = field.shape
    every = max(1, len(rows) // 8_000)
    at = _surface(columns[::every] / wide, rows[::every] / high)
    sample = light[rows[::every], columns[::every]].astype(np.float64)
    deep = cv2.distanceTransform(np.pad(field, 1).astype(np.uint8), cv2.DIST_L2, 3)[1:-1, 1:-1]
    depth = deep[rows[::every], columns[::every]]
    rim = depth <= max(4.0, 0.18 * float(depth.max()))
    # Paper is the brighter half of the rim, should the part reach into it.
    use = rim & (sample.mean(axis=1) >= np.median(sample[rim].mean(axis=1)) - 0.25)
    for turn in range(8):
        terms = 1 if turn == 0 else 3 if turn == 1 else 6
        these = at[use, :terms]
        fitted = np.linalg.solve(these.T @ these, these.T @ sample[use])
        left = np.abs(sample - at[:, :terms] @ fitted).max(axis=1)
        spread = 1.4826 * float(np.median(left[use]))
        use = left < np.clip(3.0 * spread, 0.03, 0.25)
        if use.sum() < 0.05 * len(use) or use.sum() < 50:
            return None
    y, x = np.mgrid[0:high, 0:wide]
    surface = _surface(x.ravel() / wide, y.ravel() / high) @ fitted
    return np.asarray(light - surface.reshape(high, wide, 3), np.float64)


def _surface(x: NDArray[np.float64], y: NDArray[np.float64]) -> NDArray[np.float64]:
    import numpy as np

    return np.column_stack([np.ones_like(x), x, y, x * x, x * y, y * y])
