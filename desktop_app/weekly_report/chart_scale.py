"""The scale of a chart: round steps, and where a value stands between them."""

from __future__ import annotations

from collections.abc import Iterable
from math import ceil, floor, log10

from desktop_app.figures_shown import figure

MOST_STEPS = 5


def round_ticks(values: Iterable[float]) -> tuple[float, ...]:
    """Return ticks from 0 to at least the highest value, in steps of 1, 2 or 5 times a ten.

    Values below 0 count as 0.
    """
    high = max((value for value in values), default=0.0)
    if high <= 0:
        return (0.0, 1.0)
    rough = high / MOST_STEPS
    ten = 10 ** floor(log10(rough))
    step = next(times * ten for times in (1, 2, 5, 10) if times * ten >= rough * (1 - 1e-9))
    count = ceil(high / step - 1e-9)
    return tuple(round(step * i, 12) for i in range(count + 1))


def tick_words(tick: float, *, share: bool) -> str:
    """Return a tick as it is read: "5%" for a share, else the number with no needless digits."""
    if share:
        return figure(tick * 100, ".10g") + "%"
    return figure(tick, ",.10g")
