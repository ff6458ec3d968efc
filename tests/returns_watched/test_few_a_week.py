"""Few comebacks a week: limits that luck seldom passes, and a doubling that is noticed."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from desktop_app.returns_watched.honest_numbers.few_a_week import count_limits, doubled


def test_two_comebacks_of_35_jobs_are_no_alarm() -> None:
    # Some 0.6 a week are usual there; a u chart with three sigmas would have cried wolf.
    assert count_limits(0.6).high == 4
    assert 0.6 + 3 * math.sqrt(0.6) - 1.0 < 2


@given(st.floats(0, 400))
def test_the_limits_are_those_of_the_poisson_distribution(mean: float) -> None:
    """scipy.stats.poisson, in tests alone."""
    found = count_limits(mean)
    assert stats.poisson.sf(found.high, mean) <= 0.00135 + 1e-9
    assert found.high == 0 or stats.poisson.sf(found.high - 1, mean) > 0.00135 - 1e-9
    assert stats.poisson.cdf(found.low - 1, mean) <= 0.00135 + 1e-9
    assert stats.poisson.cdf(found.low, mean) > 0.00135 - 1e-9


def test_many_comebacks_have_the_normal_limits() -> None:
    found = count_limits(10_000)
    assert (found.low, found.high) == (9_700, 10_301)


@pytest.mark.parametrize("mean", [-1.0, math.nan, math.inf])
def test_no_mean_no_limits(mean: float) -> None:
    with pytest.raises(ValueError, match="mean"):
        count_limits(mean)


def test_luck_alone_seldom_looks_like_a_doubling() -> None:
    """At least five years between false alarms: Lorden's bound, held by simulation."""
    chance = np.random.default_rng(3)
    first = []
    for _ in range(60):
        signal = doubled(chance.poisson(0.8, 2_000).tolist(), [0.8] * 2_000).first_signal
        first.append(2_000 if signal is None else signal)
    assert np.mean(first) >= 260


def test_a_doubling_is_noticed_and_its_beginning_named() -> None:
    chance = np.random.default_rng(4)
    counts = [*chance.poisson(2.0, 30).tolist(), *chance.poisson(4.0, 40).tolist()]
    found = doubled(counts, [2.0] * 70)
    assert found.first_signal is not None
    assert found.began is not None
    assert 28 <= found.began <= found.first_signal <= 45


@given(st.lists(st.tuples(st.integers(0, 9), st.floats(0, 9)), max_size=60))
def test_the_evidence_never_falls_below_nothing(weeks: list[tuple[int, float]]) -> None:
    found = doubled([count for count, _ in weeks], [mean for _, mean in weeks])
    assert len(found.evidence) == len(weeks)
    assert all(one >= 0 for one in found.evidence)
    if found.first_signal is not None and found.began is not None:
        assert found.began <= found.first_signal
        assert found.evidence[found.first_signal] > found.decision
