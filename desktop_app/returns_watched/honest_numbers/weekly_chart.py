"""The rate week by week: which week lies beyond luck, and whether a slow rise has begun."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isnan, nan, sqrt

SIGMAS = 3.0
# A rise of one standard deviation is looked for: D. C. Montgomery, Introduction to Statistical
# Quality Control, chapter 9 (k = 1/2, h = 5; from memory).
ALLOWANCE, DECISION = 0.5, 5.0
_ROUNDING = 1e-12  # a point on its limit is not beyond it


@dataclass(frozen=True, slots=True)
class WeeklyChart:
    """Rates by week with limits that follow each week's number of jobs.

    A week without jobs has no rate and no limits (not a number). `beyond` are the places of the
    weeks that lie outside.
    """

    centre: float
    rates: tuple[float, ...]
    low: tuple[float, ...]
    high: tuple[float, ...]
    beyond: tuple[int, ...]


def p_chart(counts: Sequence[int], sizes: Sequence[float]) -> WeeklyChart:
    """Return the chart of shares: `counts` of `sizes` jobs came back in each week.

    Limits: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2, within 0 and 1. ValueError
    for columns of different lengths, or a count outside 0 to its size.
    """
    if any(count > size for count, size in zip(counts, sizes, strict=True)):
        raise ValueError("More came back in a week than there were jobs")
    centre = _centre(counts, sizes)
    return _chart(counts, sizes, centre, centre * (1 - centre), 1.0)


def u_chart(counts: Sequence[int], sizes: Sequence[float]) -> WeeklyChart:
    """Return the chart of returns per job, where one job can come back several times.

    Limits: centre +- 3 sqrt(centre / size), NIST/SEMATECH e-Handbook, 6.3.3.1. ValueError for
    columns of different lengths, or a count or size below 0.
    """
    centre = _centre(counts, sizes)
    return _chart(counts, sizes, centre, centre, None)


@dataclass(frozen=True, slots=True)
class Cusum:
    """Running sums of what lies above (`rise`) and below (`fall`) the usual, by week.

    `first_signal` is the first week in which one of them exceeds the decision limit, `began` the
    week in which that sum last left 0; places from 0, None where there is no signal.
    """

    rise: tuple[float, ...]
    fall: tuple[float, ...]
    first_signal: int | None
    began: int | None


def cusum(values: Sequence[float], target: float, allowance: float, decision: float) -> Cusum:
    """Return the tabular cusum of values against a target, all in the unit of the values.

    E. S. Page, Biometrika 41 (1954) 100-115; NIST/SEMATECH e-Handbook, 6.3.2.3. A value that is
    not a number changes nothing.
    """
    rise, fall = [0.0], [0.0]
    for value in values:
        off = allowance if isnan(value) else value - target
        rise.append(rise[-1] if isnan(value) else max(0.0, rise[-1] + off - allowance))
        fall.append(fall[-1] if isnan(value) else max(0.0, fall[-1] - off - allowance))
    signals = [i for i in range(1, len(rise)) if max(rise[i], fall[i]) > decision]
    first = signals[0] if signals else None
    began = None
    if first is not None:
        sums = rise if rise[first] > decision else fall
        began = max(i for i in range(first) if sums[i] == 0)
    return Cusum(tuple(rise[1:]), tuple(fall[1:]), None if first is None else first - 1, began)


def slow_rise(counts: Sequence[int], sizes: Sequence[float], usual: float) -> Cusum:
    """Return the cusum of weekly shares against the usual share, each in its own sigmas.

    ValueError where the usual share does not lie between 0 and 1.
    """
    if not 0 < usual < 1:
        raise ValueError(f"{usual} is not a share that can be exceeded")
    sigma = sqrt(usual * (1 - usual))
    off = [
        (count / size - usual) * sqrt(size) / sigma if size else nan
        for count, size in zip(counts, sizes, strict=True)
    ]
    return cusum(off, 0.0, ALLOWANCE, DECISION)


def _centre(counts: Sequence[int], sizes: Sequence[float]) -> float:
    if any(count < 0 or size < 0 for count, size in zip(counts, sizes, strict=True)):
        raise ValueError("A count or a number of jobs is below 0")
    return sum(counts) / sum(sizes) if sum(sizes) else nan


def _chart(
    counts: Sequence[int],
    sizes: Sequence[float],
    centre: float,
    variance: float,
    most: float | None,
) -> WeeklyChart:
    rates: list[float] = []
    low: list[float] = []
    high: list[float] = []
    beyond: list[int] = []
    for week, (count, size) in enumerate(zip(counts, sizes, strict=True)):
        if not size:
            for column in (rates, low, high):
                column.append(nan)
            continue
        half = SIGMAS * sqrt(variance / size)
        rates.append(count / size)
        low.append(max(0.0, centre - half))
        high.append(centre + half if most is None else min(most, centre + half))
        slack = _ROUNDING * max(1.0, high[-1])
        if not low[-1] - slack <= rates[-1] <= high[-1] + slack:
            beyond.append(week)
    return WeeklyChart(centre, tuple(rates), tuple(low), tuple(high), tuple(beyond))
