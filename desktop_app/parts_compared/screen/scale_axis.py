"""The axis of a drawing to scale: from where to where, and at which round values it is marked."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Axis:
    """A stretch of values in one unit, with its marks and how many decimals they need."""

    low: float
    high: float
    ticks: tuple[float, ...]
    decimals: int

    def at(self, value: float) -> float:
        """Return where a value lies: 0 at the low end, 1 at the high one; never outside."""
        return min(1.0, max(0.0, (value - self.low) / (self.high - self.low)))


def axis_for(values: Iterable[float], most_ticks: int = 5) -> Axis | None:
    """Return an axis that holds all values with some room beside them; None without any."""
    found = [value for value in values if math.isfinite(value)]
    if not found:
        return None
    low, high = min(found), max(found)
    room = (high - low) * 0.12 or abs(low) * 0.05 or 1.0
    low, high = low - room, high + room
    step = _round_step((high - low) / most_ticks)
    first = math.ceil(low / step)
    count = math.floor(high / step) - first + 1
    marks = ((first + i) * step for i in range(count))
    ticks = tuple(mark for mark in marks if low <= mark <= high)
    return Axis(low, high, ticks, max(0, -math.floor(math.log10(step) + 1e-9)))


def _round_step(least: float) -> float:
    """Return 1, 2 or 5 times a power of ten, not less than `least`."""
    power = 10.0 ** math.floor(math.log10(least))
    return next(power * times for times in (1, 2, 5, 10) if power * times >= least * 0.999999)
