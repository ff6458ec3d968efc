"""Alignment of two photos that both show a card: in millimetres, with nothing stretched."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.alignment import (
    NEW,
    OLD,
    Alignment,
    LaidOutlines,
    Method,
    cannot,
)
from desktop_app.part_photos.overlay.edges_agree import edges_off_mm
from desktop_app.part_photos.overlay.height_doubt import HeightDoubt, said_height, unsaid_height
from desktop_app.part_photos.overlay.outline_doubt import outline_doubt, untold_doubt
from desktop_app.part_photos.overlay.outline_fit import OutlineFit, fit_outlines
from desktop_app.part_photos.overlay.part_seen import PartSeen, mm_per_px, part_seen
from desktop_app.part_photos.overlay.part_view import Rect
from desktop_app.part_photos.overlay.plane_move import PlaneMove, about, best_move
from desktop_app.part_photos.overlay.trust import (
    CLICK_TWO,
    click_trouble,
    edges_disagree,
    fits_badly,
    is_loose,
    outline_trouble,
)
from desktop_app.part_photos.photo_cannot import PhotoCannot

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.photo_pixels import PhotoPixels

WITHIN_MM = 0.5
CLICK_REACH_MM = 1.2  # a click is hardly farther off than this
MOST_WALL_MM = 5.0
ROUND_CLICKS_MM = 15.0
LEAST_KNOWN = 4  # points that make a homography
TURNED_RAD = 0.02  # about a degree: an outline that holds the turn comes back from it
_BEYOND = tr(
    "One of the clicked points lies too far from the card: nobody knows how the camera "
    "sees there. Click points of the part, nearer to the card."
)


@dataclass(frozen=True, slots=True, eq=False)
class OnCard:
    """One photo, its scale from a card, and where on the card the part may lie."""

    pixels: PhotoPixels
    scale: PlaneScale
    field: Rect

    def part(self, height_mm: float, which: str) -> PartSeen:
        """Find the part; raises PhotoCannot."""
        return part_seen(self.pixels, self.scale, self.field, height_mm, which)


def by_outline(old: OnCard, new: OnCard, height_mm: float | None) -> Alignment:
    """Align by the part's outline alone; what can't be trusted comes back as not aligned.

    Where nobody said a height (None), the outline is looked at in the card's own plane.
    """
    plane = height_mm or 0.0
    try:
        old_part, new_part = old.part(plane, OLD), new.part(plane, NEW)
    except PhotoCannot as trouble:
        return cannot(trouble.sentence())
    fit = fit_outlines(old_part.outline, new_part.outline, WITHIN_MM)
    if _walls_differ(old_part, new_part, plane, fit):
        return cannot(
            tr(
                "The part stands high and was taken from two sides, so the photos show "
                "other walls of it. Take both from the same side, or {click_two}",
                click_two=CLICK_TWO,
            )
        )
    if fit is None:
        return cannot(
            tr(
                "Too little of the outline shows in both photos. To align them, {click_two}",
                click_two=CLICK_TWO,
            )
        )
    why = outline_trouble(fit)
    if why:
        return cannot(why)
    off = edges_off_mm(old_part.view, new_part.view, old_part.outline, fit.move)
    why = outline_trouble(fit, off, edges_seen=True)
    if why:
        return cannot(why)
    return _laid(old, new, old_part, new_part, fit, height_mm, "card and outline")


def by_clicks(
    old: OnCard,
    new: OnCard,
    height_mm: float | None,
    old_px: NDArray[np.float64],
    new_px: NDArray[np.float64],
) -> Alignment:
    """Align by common points, (n, 2) each, and then by the outline where that agrees with them."""
    import numpy as np

    plane = height_mm or 0.0
    onto = old.scale.on_plane(old_px, plane)
    points = new.scale.on_plane(new_px, plane)
    if not (np.isfinite(onto).all() and np.isfinite(points).all()):
        return cannot(_BEYOND)
    move = best_move(points, onto)
    left = np.hypot(*(move(points) - onto).T)
    why = click_trouble(points, onto, left, "mm")
    if why:
        return cannot(why)
    rms = float(np.sqrt((left**2).mean()))
    try:
        old_part, new_part = old.part(plane, OLD), new.part(plane, NEW)
    except PhotoCannot:
        return _clicked(old, new, move, points, rms, height_mm)
    fit = _near_clicks(old_part, new_part, move)
    if fit is None or _apart(fit.move, move, points) > 2 * CLICK_REACH_MM:
        return _clicked(old, new, move, points, rms, height_mm)
    off = edges_off_mm(old_part.view, new_part.view, old_part.outline, fit.move)
    if fits_badly(fit) or is_loose(fit) or edges_disagree(fit, off):
        return _clicked(old, new, move, points, rms, height_mm)
    method: Method = "card, two clicks and outline"
    return _laid(old, new, old_part, new_part, fit, height_mm, method)


def _near_clicks(old: PartSeen, new: PartSeen, move: PlaneMove) -> OutlineFit | None:
    """Fit the outlines near the clicks; a round part leaves the turn to the clicks."""
    middle = new.outline.middle()
    onto = move(middle[None])[0]
    found = []
    for turn in (-TURNED_RAD, TURNED_RAD):
        start = about(move.turn + turn, middle, onto)
        few = new.outline.thinned(300)
        found.append(fit_outlines(old.outline, few, WITHIN_MM, start, reach=CLICK_REACH_MM))
    first, second = found
    if first is None or second is None:
        return None
    settled = abs(first.move.turn - second.move.turn) < TURNED_RAD / 2
    return fit_outlines(
        *(old.outline, new.outline, WITHIN_MM, move),
        reach=CLICK_REACH_MM,
        turning=settled,
    )


def _apart(one: PlaneMove, other: PlaneMove, points: NDArray[np.float64]) -> float:
    import numpy as np

    return float(np.hypot(*(one(points) - other(points)).T).max())


def _walls_differ(old: PartSeen, new: PartSeen, height_mm: float, fit: OutlineFit | None) -> bool:
    """Whether walls as high as the outline look out differently by more than 5 mm.

    Each looks out in the direction of the point below its camera. Without a fit nothing tells how
    the new part is turned, and the lengths alone are compared.
    """
    import numpy as np

    first, second = (
        (one.outline.middle() - one.eye_mm[:2]) / (one.eye_mm[2] - height_mm) * height_mm
        for one in (old, new)
    )
    if fit is None:
        return float(abs(np.hypot(*first) - np.hypot(*second))) > MOST_WALL_MM
    return float(np.hypot(*(first - fit.move.turned(second[None])[0]))) > MOST_WALL_MM


def _laid(
    old: OnCard,
    new: OnCard,
    old_part: PartSeen,
    new_part: PartSeen,
    fit: OutlineFit,
    height_mm: float | None,
    method: Method,
) -> Alignment:
    import numpy as np

    height = (
        unsaid_height((old_part.outline, new_part.outline))
        if height_mm is None
        else said_height(height_mm)
    )
    plane = height.height_mm
    moved = fit.move(new_part.outline.points)
    transform, lens_px = _homography(old, new, fit.move, new_part.outline.points, plane)
    outlines = LaidOutlines(
        old.scale.to_pixels(old_part.outline.points, plane),
        old.scale.to_pixels(moved, plane),
        old_part.outline.points,
        moved,
        *outline_doubt(old_part, new_part, fit, old.scale, new.scale, height),
        *untold_doubt(old_part, new_part, fit),
    )
    per_px = old_part.mm_per_px
    residual_mm = float(np.hypot(fit.rms, lens_px * per_px))
    by = (
        tr("Laid on each other by the card, two clicks and the part's outline.")
        if "clicks" in method
        else tr("Laid on each other by the card and the part's outline.")
    )
    along = tr(
        "Along {inliers:.0%} of what can be compared the two outlines run together, "
        "there {residual_mm:.2f} mm apart on the average.",
        inliers=fit.inliers,
        residual_mm=residual_mm,
    )
    return Alignment(
        aligned=True,
        why=f"{by} {along}",
        method=method,
        transform=transform,
        residual_px=float(np.hypot(fit.rms / per_px, lens_px)),
        residual_mm=residual_mm,
        height_mm=height_mm,
        px_per_mm=1 / per_px,
        outlines=outlines,
        highest_mm=height.highest_mm,
        size_u=_size_u(old, new, old_part, new_part, height),
    )


def _size_u(
    old: OnCard, new: OnCard, old_part: PartSeen, new_part: PartSeen, height: HeightDoubt
) -> float:
    """Return the share by which a length across both outlines may be wrong, expanded."""
    import math

    eye = min(float(one.eye_mm[2]) for one in (old_part, new_part))
    prints = 1.96 * max(one.scale.print_u for one in (old, new))
    return math.hypot(prints, height.share(eye))


def _clicked(
    old: OnCard,
    new: OnCard,
    move: PlaneMove,
    points: NDArray[np.float64],
    rms: float,
    height_mm: float | None,
) -> Alignment:
    import numpy as np

    plane = height_mm or 0.0
    low, high = points.min(axis=0) - ROUND_CLICKS_MM, points.max(axis=0) + ROUND_CLICKS_MM
    grid = np.stack(np.meshgrid(*np.linspace(low, high, 8).T), axis=-1).reshape(-1, 2)
    transform, lens_px = _homography(old, new, move, grid, plane)
    per_px = mm_per_px(old.scale, move(points).mean(axis=0), plane)
    residual_mm = float(np.hypot(rms, lens_px * per_px))
    why = tr(
        "Laid on each other by the card and the clicked points, which lie "
        "{residual_mm:.2f} mm apart on the average; the outline did not help.",
        residual_mm=residual_mm,
    )
    if height_mm is None:
        why += " " + tr("How high the points lie is not known: they were taken to lie on the card.")
    return Alignment(
        aligned=True,
        why=why,
        method="card and two clicks",
        transform=transform,
        residual_px=float(np.hypot(rms / per_px, lens_px)),
        residual_mm=residual_mm,
        height_mm=height_mm,
        px_per_mm=1 / per_px,
    )


def _homography(
    old: OnCard,
    new: OnCard,
    move: PlaneMove,
    points_mm: NDArray[np.float64],
    height_mm: float,
) -> tuple[NDArray[np.float64], float]:
    """Return new px -> old px on the part's plane, and what it leaves of both lenses, px rms.

    Raises PhotoCannot where the cameras are not known well enough for one.
    """
    import cv2
    import numpy as np

    low, high = points_mm.min(axis=0), points_mm.max(axis=0)
    grid = np.stack(np.meshgrid(*np.linspace(low, high, 8).T), axis=-1).reshape(-1, 2)
    points = np.vstack([grid, points_mm[:: max(1, len(points_mm) // 200)]])
    seen = new.scale.to_pixels(points, height_mm)
    onto = old.scale.to_pixels(move(points), height_mm)
    known = np.isfinite(seen).all(1) & np.isfinite(onto).all(1)
    seen, onto = seen[known], onto[known]
    found = cv2.findHomography(seen, onto, 0)[0] if len(seen) >= LEAST_KNOWN else None
    if found is None or not np.isfinite(found).all():
        raise PhotoCannot(
            tr("The part lies where the cameras are not known."),
            do=tr("Take both photos with the part in the card's free field."),
        )
    transform = np.asarray(found, np.float64)
    laid = cv2.perspectiveTransform(seen[:, None], transform)[:, 0]
    return transform, float(np.sqrt(((laid - onto) ** 2).sum(axis=1).mean()))
