"""A group is held against the work of others, and what is in no rate is said beside it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import NOTHING_ALIKE, group_rates
from desktop_app.returns_watched.honest_numbers.rates import rates_of
from desktop_app.returns_watched.window import MAIN_WINDOW
from tests.returns_watched.test_honest_numbers import (
    BACK,
    SETTLED,
    TODAY,
    jobs,
    only,
    together,
)


def test_a_group_is_never_held_against_itself() -> None:
    clutches = jobs(*[BACK] * 24, *[SETTLED] * 125, names=("Ada",), system="driveline")
    other = jobs(SETTLED, names=("Bo",), system="driveline")
    found = group_rates(together(clutches, other), "technician")
    ada, bo = sorted(found, key=lambda group: group.name)
    assert (ada.expected, ada.reading) == (None, NOTHING_ALIKE)
    assert bo.expected == pytest.approx(24 / 149)
    two = together(
        jobs(*[BACK] * 20, *[SETTLED] * 80, names=("Ada",)),
        jobs(*[BACK] * 10, *[SETTLED] * 90, names=("Bo",)),
    )
    expected = {group.name: group.expected for group in group_rates(two, "technician")}
    assert expected == pytest.approx({"Ada": 10, "Bo": 20})


def test_where_few_did_such_work_the_system_stands_for_it() -> None:
    def some(name: str, kind: str, back: int, quiet: int) -> CountedJobs:
        made = jobs(*[BACK] * back, *[SETTLED] * quiet, names=(name,))
        return replace(made, part_kinds=((kind,),) * (back + quiet))

    found = group_rates(
        together(
            some("Ada", "cap", 3, 27),
            some("Ada", "coil", 2, 8),
            some("Bo", "cap", 10, 90),
            some("Bo", "coil", 5, 5),
        ),
        "technician",
    )
    ada = next(group for group in found if group.name == "Ada")
    # 30 caps at 10 of 100; 10 coils, of which only ten others are, at 15 of 110 of the system.
    assert ada.expected == pytest.approx(3 + 10 * 15 / 110)
    assert ada.alike == 30


def test_few_others_make_the_range_of_luck_wider() -> None:
    def luck(others: int) -> tuple[int, int]:
        few = together(
            jobs(*[BACK] * 10, *[SETTLED] * 90),
            jobs(*[BACK] * (others // 10), *[SETTLED] * (others * 9 // 10), names=("Bo",)),
        )
        ada = next(group for group in group_rates(few, "technician") if group.name == "Ada")
        assert ada.luck is not None
        return ada.luck

    assert luck(40)[1] > luck(4000)[1] >= 16
    assert luck(40)[0] <= luck(4000)[0]


def test_a_return_that_is_not_ours_is_above_and_below_no_line() -> None:
    some = replace(jobs(SETTLED, SETTLED, BACK), aside_after=np.array([30, NEVER, 10]))
    group = only(group_rates(some, "technician"))
    assert (group.jobs, group.settled, group.comebacks, group.not_ours) == (3, 2, 1, 1)
    assert some.watched()[0].tolist() == [30, 90, 20]
    said = rates_of(some, "technician", MAIN_WINDOW, TODAY)
    assert "1 not ours" in said.lines()[0]
    assert said.as_json()["groups"][0]["not_ours"] == 1


def test_a_return_after_the_window_is_said_beside_the_rate() -> None:
    some = replace(jobs(SETTLED, SETTLED), came_later=np.array([True, False]))
    said = rates_of(some, "technician", MAIN_WINDOW, TODAY)
    assert (said.groups[0].settled, said.groups[0].comebacks) == (2, 0)
    assert any(line.startswith("1 job came back with a reason after") for line in said.lines())
    # One that came back in its window too is a comeback, and is said once.
    both = replace(jobs(BACK, SETTLED), came_later=np.array([True, False]))
    assert rates_of(both, "technician", MAIN_WINDOW, TODAY).came_later == 0


def test_where_nothing_came_back_the_curve_claims_no_certainty() -> None:
    lines = rates_of(jobs(*[SETTLED] * 3), "technician", MAIN_WINDOW, TODAY).lines()
    # The exact upper bound of 0 of 3 is 1 - 0.025 ** (1 / 3).
    assert any("None came back by day 90" in line and "70.8%" in line for line in lines)
