"""Of several readings of one part, the one that lies far off the others: a slip, probably."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.parts_compared.shown_value import amount, number

#: A decimal point that was lost or moved makes ten of one; readings that differ by half of it are
#: told by their scatter (common practice, no source).
FAR = 8.0
ALIKE = 2.0  # the largest by the smallest of readings that agree
#: Play and run-out scatter by as much as they are: in mm less than this apart is no slip (common
#: practice, no source).
LEAST_MM = 0.3
_INCH, _NEAR = 25.4, 0.15


class Off(NamedTuple):
    """A reading, and the smallest and the largest of the others."""

    value: float
    low: float
    high: float


def reading_off(values: Sequence[float], unit: str) -> Off | None:
    """Return the one reading that is far off all others, which agree; None where there is none.

    A length of 0 beside others that agree is one too; in another unit 0 may be right.
    """
    if len(values) < 3 or min(values) < 0:
        return None
    ordered = sorted(values)
    for off, others in ((ordered[-1], ordered[:-1]), (ordered[0], ordered[1:])):
        low, high = others[0], others[-1]
        if low > 0 and high <= ALIKE * low and _far(min(off, low), max(off, high), unit):
            return Off(off, low, high)
    return None


def two_apart(values: Sequence[float], unit: str) -> bool:
    """Tell whether two readings lie so far apart that one of them must be off."""
    return len(values) == 2 and min(values) >= 0 and _far(min(values), max(values), unit)


def _far(small: float, large: float, unit: str) -> bool:
    apart = large - small >= LEAST_MM if unit == "mm" else small > 0
    return apart and large >= FAR * small


def off_question(off: Off, unit: str) -> str:
    """Return what is asked about the reading that is off."""
    high = amount(off.high, unit)
    others = high if off.low == off.high else tr("{low} to {high}", low=number(off.low), high=high)
    inches = unit == "mm" and off.value > 0 and abs(math.log(off.value * _INCH / off.low)) < _NEAR
    if inches:
        return tr(
            "One reading is {off}, the others are {others}. Was it read in inches?",
            off=amount(off.value, unit),
            others=others,
        )
    return tr(
        "One reading is {off}, the others are {others}. Is it a slip?",
        off=amount(off.value, unit),
        others=others,
    )


def apart_question(values: Sequence[float], unit: str) -> str:
    """Return what is asked about two readings of which one must be off."""
    return tr(
        "{low} and {high} are readings of one part. Is one of them a slip?",
        low=amount(min(values), unit),
        high=amount(max(values), unit),
    )
