"""Uncertainty of a reading and of a difference of two readings, as in the GUM (JCGM 100:2008)."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.photo_doubt import left_between
from desktop_app.parts_compared.scatter_test import refuting_factor
from desktop_app.parts_compared.student_t import t_below, t_factor

COVERAGE = 0.95


@dataclass(frozen=True, slots=True)
class Doubt:
    """A standard uncertainty and its degrees of freedom."""

    u: float
    dof: float = math.inf


@dataclass(frozen=True, slots=True)
class Estimate:
    """A value with its combined standard uncertainty, in one unit."""

    value: float
    u: float
    dof: float = math.inf

    def expanded(self, coverage: float = COVERAGE) -> float:
        """Return the expanded uncertainty (JCGM 100, 6.2 and G.3)."""
        return t_factor(coverage, self.dof) * self.u if self.u > 0 else 0.0

    def below(self, limit: float | None) -> float:
        """Return the probability that the true value is below the limit (None: no limit, 1)."""
        if limit is None:
            return 1.0
        if self.u <= 0:
            return float(self.value < limit)
        return t_below((limit - self.value) / self.u, self.dof)

    def within(self, low: float | None, high: float | None) -> float:
        """Return the probability of lying from low to high (JCGM 106:2012, clause 7)."""
        if self.u <= 0:
            above = low is None or self.value >= low
            return float(above and (high is None or self.value <= high))
        at_low = 0.0 if low is None else self.below(low)
        return max(0.0, self.below(high) - at_low)


@dataclass(frozen=True, slots=True)
class SideReading:
    """What the repeats on one side say: mean, spread of single values, number, instrument.

    `prior_share` of the spread's variance comes from what the instrument usually scatters, and
    `spread_dof` counts the degrees of freedom of that as well. None of it does (0) where the
    repeats have set the usual spread aside.
    """

    mean: float
    spread: float
    spread_dof: float
    count: int
    instrument: Instrument
    prior_share: float = 0.0

    @property
    def stands_alone(self) -> bool:
        """Whether the repeats were believed instead of the usual spread."""
        return self.count > 1 and self.prior_share == 0


def mean_and_spread(values: Sequence[float]) -> tuple[float, float]:
    """Return the mean and the experimental standard deviation (JCGM 100, 4.2; 0 for one value)."""
    ordered = sorted(values)
    # About the first value, so that equal readings have a spread of exactly nothing.
    start = ordered[0]
    shift = math.fsum(one - start for one in ordered) / len(ordered)
    if len(ordered) == 1:
        return start, 0.0
    squares = math.fsum((one - start - shift) ** 2 for one in ordered)
    return start + shift, math.sqrt(squares / (len(ordered) - 1))


def rectangular(half_width: float) -> Doubt:
    """Return the doubt of something known to lie within +- half_width (JCGM 100, 4.3.7)."""
    return Doubt(half_width / math.sqrt(3))


def resolution_doubt(step: float) -> Doubt:
    """Return the doubt from reading in steps of `step` (JCGM 100, F.2.2.1)."""
    return rectangular(step / 2)


def combined(value: float, doubts: Iterable[Doubt]) -> Estimate:
    """Combine independent doubts; degrees of freedom by Welch-Satterthwaite (JCGM 100, G.4.1)."""
    parts = [one for one in doubts if one.u > 0]
    u = math.hypot(*(one.u for one in parts))
    if u == 0:
        return Estimate(value, 0.0)
    loss = math.fsum((one.u / u) ** 4 / one.dof for one in parts)
    return Estimate(value, u, 1 / loss if loss > 0 else math.inf)


def side_reading(values: Sequence[float], instrument: Instrument) -> SideReading:
    """Pool the scatter of the repeats with the instrument's usual one (JCGM 100, 4.2.4, note).

    One reading stands on the usual spread alone. Repeats that scatter more than it can explain
    (an F test at 5 %) are believed instead of it.
    """
    mean, spread = mean_and_spread(values)
    usual, known, extra = instrument.usual_spread, instrument.usual_dof, len(values) - 1
    if extra and spread > refuting_factor(extra, known) * usual:
        return SideReading(mean, spread, float(extra), len(values), instrument)
    dof = known + extra
    squares = known * usual**2 + extra * spread**2
    share = known * usual**2 / squares if squares > 0 else 1.0
    return SideReading(mean, math.sqrt(squares / dof), dof, len(values), instrument, share)


def spread_doubts(sides: Sequence[SideReading], more: int = 0) -> list[Doubt]:
    """Return the doubts of means taken with one instrument, as if `more` readings were added.

    What the instrument usually scatters is one figure, however many sides it serves: its part of
    all sides is one doubt, known with its own degrees of freedom; each side's own scatter is
    another (Welch-Satterthwaite over the parts of a pooled variance, JCGM 100, G.4.1).
    """
    doubts, from_usual = [], 0.0
    for side in sides:
        variance = side.spread**2 / (side.count + more)
        dof = side.spread_dof + more
        share = side.prior_share * side.spread_dof / dof
        own_dof = dof - (side.instrument.usual_dof if share > 0 else 0.0)
        from_usual += variance * share
        if own_dof > 0 and share < 1:
            doubts.append(Doubt(math.sqrt(variance * (1 - share)), own_dof))
    if from_usual > 0:
        doubts.append(Doubt(math.sqrt(from_usual), sides[0].instrument.usual_dof))
    return doubts


def side_estimate(side: SideReading, more: int = 0) -> Estimate:
    """Return the value of one side with everything that the instrument may get wrong.

    What is read as the largest size that enters lies between that size and the next.
    """
    tool = side.instrument
    doubts = spread_doubts([side], more)
    doubts += [resolution_doubt(tool.resolution), rectangular(tool.max_error)]
    doubts += _lasting(tool)
    return combined(_middle(side), doubts)


def difference_estimate(removed: SideReading, replacement: SideReading, more: int = 0) -> Estimate:
    """Return replacement minus removed.

    With one instrument on both sides its permitted error is taken as common to both and cancels
    (fully correlated inputs, JCGM 100, 5.2.2); spread and resolution stay. Of marks on two photos
    the cameras stay, and what both photos don't share.
    """
    sides = (removed, replacement)
    old, new = (one.instrument for one in sides)
    doubts = [resolution_doubt(one.resolution) for one in (old, new)]
    if old.is_one_with(new):
        doubts += _spread_of_both(removed, replacement, more)
        if old.photo and new.photo:
            doubts += map(Doubt, left_between(old.photo, new.photo))
    else:
        doubts += [*spread_doubts([removed], more), *spread_doubts([replacement], more)]
        for one in (old, new):
            doubts += [rectangular(one.max_error), *_lasting(one)]
    return combined(_middle(replacement) - _middle(removed), doubts)


def _lasting(tool: Instrument) -> list[Doubt]:
    """Return what a photo leaves open of marks on it (type B, JCGM 100, G.4.3), if it is one."""
    return [Doubt(one) for one in tool.photo.lasting] if tool.photo else []


def _middle(side: SideReading) -> float:
    """Return the value of a side, in the middle of what its instrument leaves open."""
    return side.mean + side.instrument.resolution / 2 if side.instrument.goes_in else side.mean


def _spread_of_both(one: SideReading, other: SideReading, more: int) -> list[Doubt]:
    """Return the doubts of two means; a single reading follows where the other side's scatter
    has shown that the instrument's usual one doesn't hold."""
    for single, repeated in ((one, other), (other, one)):
        if single.count == 1 and repeated.stands_alone:
            shares = 1 / (single.count + more) + 1 / (repeated.count + more)
            return [Doubt(repeated.spread * math.sqrt(shares), repeated.spread_dof + more)]
    return spread_doubts((one, other), more)


def wrapped(angle: float) -> float:
    """Return the angle in degrees from -180 up to 180."""
    return (angle + 180.0) % 360.0 - 180.0


def unwound(angles: Sequence[float]) -> list[float]:
    """Return the angles in degrees around their common direction, so that 359 and 1 are near."""
    if max(angles) - min(angles) < 180:
        return list(angles)
    x = math.fsum(math.cos(math.radians(one)) for one in angles)
    y = math.fsum(math.sin(math.radians(one)) for one in angles)
    centre = math.degrees(math.atan2(y, x))
    return [centre + wrapped(one - centre) for one in angles]
