"""Control charts for uneven numbers and the cusum against published examples.

"Recalled" beside a value: the example is known from memory and recomputed, its page not seen.
"Read": a public reproduction was read.
"""

from __future__ import annotations

import pytest

from desktop_app.returns_watched.honest_numbers.weekly_chart import (
    cusum,
    p_chart,
    slow_rise,
    u_chart,
)


def counts(words: str) -> list[int]:
    """Read whole numbers from a line."""
    return [int(word) for word in words.split()]


JUICE = counts("12 15 8 10 4 7 16 9 14 10 5 6 17 12 22 8 10 5 13 11 20 18 24 15 9 12 7 13 9 6")


def test_a_p_chart() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.3.2: 30 samples of 50 (read).
    chart = p_chart(JUICE, [50] * 30)
    assert chart.centre == pytest.approx(0.2313333333, abs=1e-10)
    assert chart.low[0] == pytest.approx(0.0524275481, abs=1e-10)
    assert chart.high[0] == pytest.approx(0.4102391186, abs=1e-10)
    assert [week + 1 for week in chart.beyond] == [15, 23]


def test_a_p_chart_without_its_worst() -> None:
    # D. C. Montgomery, Introduction to Statistical Quality Control, example 7.1 (read in a
    # reproduction): without samples 15 and 23, sample 21 lies beyond.
    kept = [one for place, one in enumerate(JUICE, 1) if place not in (15, 23)]
    chart = p_chart(kept, [50] * 28)
    assert chart.centre == pytest.approx(0.215)
    assert (chart.low[0], chart.high[0]) == pytest.approx((0.04070284, 0.38929716), abs=1e-8)
    assert [kept[week] for week in chart.beyond] == [20]


def test_a_point_on_its_limit_is_not_beyond() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.3.1: wafers, centre 16, limits 4 and 28; the third is 28 (read).
    wafers = counts("16 14 28 16 12 20 10 12 10 17 19 17 14 16 15 13 14 16 11 20 11 19 16 31 13")
    chart = u_chart(wafers, [1] * 25)
    assert (chart.centre, chart.low[2], chart.high[2]) == pytest.approx((16, 4, 28))
    assert [week + 1 for week in chart.beyond] == [24]


def test_counts_of_boards() -> None:
    # D. C. Montgomery, circuit boards; the qcc package's output (read).
    boards = counts("21 24 16 12 15 5 28 20 31 25 20 24 16 19 10 17 13 22 18 39 30 24 16 19 17 15")
    chart = u_chart(boards, [1] * 26)
    assert chart.centre == pytest.approx(19.8461538462, abs=1e-9)
    assert (chart.low[0], chart.high[0]) == pytest.approx((6.4814471672, 33.2108605251), abs=1e-9)
    assert [week + 1 for week in chart.beyond] == [6, 20]


def test_a_u_chart() -> None:
    # D. C. Montgomery, personal computers; the qcc package's output (read).
    faults = counts("10 12 8 14 10 16 11 7 10 15 9 5 7 11 12 6 8 10 7 5")
    chart = u_chart(faults, [5] * 20)
    assert (chart.centre, chart.low[0], chart.high[0]) == pytest.approx(
        (1.93, 0.06613305, 3.793867), abs=1e-6
    )


def test_a_u_chart_of_uneven_sizes() -> None:
    # D. C. Montgomery, dyed cloth (data read, limits computed).
    sizes = [10, 8, 13, 10, 9.5, 10, 12, 10.5, 12, 12.5]
    chart = u_chart(counts("14 12 20 11 7 10 21 16 19 23"), sizes)
    limits = {
        8: (0.157885, 2.688626),
        9.5: (0.262072, 2.584440),
        10: (0.291474, 2.555038),
        10.5: (0.31875, 2.527762),
        12: (0.390085, 2.456427),
        12.5: (0.410959, 2.435552),
        13: (0.430617, 2.415894),
    }
    assert chart.centre == pytest.approx(1.4232558140, abs=1e-10)
    for size, low, high in zip(sizes, chart.low, chart.high, strict=True):
        assert (low, high) == pytest.approx(limits[size], abs=1e-6)


def test_a_cusum() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.2.3: target 325, k 0.3175, h 4.1959 (recalled).
    values = [
        *(324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225),
        *(324.600, 324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775),
        *(326.875, 328.350),
    ]
    found = cusum(values, 325, 0.3175, 4.1959)
    rise = {5: 0.0325, 13: 3.0075, 14: 4.94, 15: 7.4475, 16: 10.63, 17: 11.9875, 18: 14.445}
    rise |= {19: 16.0025, 20: 19.035}
    fall = {2: 0.0075, 4: 0.3325, 7: 0.5575, 8: 0.715, 9: 0.1725, 10: 0.255, 11: 0.3125}
    assert found.rise == pytest.approx([rise.get(n, 0.0) for n in range(1, 21)], abs=1e-9)
    assert found.fall == pytest.approx([fall.get(n, 0.0) for n in range(1, 21)], abs=1e-9)
    assert found.first_signal == 14 - 1
    assert found.began == 13 - 1


def test_a_cusum_says_when_it_began() -> None:
    # D. C. Montgomery, tables 9.1 and 9.2: mean 10, K 0.5, H 5 (data read, results recalled): the
    # signal comes at 29, the sum is above 0 since 23.
    values = [
        *(9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.20, 10.34, 9.03, 11.47, 10.51),
        *(9.40, 10.08, 9.37, 10.62, 10.31, 8.52, 10.84, 10.90, 9.33, 12.29, 11.50, 10.60, 11.08),
        *(10.38, 11.62, 11.31, 10.52),
    ]
    found = cusum(values, 10, 0.5, 5)
    rise = {4: 1.16, 5: 2.82, 6: 2.5, 8: 1.0, 24: 2.79, 26: 3.47, 28: 4.47, 29: 5.28, 30: 5.30}
    for place, value in rise.items():
        assert found.rise[place - 1] == pytest.approx(value, abs=1e-9)
    for place, value in {1: 0.05, 2: 1.56, 3: 1.77, 7: 1.46}.items():
        assert found.fall[place - 1] == pytest.approx(value, abs=1e-9)
    assert max(found.fall) < 5
    assert found.first_signal == 29 - 1
    assert found.began == 23 - 1


def test_a_slow_rise_is_told_before_any_week_lies_beyond() -> None:
    # Computed: 30 jobs a week, 2 of them back as usual, then 4.
    came, jobs = [2] * 20 + [4] * 20, [30] * 40
    found = slow_rise(came, jobs, usual=2 / 30)
    assert p_chart(came, jobs).beyond == ()
    assert found.began == 20
    assert found.first_signal is not None
    assert 20 < found.first_signal < 30
