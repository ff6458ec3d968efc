"""Two sets of readings against Welch's test and two one-sided tests (TOST) for equivalence.

The instrument of these tests has no error, no steps and no usual spread, so that the readings
speak alone. "Recalled": known from memory and recomputed; "read": seen in a public reproduction.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy import stats

from desktop_app.parts_compared.decision import decide_span
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.student_t import t_below
from desktop_app.parts_compared.uncertainty import (
    Estimate,
    SideReading,
    difference_estimate,
    side_reading,
)

BARE = Instrument("bare", "mm", 0.0, 0.0, 0.0)
FIRST = [27.5, 21.0, 19.0, 23.6, 17.0, 17.9, 16.9, 20.1, 21.9, 22.6, 23.1, 19.6, 19.0, 21.7, 21.4]
SECOND = [27.1, 22.0, 20.8, 23.4, 23.4, 23.5, 25.8, 22.0, 24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4]
SLEEP_1 = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0]
SLEEP_2 = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]


def difference(first: list[float], second: list[float]) -> Estimate:
    """The first minus the second, as the published tests take it."""
    return difference_estimate(side_reading(second, BARE), side_reading(first, BARE))


def summary(mean: float, spread: float, count: int) -> SideReading:
    return SideReading(mean, spread, count - 1, count, BARE)


def two_sided(found: Estimate) -> float:
    return 2 * t_below(-abs(found.value) / found.u, found.dof)


def test_welch_fifteen_against_fifteen() -> None:
    # A public worked example of Welch's t-test (recalled).
    found = difference(FIRST, SECOND)
    assert found.value / found.u == pytest.approx(-2.455356398286006, rel=1e-12)
    assert found.dof == pytest.approx(24.988529290231416, rel=1e-12)
    assert two_sided(found) == pytest.approx(0.021378001462867, rel=1e-10)


def test_welch_on_the_sleep_data() -> None:
    # Student 1908; R's `sleep` and `t.test` (read); printed 1.8608, 17.776, 0.07939.
    found = difference(SLEEP_1, SLEEP_2)
    assert found.value / found.u == pytest.approx(-1.8608134674868526, rel=1e-12)
    assert found.dof == pytest.approx(17.776473516178488, rel=1e-12)
    assert two_sided(found) == pytest.approx(0.0793941401873583, rel=1e-10)
    low, high = found.value - found.expanded(), found.value + found.expanded()
    assert (low, high) == pytest.approx((-3.3654832307, 0.2054832307), abs=1e-9)


def test_welch_on_fuel_economy() -> None:
    # NIST/SEMATECH e-Handbook 1.3.5.3, file AUTO83B (means and spreads read, Welch computed).
    us = summary(20.1445783133, 6.4146993432, 249)
    found = difference_estimate(summary(30.4810126582, 6.1077100486, 79), us)
    assert found.value / found.u == pytest.approx(-12.946273274932, rel=1e-9)
    assert found.dof == pytest.approx(136.874976677, rel=1e-9)


@pytest.mark.parametrize("seed", range(8))
def test_welch_against_scipy(seed: int) -> None:
    # SciPy's ttest_ind(equal_var=False), an independent library.
    chance = np.random.default_rng(seed)
    first = [float(x) for x in chance.normal(10.0, 0.02, 2 + seed)]
    second = [float(x) for x in chance.normal(10.03, 0.07, 9 - seed)]
    found, peer = difference(first, second), stats.ttest_ind(first, second, equal_var=False)
    assert found.value / found.u == pytest.approx(float(peer.statistic), rel=1e-9)
    assert found.dof == pytest.approx(float(peer.df), rel=1e-9)
    assert two_sided(found) == pytest.approx(float(peer.pvalue), rel=1e-7)
    interval = peer.confidence_interval(0.95)
    assert found.value + found.expanded() == pytest.approx(float(interval.high), abs=1e-9)


def test_equivalence_of_two_summaries() -> None:
    # Lakens 2017, Soc. Psych. Pers. Sci. 8:355, Welch's TOST (recalled); printed t -2.69, p .004.
    bound = 0.43 * math.sqrt((0.95**2 + 0.83**2) / 2)
    found = difference_estimate(summary(5.22, 0.83, 89), summary(5.25, 0.95, 95))
    assert bound == pytest.approx(0.3835686770, rel=1e-9)
    assert found.u == pytest.approx(0.1313028920, rel=1e-8)
    assert found.dof == pytest.approx(181.13436716, rel=1e-8)
    assert (found.value + bound) / found.u == pytest.approx(3.1497301457, rel=1e-8)
    assert (found.value - bound) / found.u == pytest.approx(-2.6927714367, rel=1e-8)
    assert 1 - found.below(bound) == pytest.approx(0.0038755217, abs=1e-9)
    low, high = found.value - found.expanded(0.90), found.value + found.expanded(0.90)
    assert (low, high) == pytest.approx((-0.1870843118, 0.2470843118), abs=1e-9)
    assert decide_span(found, (-bound, bound), "same", "differs") == "same"


def two_one_sided_tests(first: list[float], second: list[float], bound: float) -> list[float]:
    """p of "not above -bound" and of "not below bound", by SciPy's Welch test."""
    at_low = stats.ttest_ind(
        [x + bound for x in first], second, equal_var=False, alternative="greater"
    )
    at_high = stats.ttest_ind(
        [x - bound for x in first], second, equal_var=False, alternative="less"
    )
    return [float(at_low.pvalue), float(at_high.pvalue)]


