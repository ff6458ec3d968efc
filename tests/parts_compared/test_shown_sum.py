"""What is printed can be checked by hand: replacement minus removed is the difference beside it."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.screen.drawn_values import drawn_values
from desktop_app.parts_compared.sheet_values import difference_cell, side_cell
from desktop_app.parts_compared.shown_value import doubt_decimals
from tests.parts_compared.invented_kinds import both, dimension, worn

CALLIPER = Instrument("calliper", "mm", 0.01, 0.03)
FEELER = Instrument("feeler gauge", "mm", 0.05, 0.005)
READ = st.lists(st.integers(100, 9000).map(lambda one: one / 100), min_size=1, max_size=5)


def measured(old: object, new: object) -> DimensionComparison:
    return judge_dimension(worn(), both("tip", old, new), {"calliper": CALLIPER})


def printed(one: DimensionComparison) -> tuple[str, str, str]:
    """The three figures as the sheet's table shows them, without their doubts."""
    cells = side_cell(one, "removed"), side_cell(one, "replacement"), difference_cell(one)
    old, new, between = (cell.split(" ±")[0] for cell in cells)
    return old, new, between


def last_places(figures: tuple[str, ...]) -> list[int]:
    """The figures counted in units of their last digit, which they share."""
    assert len({len(one.partition(".")[2]) for one in figures}) == 1
    return [int(one.replace("−", "-").replace(".", "")) for one in figures]


def test_three_means_that_each_rounded_would_contradict_each_other_get_a_digit_more() -> None:
    one = measured([24.10, 24.10, 24.11, 24.11, 24.10], [24.99, 25.00, 25.00, 24.99, 25.00])
    assert printed(one) == ("24.104", "24.996", "+0.892")
    assert one.sentence.startswith("Tip: the new one measures 0.892 mm more (± 0.0")
    drawn = drawn_values(one, "mm")
    assert drawn is not None
    assert "removed 24.104 mm" in drawn.words()
    assert "replacement 24.996 mm" in drawn.words()


def test_figures_that_agree_keep_the_digits_that_their_doubt_leaves() -> None:
    assert printed(measured([33.41, 33.43, 33.42], [33.97, 33.98, 33.96])) == (
        "33.42",
        "33.97",
        "+0.55",
    )


def test_means_without_an_end_leave_their_last_unit_to_the_difference() -> None:
    one = measured([24.10, 24.10, 24.11], [25.00, 24.99, 25.00])  # 0.8933… between them
    assert printed(one) == ("24.103", "24.997", "+0.894")
    assert one.difference == pytest.approx(0.89333, abs=1e-5)  # what decides is not rounded
    assert "0.894 mm more" in one.sentence


@given(READ, READ)
@example([1.05], [0.95])
def test_whatever_is_read_the_sum_comes_out(old: list[float], new: list[float]) -> None:
    one = measured(old, new)
    before, after, between = last_places(printed(one))
    assert after - before == between
    assert one.difference is not None
    assert one.difference_expanded_uncertainty is not None
    shown = one.shown.difference
    assert shown is not None
    assert abs(shown - one.difference) <= one.difference_expanded_uncertainty / 5


def test_angles_are_checked_around_the_circle() -> None:
    turn = dimension(name="turn", role="orientation", unit="deg", allowed=(-20.0, 20.0),
                     instrument="protractor")  # fmt: skip
    one = judge_dimension(turn, both("turn", [355, 356, 356], [2, 3, 2]), {})
    figures = printed(one)
    old, new, between = last_places(figures)
    circle = 360 * 10 ** len(figures[0].partition(".")[2])
    assert new - old + circle == between > 0


def test_the_doubt_of_a_difference_is_shown_to_the_same_place_as_the_two_it_came_from() -> None:
    turn = dimension(name="turn", label="turn", role="orientation", unit="deg",
                     allowed=(-2.0, 2.0), instrument="protractor")  # fmt: skip
    one = judge_dimension(turn, both("turn", 30, 30.5), {})
    assert side_cell(one, "replacement") == "30.5 ± 1.3"
    assert difference_cell(one) == "+0.5 ± 1.7"  # alone its doubt would read ± 2, all of the limit
    assert one.sentence == "Turn: same way round (± 1.7°)."
    far = judge_dimension(turn, both("turn", 30, 34), {})
    assert "turned by 4.0° (± 1.7)" in far.sentence


@pytest.mark.parametrize(
    ("uncertainty", "beside", "decimals"),
    [
        (1.75, 1, 1),
        (0.22, 3, 2),  # never more than two figures
        (0.0996, 4, 2),  # 0.10, not 0.100
        (0.012, 2, 3),  # never fewer than alone
        (40.0, 1, 0),
        (math.inf, 1, 6),
    ],
)
def test_a_doubt_beside_others_has_their_place_and_two_figures_at_most(
    uncertainty: float, beside: int, decimals: int
) -> None:
    assert doubt_decimals(uncertainty, beside) == decimals


def test_a_size_that_still_enters_beside_a_measured_one_is_shown_as_both_were_read() -> None:
    gap = dimension(name="gap", role="same", allowed=(-0.2, 0.2), instrument="calliper")
    readings = [*both("gap", 1.00, 1.00)]
    mixed = [replace(readings[0], instrument="feeler gauge"), readings[1]]
    one = judge_dimension(gap, mixed, {"calliper": CALLIPER, "feeler gauge": FEELER})
    assert one.difference == pytest.approx(-0.025)  # what enters lies half a step higher
    assert printed(one)[:2] == ("1.00", "1.00")
    assert difference_cell(one).startswith("−0.0")
