"""Miles and kilometres, inches and millimetres: exact by definition."""

from __future__ import annotations

from typing import Literal

from desktop_app.figures_shown import figure
from desktop_app.language import tr

# The international yard and pound agreement of 1959 (NIST SP 811, Appendix B).
KM_PER_MILE = 1.609344
MM_PER_INCH = 25.4

DistanceUnit = Literal["mi", "km"]


def to_miles(distance: float, unit: DistanceUnit) -> float:
    """Return a distance in miles; a distance in miles comes back untouched."""
    return distance if unit == "mi" else distance / KM_PER_MILE


def from_miles(miles: float, unit: DistanceUnit) -> float:
    """Return miles in the unit asked for."""
    return miles if unit == "mi" else miles * KM_PER_MILE


def unit_words(unit: str) -> str:
    """Return the unit of a vehicle's odometer for people: "miles" or "km"."""
    return tr("km") if unit == "km" else tr("miles")


def mm_to_inch(millimetres: float) -> float:
    """Return a length in inches."""
    return millimetres / MM_PER_INCH


def distance_in_words(distance: float, unit: DistanceUnit) -> str:
    """Return a distance for people, rounded to whole units: "3,180 mi"."""
    return f"{figure(distance, ',.0f')} {unit}"
