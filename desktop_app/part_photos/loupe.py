"""Where the loupe stands over a photo: how much it enlarges, and which point is in its middle."""

from __future__ import annotations

from dataclasses import dataclass, replace

MOST_ZOOM = 40.0


@dataclass(frozen=True, slots=True)
class Loupe:
    """`zoom` 1 shows the whole photo; `x`, `y` is the middle, in fractions of its width, height."""

    zoom: float = 1.0
    x: float = 0.5
    y: float = 0.5


@dataclass(frozen=True, slots=True)
class Fitting:
    """How large the whole photo is when it fits, and the stage it lies on, in screen pixels."""

    width: float
    height: float
    stage_width: float
    stage_height: float


def fitting(width: int, height: int, stage_width: int, stage_height: int) -> Fitting:
    """Fit a photo of so many pixels into a stage of so many screen pixels."""
    scale = min(stage_width / width, stage_height / height)
    return Fitting(width * scale, height * scale, stage_width, stage_height)


def zoomed(loupe: Loupe, factor: float, across: float, down: float, fit: Fitting) -> Loupe:
    """Enlarge by a factor; the spot `across`, `down` screen pixels off the middle stays put."""
    zoom = loupe.zoom * factor
    shift = 1 / loupe.zoom - 1 / zoom
    return Loupe(
        zoom,
        loupe.x + across / fit.width * shift,
        loupe.y + down / fit.height * shift,
    )


def moved(loupe: Loupe, right: float, down: float, fit: Fitting) -> Loupe:
    """Push the photo so many screen pixels to the right and down."""
    return replace(
        loupe,
        x=loupe.x - right / (fit.width * loupe.zoom),
        y=loupe.y - down / (fit.height * loupe.zoom),
    )


def allowed_factor(loupe: Loupe, factor: float) -> float:
    """Return the part of a zoom factor that stays between the whole photo and MOST_ZOOM."""
    return min(max(loupe.zoom * factor, 1.0), max(MOST_ZOOM, loupe.zoom)) / loupe.zoom


def kept_inside(loupe: Loupe, fit: Fitting) -> Loupe:
    """Put the middle where no stage is left empty that the photo could fill."""
    return replace(
        loupe,
        x=_inside(loupe.x, fit.width * loupe.zoom, fit.stage_width),
        y=_inside(loupe.y, fit.height * loupe.zoom, fit.stage_height),
    )


def push_between(before: Loupe, after: Loupe, fit: Fitting) -> tuple[float, float]:
    """Return by how many screen pixels right and down the photo was pushed at one zoom."""
    return (
        (before.x - after.x) * fit.width * after.zoom,
        (before.y - after.y) * fit.height * after.zoom,
    )


def _inside(middle: float, shown: float, stage: float) -> float:
    room = max(0.0, 0.5 - stage / (2 * shown))
    return min(max(middle, 0.5 - room), 0.5 + room)
