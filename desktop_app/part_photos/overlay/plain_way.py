"""Alignment of photos without cards: by the outline on an even ground, or by clicked points."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.agreeing_blocks import agreeing_blocks
from desktop_app.part_photos.overlay.alignment import Alignment, LaidOutlines, cannot
from desktop_app.part_photos.overlay.outline import (
    Outline,
    evenly,
    mask_rim,
    on_the_edge,
    outward_normals,
)
from desktop_app.part_photos.overlay.outline_fit import OutlineFit, fit_outlines
from desktop_app.part_photos.overlay.part_mask import part_mask
from desktop_app.part_photos.overlay.part_view import PartView
from desktop_app.part_photos.overlay.plane_move import PlaneMove, best_move
from desktop_app.part_photos.overlay.trust import click_trouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.photo_pixels import PhotoPixels

LOOKED_AT_PX = 1000  # the longer side of the picture in which the part is found
WITHIN = 0.012  # of the part's size
LEAST_INLIERS, LEAST_OVERLAP, MOST_RMS = 0.85, 0.9, 0.006
CLEARLY_WORSE = (0.04, 1.4)  # inliers less, times the rms: not the same fit
GRAIN_PX = 0.3  # a smaller rms is no better
LEAST_SHARE, MOST_SHARE = 0.01, 0.7  # of the picture
LEAST_ALIKE = 0.6  # of the blocks inside with something in them
U_PER_SIZE = 0.02  # how well a view of its own can be told from another shape


def by_plain_outline(old: PhotoPixels, new: PhotoPixels) -> Alignment | None:
    """Align by turn, shift and size of the outline; None where that can't be trusted.

    It holds only where both photos look at the part from the same side: nothing corrects the view.
    An outline that fits better turned over is not trusted.
    """
    import numpy as np

    first, second = _outline(old), _outline(new)
    if first is None or second is None:
        return None
    size = first.size()
    fit = fit_outlines(first, second, WITHIN * size, stretch=True)
    if fit is None or not _is_trusted(fit, size) or not _inside_agrees(old, new, first, fit.move):
        return None
    over = fit_outlines(first, second.turned_over(), WITHIN * size, stretch=True)
    if over is not None and _is_clearly_worse(fit, over):
        return None
    alike = over is not None and not _is_clearly_worse(over, fit)
    why = tr(
        "Laid on each other by the part's outline. There is no card, so turn and size "
        "were fitted, the view was not corrected, and nothing in it has a size."
    )
    if alike:
        why += " " + tr("It looks the same turned over: check that neither photo is mirrored.")
    moved = fit.move(second.points)
    doubt = [np.full(len(one), U_PER_SIZE * size) for one in (first.points, moved)]
    return Alignment(
        aligned=True,
        why=why,
        method="outline",
        transform=fit.move.matrix(),
        residual_px=fit.rms,
        outlines=LaidOutlines(first.points, moved, None, None, *doubt),
    )


def fits_turned_over(old: PhotoPixels, new: PhotoPixels) -> bool:
    """Whether the new part's outline fits the old one's once it is turned over."""
    first, second = _outline(old), _outline(new)
    if first is None or second is None:
        return False
    size = first.size()
    over = fit_outlines(first, second.turned_over(), WITHIN * size, stretch=True)
    if over is None or not _is_trusted(over, size):
        return False
    fit = fit_outlines(first, second, WITHIN * size, stretch=True)
    return fit is None or _is_clearly_worse(fit, over)


def _is_trusted(fit: OutlineFit, size: float) -> bool:
    return (
        fit.inliers >= LEAST_INLIERS
        and fit.overlap >= LEAST_OVERLAP
        and fit.rms <= MOST_RMS * size
        and not (fit.rival > 0.8 and fit.rival_off < 0.03)
        and 0.5 <= fit.move.stretch <= 2.0
    )


def _is_clearly_worse(fit: OutlineFit, other: OutlineFit) -> bool:
    less, times = CLEARLY_WORSE
    return fit.inliers < other.inliers - less or fit.rms > times * max(other.rms, GRAIN_PX)


def _inside_agrees(old: PhotoPixels, new: PhotoPixels, outline: Outline, move: PlaneMove) -> bool:
    """Whether what lies inside the outline looks alike, where there is anything to see.

    An empty card's field fits any other card's field: the parts on them need not fit.
    """
    import cv2
    import numpy as np

    factor = max(1, -(-max(old.width, old.height) // LOOKED_AT_PX))
    size = (old.width // factor, old.height // factor)
    to_small = np.diag([1 / factor, 1 / factor, 1.0])
    greys = [cv2.cvtColor(one.rgb, cv2.COLOR_RGB2GRAY) for one in (old, new)]
    first = cv2.resize(greys[0], size, interpolation=cv2.INTER_AREA)
    second = cv2.GaussianBlur(greys[1], (0, 0), max(0.3, factor / 2.5))
    inside = np.zeros(first.shape, np.uint8)
    cv2.fillPoly(inside, [np.round(outline.points / factor * 16).astype(np.int32)], 1, shift=4)
    whole = np.asarray(first, np.uint8), np.asarray(second, np.uint8)
    share = agreeing_blocks(*whole, to_small @ move.matrix(), inside > 0)
    return share is None or share >= LEAST_ALIKE


def by_plain_clicks(old_px: NDArray[np.float64], new_px: NDArray[np.float64]) -> Alignment:
    """Align by turn, shift and size from common points, (n, 2) each, n at least 2."""
    import numpy as np

    move = best_move(new_px, old_px, stretch=True)
    left = np.hypot(*(move(new_px) - old_px).T)
    why = click_trouble(new_px, old_px, left, "px")
    if why:
        return cannot(why)
    count = len(old_px)
    rms = float(np.sqrt((left**2).mean())) if count > 2 else None
    return Alignment(
        aligned=True,
        why=tr(
            "Laid on each other by {count} clicked points. There is no card on both, so "
            "nothing in it has a size.",
            count=count,
        ),
        method="clicks",
        transform=move.matrix(),
        residual_px=rms,
    )


def _outline(pixels: PhotoPixels) -> Outline | None:
    """Return the outline in the photo's pixels of what lies on an even ground; None without."""
    import cv2
    import numpy as np

    longest = max(pixels.width, pixels.height)
    factor = max(1, -(-longest // LOOKED_AT_PX))
    high, wide = pixels.height // factor, pixels.width // factor
    if min(high, wide) < 60:
        return None
    cut = pixels.rgb[: high * factor, : wide * factor]
    small = np.asarray(cv2.resize(cut, (wide, high), interpolation=cv2.INTER_AREA), np.uint8)
    whole = np.ones((high, wide), bool)
    # As if ten pixels of a picture of this size were a millimetre: only grain is told by it.
    per_mm = max(high, wide) / 150
    mask = part_mask(small, whole, per_mm)
    if mask is None or not LEAST_SHARE <= float(mask.mean()) <= MOST_SHARE:
        return None
    # A part that is cut off has no whole outline. No mask reaches the outermost pixels themselves.
    if any(rim.any() for rim in (mask[:2], mask[-2:], mask[:, :2], mask[:, -2:])):
        return None
    view = PartView(small, whole, (0.0, 0.0), per_mm)
    rim = evenly(view.to_mm(mask_rim(mask)), 0.25, 0.3)
    points = (on_the_edge(view, rim) * per_mm + 0.5) * factor - 0.5
    return Outline(points, outward_normals(points), np.zeros(len(points)))
