"""Doubts that are combined, against the GUM (JCGM 100:2008), its supplement and tolerance stacks.

"Recalled" beside a value: known from memory and recomputed, its page not seen. "Read": seen in
a public reproduction. "Computed": from the definition only. The rules have no triangular
distribution, weighted mean or part correlation, so 4.3.9 and H.2 of JCGM 100 have no test here.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.uncertainty import (
    Doubt,
    SideReading,
    combined,
    difference_estimate,
    mean_and_spread,
    rectangular,
    resolution_doubt,
    side_estimate,
)

RULE = Instrument("rule", "mm", 0.01, 0.03, repeatability=0.02)
OTHER = Instrument("other", "mm", 0.02, 0.05, repeatability=0.01)


def test_end_gauge_with_second_order_terms() -> None:
    # JCGM 100:2008, H.1.7 (read in a reproduction); printed 34 nm. The two products take the
    # inputs as they are printed: 0.58e-6 and 0.41, 1.2e-6 and 0.029.
    expansion = 50_000_623 * 0.58e-6 * 0.41
    coefficient = 50_000_623 * 1.2e-6 * 0.029
    assert expansion == pytest.approx(11.89, abs=0.01)
    assert coefficient == pytest.approx(1.74, abs=0.01)
    found = combined(50_000_838, [Doubt(31.663879111), Doubt(expansion), Doubt(coefficient)])
    assert found.u == pytest.approx(33.8675, abs=0.01)
    assert round(found.u) == 34


def test_four_normal_inputs() -> None:
    # JCGM 101:2008, 9.2.2, table 2 (read in a reproduction): u 2.0, 95 % within 3.92.
    found = combined(0.0, [Doubt(1.0)] * 4)
    assert found.u == 2.0
    assert found.expanded() == pytest.approx(3.92, abs=0.005)


def test_four_rectangular_inputs() -> None:
    # JCGM 101:2008, 9.2.3, table 3 (read in a reproduction): propagating distributions gives
    # 3.88; the GUM's own interval is 3.92, a little wider, and errs to the safe side.
    found = combined(0.0, [rectangular(math.sqrt(3))] * 4)
    chance = np.random.default_rng(9023)
    sums = chance.uniform(-math.sqrt(3), math.sqrt(3), (4, 200_000)).sum(axis=0)
    assert found.u == pytest.approx(2.0, rel=1e-12)
    assert float(np.quantile(np.abs(sums), 0.95)) == pytest.approx(3.88, abs=0.02)
    assert found.expanded() == pytest.approx(3.92, abs=0.005)
    _, spread = mean_and_spread([float(one) for one in sums[:20_000]])
    assert spread == pytest.approx(2.0, abs=0.04)


def test_clearance_stack() -> None:
    # Three parts in a housing, a common tutorial of tolerance analysis (read; computed again).
    sizes = [(4.020, 0.005), (-2.000, 0.005), (-1.500, 0.003), (-0.500, 0.002)]
    gap = math.fsum(size for size, _ in sizes)
    found = combined(gap, [Doubt(tolerance) for _, tolerance in sizes])
    assert found.value == pytest.approx(0.020, abs=1e-12)
    assert found.u == pytest.approx(0.007937253933, rel=1e-9)
    assert round(gap - found.u, 3) == 0.012
    assert round(gap + found.u, 3) == 0.028


def variance_of_difference(first: float, second: float, correlation: float) -> float:
    """Law of propagation with the full matrix (JCGM 100:2008, 5.2.2, equation 13)."""
    slope = np.array([-1.0, 1.0])
    shared = correlation * first * second
    matrix = np.array([[first**2, shared], [shared, second**2]])
    return float(slope @ matrix @ slope)


def side(tool: Instrument, mean: float, count: int) -> SideReading:
    return SideReading(mean, tool.usual_spread, 8.0, count, tool)


@pytest.mark.parametrize("count", [1, 3, 10])
def test_one_instrument_is_fully_correlated_with_itself(count: int) -> None:
    # JCGM 100:2008, 5.2.2, note 1 (recalled): with r = +1 the uncertainties add with their
    # signs, so that the part common to both sides of a difference is nothing.
    common = rectangular(RULE.max_error).u
    own = RULE.usual_spread**2 / count + resolution_doubt(RULE.resolution).u ** 2
    found = difference_estimate(side(RULE, 10.0, count), side(RULE, 10.5, count))
    wanted = 2 * own + variance_of_difference(common, common, 1.0)
    assert variance_of_difference(common, common, 1.0) == pytest.approx(0.0, abs=1e-18)
    assert found.u**2 == pytest.approx(wanted, rel=1e-12)


def test_two_instruments_are_not_correlated() -> None:
    # JCGM 100:2008, 5.1.2 (r = 0): each side's whole doubt counts.
    old, new = side(RULE, 10.0, 3), side(OTHER, 10.5, 4)
    wanted = variance_of_difference(side_estimate(old).u, side_estimate(new).u, 0.0)
    assert difference_estimate(old, new).u ** 2 == pytest.approx(wanted, rel=1e-12)


def test_ten_alike_against_one_standard() -> None:
    # JCGM 100:2008, 5.2.2, example (recalled): ten resistors of 1 kilohm, each compared with
    # the same standard of u 100 mohm, in series have 1 ohm; taken as independent, 0.32 ohm.
    ones, matrix = np.ones(10), np.full((10, 10), 0.1**2)
    assert math.sqrt(float(ones @ matrix @ ones)) == pytest.approx(1.0, rel=1e-12)
    assert combined(10_000, [Doubt(0.1)] * 10).u == pytest.approx(0.316228, rel=1e-5)
