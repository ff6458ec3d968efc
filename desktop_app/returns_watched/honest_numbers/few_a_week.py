"""Few comebacks a week: which week lies beyond luck, and whether they have become twice as many.

The limits of a u chart and the usual cusum take counts for nearly normal. A shop has one comeback
a week or none; there both cry wolf. Here the counts are taken as the Poisson counts they are.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log

# As seldom as beyond three standard deviations of a normal variable, on one side.
TAIL = 0.00135
RATIO = 2.0  # the rise that is looked for
WEEKS_BETWEEN_FALSE_ALARMS = 260


@dataclass(frozen=True, slots=True)
class CountLimits:
    """The fewest and the most that luck makes of an expected count."""

    low: int
    high: int


def count_limits(expected: float, tail: float = TAIL) -> CountLimits:
    """Return the counts beyond which a Poisson count of that mean falls with less than `tail`.

    Exact probability limits in place of three sigmas: D. C. Montgomery, Introduction to
    Statistical Quality Control, chapter 7 (from memory). ValueError for a mean below 0.
    """
    if not 0 <= expected < float("inf") or not 0 < tail < 0.5:
        raise ValueError(f"{expected} is not a mean count, or {tail} not a tail")
    probability = reached = exp(-expected)
    low = high = 0
    if reached == 0:  # a mean beyond some 745: the normal limits are exact enough
        half = 3 * expected**0.5
        return CountLimits(int(expected - half), int(expected + half) + 1)
    while reached < 1 - tail:
        if reached <= tail:
            low = high + 1
        high += 1
        probability *= expected / high
        reached += probability
    return CountLimits(low, high)


@dataclass(frozen=True, slots=True)
class Doubled:
    """The running evidence, week by week, that comebacks have doubled.

    `first_signal` is the first week in which it exceeds `decision`, `began` the first week of the
    run that led there; places from 0, None where there is no signal.
    """

    evidence: tuple[float, ...]
    decision: float
    first_signal: int | None
    began: int | None


def doubled(counts: Sequence[int], expected: Sequence[float], ratio: float = RATIO) -> Doubled:
    """Return the cusum of the logarithm of the likelihood ratio of a rise by `ratio`.

    Each week adds count x ln(ratio) - expected x (ratio - 1), and the sum never falls below 0:
    E. S. Page, Biometrika 41 (1954) 100-115. With a decision at ln(w) there are at least w weeks
    on the average between false alarms: G. Lorden, Annals of Mathematical Statistics 42 (1971)
    1897-1908. ValueError for columns of different lengths or a mean below 0.
    """
    if any(not 0 <= mean < float("inf") for mean in expected) or ratio <= 1:
        raise ValueError("An expected count is below 0, or the ratio is not above 1")
    decision = log(WEEKS_BETWEEN_FALSE_ALARMS)
    evidence: list[float] = []
    now, begun, signal = 0.0, 0, None
    start = None
    for week, (count, mean) in enumerate(zip(counts, expected, strict=True)):
        if now == 0:
            begun = week
        now = max(0.0, now + count * log(ratio) - mean * (ratio - 1))
        evidence.append(now)
        if signal is None and now > decision:
            signal, start = week, begun
    return Doubled(tuple(evidence), decision, signal, start)
