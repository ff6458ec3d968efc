"""What gives a photo its millimetres, said in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.typed_length import MM_PER_INCH

if TYPE_CHECKING:
    from desktop_app.part_photos.camera.plane_scale import PlaneScale


def said_of_scale(scale: PlaneScale, length_unit: str = "mm") -> str:
    """Return "Card seen: 22 markers, tilt 12°, 310 mm away." and what a card's fit warns of."""
    if scale.source == "points":
        return tr("Two points of known length: it holds only in their plane, seen from above.")
    seen = len(getattr(scale, "markers_seen", ()))
    parts = [tr("Card seen: {seen} markers", seen=seen) if seen else tr("Card seen")]
    if scale.tilt_deg is not None:
        parts.append(tr("tilt {tilt_deg:.0f}°", tilt_deg=scale.tilt_deg))
    if scale.distance_mm is not None:
        inch = length_unit == "inch"
        away = (
            f"{figure(scale.distance_mm / MM_PER_INCH, '.1f')} in"
            if inch
            else f"{figure(scale.distance_mm, '.0f')} mm"
        )
        parts.append(tr("{away} away", away=away))
    return " ".join([", ".join(parts) + ".", *scale.warnings])