def test_a_yes_is_never_more_daring_than_two_one_sided_tests() -> None:
    # "Same" takes both tails together (JCGM 106), TOST the larger one: a yes is always
    # equivalence as well, and the rare yes of TOST alone is too close to tell here.
    chance = np.random.default_rng(355)
    said = {"same": 0, "differs": 0, "too close to tell": 0}
    for _ in range(300):
        first = [float(x) for x in chance.normal(chance.uniform(-0.3, 0.3), 0.05, 4)]
        second = [float(x) for x in chance.normal(0.0, 0.08, 5)]
        found = difference(first, second)
        tails = two_one_sided_tests(first, second, 0.2)
        verdict = decide_span(found, (-0.2, 0.2), "same", "differs")
        said[verdict] += 1
        assert found.within(-0.2, 0.2) == pytest.approx(1 - sum(tails), abs=1e-9)
        assert (verdict == "same") == (sum(tails) <= 0.05)
        assert verdict != "same" or max(tails) <= 0.05
        assert (verdict == "differs") == (max(tails) >= 0.95)
    assert min(said.values()) > 20


def test_with_one_limit_a_yes_is_the_one_sided_test() -> None:
    # SciPy's ttest_ind(alternative="less"): with an open end both say the same.
    chance = np.random.default_rng(356)
    for _ in range(100):
        first = [float(x) for x in chance.normal(chance.uniform(0.0, 0.25), 0.05, 4)]
        second = [float(x) for x in chance.normal(0.0, 0.05, 4)]
        p = two_one_sided_tests(first, second, 0.2)[1]
        verdict = decide_span(difference(first, second), (None, 0.2), "same", "differs")
        assert (verdict == "same") == (p <= 0.05)


@pytest.mark.parametrize("seed", range(6))
def test_equivalence_is_decided_as_statsmodels_does(seed: int) -> None:
    """statsmodels' ttost_ind with unequal variances: its p is the larger of the two tests."""
    from statsmodels.stats.weightstats import ttost_ind

    chance = np.random.default_rng(100 + seed)
    first = [float(x) for x in chance.normal(10.0, 0.02, 4 + seed)]
    second = [float(x) for x in chance.normal(10.01, 0.05, 11 - seed)]
    bound = 0.04
    p, lower, upper = ttost_ind(first, second, -bound, bound, usevar="unequal")
    found = difference(first, second)
    assert 1 - found.below(bound) == pytest.approx(float(upper[1]), rel=1e-7)
    assert found.below(-bound) == pytest.approx(float(lower[1]), rel=1e-7)
    if decide_span(found, (-bound, bound), "same", "differs") == "same":
        assert float(p) <= 0.05
