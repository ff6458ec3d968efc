"""Uncertainty of a reading and of a difference of two readings, as in the GUM (JCGM 100:2008)."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from desktop_app.parts_compared.instrument import Instrument
from desktop_app.parts_compared.student_t import t_below, t_factor

COVERAGE = 0.95
#: A usual spread is trusted to a quarter of itself: half of 0.25**-2 (JCGM 100, G.4.2, eq. G.3).
PRIOR_DOF = 8.0
#: Repeats that scatter this many times more than usual set the usual spread aside
#: (common practice, no source; near the 1 % point of the F distribution).
PRIOR_REFUTED = 3.0


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
    """What the repeats on one side say: mean, spread of single values, number, instrument."""

    mean: float
    spread: float
    spread_dof: float
    count: int
    instrument: Instrument

    def spread_doubt(self, more: int = 0) -> Doubt:
        """Return the doubt of the mean from the spread, as if `more` readings had been added."""
        return Doubt(self.spread / math.sqrt(self.count + more), self.spread_dof + more)


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

    One reading stands on the usual spread alone. Repeats that scatter far more than usual
    are believed instead of it.
    """
    mean, spread = mean_and_spread(values)
    usual, extra = instrument.usual_spread, len(values) - 1
    if spread > PRIOR_REFUTED * usual:
        return SideReading(mean, spread, float(extra), len(values), instrument)
    dof = PRIOR_DOF + extra
    pooled = math.sqrt((PRIOR_DOF * usual**2 + extra * spread**2) / dof)
    return SideReading(mean, pooled, dof, len(values), instrument)


def side_estimate(side: SideReading, more: int = 0) -> Estimate:
    """Return the value of one side with everything that the instrument may get wrong."""
    tool = side.instrument
    return combined(
        side.mean,
        (side.spread_doubt(more), resolution_doubt(tool.resolution), rectangular(tool.max_error)),
    )


def difference_estimate(removed: SideReading, replacement: SideReading, more: int = 0) -> Estimate:
    """Return replacement minus removed.

    With one instrument on both sides its permitted error is common to both and cancels
    (fully correlated inputs, JCGM 100, 5.2.2); spread and resolution stay.
    """
    doubts = [removed.spread_doubt(more), replacement.spread_doubt(more)]
    doubts += [resolution_doubt(one.instrument.resolution) for one in (removed, replacement)]
    if removed.instrument.name != replacement.instrument.name:
        doubts += [rectangular(one.instrument.max_error) for one in (removed, replacement)]
    return combined(replacement.mean - removed.mean, doubts)


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
