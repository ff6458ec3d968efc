"""Few comebacks a week: which week lies beyond luck, and whether they have become twice as many.

A u chart (returns per job, with limits for uneven numbers of jobs) and the usual cusum take counts
for nearly normal. A shop has one comeback a week or none; there both cry wolf. Here the counts are
taken as the Poisson counts they are.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate
from math import exp, inf, log

# As seldom as beyond three standard deviations of a normal variable, on one side.
TAIL = 0.00135
RATIO = 2.0  # the rise that is looked for
# Where the evidence counts. By simulation luck alone gets there once in five years or more, with
# 0.6 to 6 comebacks a week.
DECISION = 4.0


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
    if not 0 <= expected < inf or not 0 < tail < 0.5:
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
    """The evidence, week by week, that comebacks have doubled since some week before it.

    `since` is for each week the one from which comebacks look doubled most, itself where there is
    no evidence; places from 0.
    """

    evidence: tuple[float, ...]
    since: tuple[int, ...]
    decision: float = DECISION

    @property
    def signals(self) -> tuple[int, ...]:
        """The weeks in which the evidence exceeds the decision limit."""
        return tuple(i for i, one in enumerate(self.evidence) if one > self.decision)


def doubled(counts: Sequence[int], watched: Sequence[float], ratio: float = RATIO) -> Doubled:
    """Return the cusum of the likelihood ratio of a rise by `ratio`, the usual level unknown.

    `watched` (n,) are the jobs that could have come back in each week. Page's cusum is the
    greatest log likelihood ratio of "risen since week b" over all b (E. S. Page, Biometrika 41
    (1954) 100-115). The level is not known, so that each ratio is the one given all counts so
    far: of N, k fall into the run since b with a chance of run / all by luck, and of
    ratio x run / (before + ratio x run) after the rise (J. Przyborowski and H. Wilenski,
    Biometrika 31 (1940) 313-323). The weeks of the rise never count as usual ones. ValueError for
    columns of different lengths, a count or number of jobs below 0, or a ratio not above 1.
    """
    if ratio <= 1 or any(n < 0 or not 0 <= w < inf for n, w in zip(counts, watched, strict=True)):
        raise ValueError("A count or a number of jobs is below 0, or the ratio is not above 1")
    seen = [0, *accumulate(counts)]
    jobs = [0.0, *accumulate(watched)]
    evidence: list[float] = []
    since: list[int] = []
    for week in range(len(counts)):
        runs = (
            (_evidence(seen, jobs, begun, week + 1, ratio), -begun) for begun in range(1, week + 1)
        )
        best, begun = max(runs, default=(0.0, 0))
        evidence.append(max(0.0, best))
        since.append(-begun if best > 0 else week)
    return Doubled(tuple(evidence), tuple(since))


def _evidence(
    seen: Sequence[int], jobs: Sequence[float], begun: int, until: int, ratio: float
) -> float:
    before, run = jobs[begun], jobs[until] - jobs[begun]
    if not before:
        return 0.0
    stretched = (before + ratio * run) / (before + run)
    return (seen[until] - seen[begun]) * log(ratio) - seen[until] * log(stretched)
