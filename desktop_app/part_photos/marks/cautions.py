"""What to say beside a size that can't be relied upon as it stands."""

from __future__ import annotations

import math

from desktop_app.language import tr
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import CLICK_U_PX
from desktop_app.part_photos.mark_words import matters_unsaid
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.mark_shape import MarkShape
from desktop_app.part_photos.marks.sizes import lines_angle

LEAST_MM = 2.0  # by trials, a photo tells no gap of 1 mm to within a third of it
LEAST_LEG_MM = 20.0  # by trials, legs of 4 to 8 mm leave 4 degrees open
LEAST_TIMES_U = 3.0


def cautions(mark: Mark, scale: PlaneScale, shape: MarkShape, expanded: float) -> tuple[str, ...]:
    """Return plain sentences about one size and its expanded uncertainty, in the size's unit."""
    said = [
        height_unsaid(mark, scale),
        _too_small(shape, expanded),
        _short_legs(shape),
        _not_parallel(mark, shape, expanded),
        _not_round(shape, scale, mark),
        _height_of_no_use(mark, scale),
    ]
    return tuple(sentence for sentence in said if sentence)


def height_unsaid(mark: Mark, scale: PlaneScale) -> str:
    """Return what comes of a height that nobody said, where that matters; else ""."""
    if not matters_unsaid(mark, scale) or scale.distance_mm is None:
        return ""
    return tr(
        "Its height above the card is not said: the size and its ± hold only for what "
        "lies on the card itself. Each millimetre higher makes it about {percent:.2f} % "
        "too large.",
        percent=100 / scale.distance_mm,
    )


def _too_small(shape: MarkShape, expanded: float) -> str:
    value = abs(shape.value)
    if shape.unit != "mm" or (value >= LEAST_MM and value >= LEAST_TIMES_U * expanded):
        return ""
    return tr("Too small for this photo: use a feeler gauge or a calliper, or take a close-up.")


def _short_legs(shape: MarkShape) -> str:
    if shape.unit != "deg":
        return ""
    shortest = min(math.dist(shape.points[1], shape.points[n]) for n in (0, 2))
    if shortest >= LEAST_LEG_MM:
        return ""
    return tr(
        "A leg is only {length:.0f} mm long, so pointing tells much: mark points "
        "{least_leg_mm:g} mm from the corner or more.",
        length=shortest,
        least_leg_mm=LEAST_LEG_MM,
    )


def _not_parallel(mark: Mark, shape: MarkShape, expanded: float) -> str:
    """Lines whose distance differs over their length by more than the doubt about it."""
    if mark.type not in ("parallel-distance", "round-bar"):
        return ""
    askew = lines_angle(shape.points)
    longest = max(math.dist(shape.points[n], shape.points[n + 1]) for n in (0, 2))
    if longest * math.tan(math.radians(min(askew, 89.0))) <= 2 * expanded:
        return ""
    return tr(
        "The two lines are not parallel ({askew:.1f}° askew): the size holds in their middle.",
        askew=askew,
    )


def _not_round(shape: MarkShape, scale: PlaneScale, mark: Mark) -> str:
    """Points that scatter about the rim by far more than pointing explains."""
    import numpy as np

    if shape.off_rim_mm is None:
        return ""
    across = scale.to_pixels(shape.points + np.array([[1.0, 0.0]]), mark.height_mm)
    px_per_mm = np.hypot(*(across - scale.to_pixels(shape.points, mark.height_mm)).T)
    pointing = CLICK_U_PX / float(np.median(px_per_mm))
    if shape.off_rim_mm <= 3 * pointing:
        return ""
    return tr(
        "The points lie up to some {off:.1f} mm off a circle: see that all are on one "
        "rim and at the entered height.",
        off=2 * shape.off_rim_mm,
    )


def _height_of_no_use(mark: Mark, scale: PlaneScale) -> str:
    if scale.source != "points" or (mark.height_mm == 0 and mark.height_u_mm == 0):
        return ""
    return tr(
        "The height of {height_mm:g} mm can't be allowed for: two points as a scale "
        "hold only in the plane they lie in.",
        height_mm=mark.height_mm,
    )
