"""A group is held against the work of others, and what is in no rate is said beside it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import (
    NOTHING_ALIKE,
    GroupRate,
    group_rates,
)
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


def test_where_few_did_such_work_the_system_counts_beside_them() -> None:
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
    # 30 caps at 10 of 100. Of coils only ten others are: 5 of 10 beside as many jobs of the system,
    # where 15 of 110 came back, as the spread of the kinds of work gives, twenty at most.
    assert ada.expected is not None
    most, least = 3 + 10 * 5 / 10, 3 + 10 * (5 + 20 * 15 / 110) / 30
    assert least - 1e-9 <= ada.expected < most
    assert (ada.alike, ada.by_system, ada.settled) == (30, 10, 40)
    assert ada.held_against == "30 × the same work; 10 × the same work and its system"


def test_where_kind_and_system_are_rare_all_work_counts_beside_them() -> None:
    def some(name: str, system: str, back: int, quiet: int) -> CountedJobs:
        return jobs(*[BACK] * back, *[SETTLED] * quiet, names=(name,), system=system)

    rare = [some("Bo", f"system {n}", 1, 9) for n in range(8)]
    own = [some("Ada", f"system {n}", 1, 9) for n in range(8)]
    ada, bo = group_rates(together(*own, *rare), "technician")
    # Ten others of each kind, all alike: 8 of 80 are expected, and luck does not part the two.
    assert (ada.expected, bo.expected) == (pytest.approx(8), pytest.approx(8))
    assert ada.held_against == "80 × the same work, its system and all work"
    assert ada.reading == bo.reading == "within what luck gives"


def test_hard_work_that_hardly_anybody_else_does_is_not_held_against_easy_work() -> None:
    hard = jobs(*[BACK] * 20, *[SETTLED] * 80, names=("Ada",), system="electrical")
    other = jobs(*[BACK] * 2, names=("Bo",), system="electrical")
    easy = jobs(*[SETTLED] * 300, names=("Bo",), system="brakes")
    ada = next(g for g in group_rates(together(hard, other, easy), "technician") if g.name == "Ada")
    assert (ada.expected, ada.luck, ada.reading) == (None, None, NOTHING_ALIKE)
    assert ada.as_json()["note"] == NOTHING_ALIKE


def test_work_of_which_half_was_done_by_nobody_else_has_nothing_expected() -> None:
    def ada(own: int) -> GroupRate:
        found = group_rates(
            together(
                jobs(*[SETTLED] * 20, names=("Ada",), system="brakes"),
                jobs(*[SETTLED] * own, names=("Ada",), system="electrical"),
                jobs(*[SETTLED] * 30, names=("Bo",), system="brakes"),
            ),
            "technician",
        )
        return next(group for group in found if group.name == "Ada")

    assert (ada(20).expected, ada(20).reading) == (None, NOTHING_ALIKE)
    assert ada(19).expected is not None


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
