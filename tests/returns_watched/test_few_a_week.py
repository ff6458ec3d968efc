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
    """About five years between false alarms, by simulation; the level is not known before."""
    chance = np.random.default_rng(3)
    first = []
    for _ in range(30):
        signals = doubled(chance.poisson(2.0, 300).tolist(), [80] * 300).signals
        first.append(signals[0] if signals else 300)
    assert np.mean(first) >= 180  # of 300 weeks at most


def test_a_doubling_is_noticed_and_its_beginning_named() -> None:
    chance = np.random.default_rng(4)
    counts = [*chance.poisson(2.0, 30).tolist(), *chance.poisson(4.0, 20).tolist()]
    found = doubled(counts, [100] * 50)
    first = found.signals[0]
    assert 26 <= found.since[first] <= first <= 45


def test_a_rise_within_the_weeks_themselves_is_not_hidden_by_their_average() -> None:
    # Measured against the average of all weeks, 4 a week after 2 would be only a third more.
    assert doubled([2] * 26 + [4] * 13, [80] * 39).signals


def test_more_jobs_bring_more_comebacks_without_an_alarm() -> None:
    assert not doubled([2] * 26 + [4] * 13, [80] * 26 + [160] * 13).signals


@given(st.lists(st.tuples(st.integers(0, 9), st.integers(0, 90)), max_size=40))
def test_the_evidence_never_falls_below_nothing(weeks: list[tuple[int, int]]) -> None:
    found = doubled([count for count, _ in weeks], [size for _, size in weeks])
    assert len(found.evidence) == len(found.since) == len(weeks)
    assert all(one >= 0 for one in found.evidence)
    assert all(begun <= week for week, begun in enumerate(found.since))


@pytest.mark.parametrize(
    ("counts", "sizes", "ratio"),
    [([-1], [4], 2.0), ([1], [-4], 2.0), ([1], [4, 5], 2.0), ([1], [4], 1.0)],
)
def test_what_is_no_count_is_refused(counts: list[int], sizes: list[float], ratio: float) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        doubled(counts, sizes, ratio)
