"""The scale of a chart: few round steps, from nothing to the highest value."""

from __future__ import annotations

from math import floor, log10

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.weekly_report.chart_scale import MOST_STEPS, round_ticks, tick_words


@given(st.lists(st.floats(1e-6, 1e9), min_size=1, max_size=5))
def test_few_round_steps_reach_the_highest_value_and_not_a_step_further(
    values: list[float],
) -> None:
    ticks = round_ticks(values)
    step, high = ticks[1], max(values)
    assert ticks[0] == 0
    assert ticks[-2] < high * (1 + 1e-6)
    assert ticks[-1] >= high * (1 - 1e-6)
    assert len(ticks) <= MOST_STEPS + 1
    assert step / 10 ** floor(log10(step * (1 + 1e-9))) == pytest.approx(
        1, rel=1e-6
    ) or step / 10 ** floor(log10(step)) in (pytest.approx(2), pytest.approx(5))
    assert ticks == pytest.approx([step * place for place in range(len(ticks))])


@pytest.mark.parametrize(
    ("values", "ticks"),
    [
        ([], (0, 1)),
        ([0.0, -3.0], (0, 1)),
        ([-1.0, 4.0], (0, 1, 2, 3, 4)),
        ([0.23], (0, 0.05, 0.1, 0.15, 0.2, 0.25)),
        ([871.0], (0, 200, 400, 600, 800, 1000)),
    ],
)
def test_the_steps_are_those_that_are_counted_in(
    values: list[float], ticks: tuple[float, ...]
) -> None:
    assert round_ticks(values) == ticks


def test_a_tick_is_read_without_needless_digits() -> None:
    assert tick_words(0.05, share=True) == "5%"
    assert tick_words(0.025, share=True) == "2.5%"
    assert [tick_words(tick, share=False) for tick in (0, 0.5, 2000.0)] == ["0", "0.5", "2,000"]
