"""How far one reading, or the difference of two, may be off with an instrument."""

from __future__ import annotations

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.uncertainty import (
    difference_estimate,
    side_estimate,
    side_reading,
)


def one_reading(instrument: Instrument) -> float:
    """Return the expanded uncertainty of a single reading, in the instrument's unit."""
    return side_estimate(side_reading([0.0], instrument)).expanded()


def two_readings(instrument: Instrument) -> float:
    """Return the expanded uncertainty of a difference of two single readings.

    Both are taken with this one instrument, so that its permitted error cancels
    (JCGM 100:2008, 5.2.2).
    """
    side = side_reading([0.0], instrument)
    return difference_estimate(side, side).expanded()
