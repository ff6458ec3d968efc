"""When an alignment is to be believed, and the sentence that says why not."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.outline_fit import OutlineFit

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

CLICK_TWO = tr("click two points that are the same on both parts, on the photo bench.")
SAY_HEIGHT = tr("First say how high the part's outline lies above the card, in mm, and try again.")

LEAST_INLIERS = 0.6
LEAST_OVERLAP = 0.7
MOST_RIVAL = 0.8
CLEARLY_OFF = 0.03  # share of the outline that a wrong turn must leave far off
WHOLE = 0.95  # so many inliers leave no doubt where the wrong turn leaves a shape over
WHOLE_OVERLAP = 0.93
ELSEWHERE = 0.25  # share that a wrong turn must leave far off where the right one leaves some too
MOST_OF_IT = (0.9, 0.84)  # inliers, overlap
SURE_MM, LOOSE_MM = 0.05, 0.08  # standard uncertainties of the shift
MOST_EDGES_OFF_MM = 0.4
# What an outline must show where the edges inside say nothing.
ALONE = (0.8, 0.85)  # inliers, overlap


def outline_trouble(
    fit: OutlineFit, edges_off_mm: float | None = None, edges_seen: bool = False
) -> str:
    """Return why a fit of outlines can't be trusted, "" where it can.

    Of 52 drawn pairs of two different parts these bounds let none through. Of 40 pairs of one part,
    photographed at up to 25 degrees with a height wrong by up to 1 mm, they let 36 through, 0.08 mm
    off in the median and 0.43 mm at most (in another 25 one lay 0.56 mm off); of dark parts up to
    15 mm high with hard shadows, at up to 30 degrees from any side, somewhat more than half.
    """
    if fits_badly(fit):
        return tr(
            "The two outlines don't fit each other: these may be two different parts, "
            "or one is not cut out well. If they are the same kind of part, {click_two}",
            click_two=CLICK_TWO,
        )
    told_apart = fit.inliers >= WHOLE and fit.rival_off >= CLEARLY_OFF
    # Walls hide much of what a wrong turn leaves far off from the inliers, not from all points.
    told_apart |= fit.overlap >= WHOLE_OVERLAP and fit.rival_off >= fit.far_off + ELSEWHERE
    if fit.rival > MOST_RIVAL and not told_apart:
        return tr(
            "The outline is round or looks the same in several turns, so nothing tells "
            "how the part is turned. To align them, {click_two}",
            click_two=CLICK_TWO,
        )
    if is_loose(fit):
        return tr(
            "Too little of the outline can be compared: walls or shadows hide the "
            "rest. Take both photos from above, or {click_two}",
            click_two=CLICK_TWO,
        )
    if not edges_seen:
        return ""
    if edges_off_mm is None:
        if fit.inliers >= ALONE[0] and fit.overlap >= ALONE[1]:
            return ""
        return tr(
            "The outlines fit only roughly and no edge confirms them. To align, {click_two}",
            click_two=CLICK_TWO,
        )
    if edges_disagree(fit, edges_off_mm):
        return tr(
            "Outline and edges disagree by {edges_off_mm:.1f} mm about where the new "
            "part lies. To align them, {click_two}",
            edges_off_mm=edges_off_mm,
            click_two=CLICK_TWO,
        )
    return ""


def fits_badly(fit: OutlineFit) -> bool:
    """Whether the outlines are too unlike for any use."""
    return fit.inliers < LEAST_INLIERS or fit.overlap < LEAST_OVERLAP


def edges_disagree(fit: OutlineFit, edges_off_mm: float | None) -> bool:
    """Whether edges put the new part elsewhere, and the outline isn't the better witness.

    Edges may be drawn aside by walls and shadows; most of an outline is not.
    """
    if edges_off_mm is None or edges_off_mm < MOST_EDGES_OFF_MM:
        return False
    inliers, overlap = MOST_OF_IT
    return fit.inliers < inliers or fit.overlap < overlap or fit.shift_u > SURE_MM


def is_loose(fit: OutlineFit) -> bool:
    """Whether what can be compared leaves open where exactly the part lies; for fits in mm."""
    return fit.shift_u > LOOSE_MM


def click_trouble(
    points: NDArray[np.float64], onto: NDArray[np.float64], left: NDArray[np.float64], unit: str
) -> str:
    """Return why clicked points, (n, 2) each, can't be common ones, "" where they can.

    With "mm" nothing stretches, so the points must lie equally far apart on both parts. `left`
    (n,) is how far apart the pairs stay.
    """
    import numpy as np

    spans = [float(np.hypot(*np.ptp(one, axis=0))) for one in (points, onto)]
    if min(spans) < (3.0 if unit == "mm" else 8.0):
        return tr("The clicked points lie too close together. Click points far apart on the part.")
    if unit == "mm" and abs(spans[0] - spans[1]) > max(2.5, 0.08 * max(spans)):
        return tr(
            "The clicked points lie {old:.1f} mm apart on the old part and "
            "{new:.1f} mm on the new one. Click the same points on both.",
            old=spans[1],
            new=spans[0],
        )
    if float(left.max()) > max(2.5 if unit == "mm" else 12.0, 0.08 * max(spans)):
        return tr("One of the clicked points fits the others badly. Click the same points on both.")
    return ""
