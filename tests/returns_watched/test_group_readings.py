"""How a group's rate is to be read in words: what luck explains, and what nobody can tell."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.funnel import chance_of_so_many, luck_gives
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEWER,
    MAY_BE_LUCK,
    MORE,
    NOT_OVER,
    NOTHING_ALIKE,
    TOO_FEW,
    WITHIN,
    By,
    group_rates,
)
from tests.returns_watched.test_honest_numbers import BACK, OPEN, SETTLED, jobs, together


def some_of(name: str, back: int, quiet: int, system: str = "ignition") -> CountedJobs:
    """Settled jobs of one person, so many of them back."""
    return jobs(*[BACK] * back, *[SETTLED] * quiet, names=(name,), system=system)


def readings(*some: CountedJobs) -> dict[str, str]:
    """How the figures of each group are to be read."""
    return {group.name: group.reading for group in group_rates(together(*some), "technician")}


def test_each_group_is_read_in_words() -> None:
    others = [some_of(f"quiet {n}", 10, 90) for n in range(4)]
    found = readings(
        some_of("Ada", 30, 70),
        some_of("Bo", 0, 100),
        some_of("Cy", 1, 5),
        jobs(OPEN, names=("Di",)),
        some_of("Ed", 10, 40, system="brakes"),
        *others,
    )
    assert found["Ada"] == MORE
    assert found["Bo"] == FEWER
    assert found["Cy"] == TOO_FEW
    assert found["Di"] == NOT_OVER
    assert found["quiet 0"] == WITHIN


def test_who_alone_does_such_work_is_compared_with_nobody() -> None:
    assert readings(some_of("Ada", 20, 180, "brakes"), some_of("Bo", 5, 95)) == {
        "Ada": NOTHING_ALIKE,
        "Bo": NOTHING_ALIKE,
    }


def test_a_few_jobs_can_stand_out_without_a_rate() -> None:
    [worst, *_] = group_rates(together(some_of("Ada", 6, 0), some_of("Bo", 5, 195)), "technician")
    assert (worst.name, worst.reading, worst.note) == ("Ada", MORE, TOO_FEW)


def test_of_many_compared_one_beyond_its_range_may_be_luck() -> None:
    many = [some_of(f"quiet {n}", 10, 90) for n in range(12)]
    found = {g.name: g for g in group_rates(together(some_of("Ada", 19, 81), *many), "technician")}
    ada = found["Ada"]
    assert ada.luck is not None
    assert ada.beyond_luck
    assert ada.luck[0] < 10 < ada.luck[1] < ada.comebacks
    assert (ada.stands_out, ada.reading) == (False, MAY_BE_LUCK)


@given(st.integers(1, 200), st.floats(0.01, 0.9), st.data())
def test_the_range_of_luck_and_its_chance_agree(n: int, rate: float, data: st.DataObject) -> None:
    k = data.draw(st.integers(0, n))
    low, high = luck_gives(n, rate)
    if not low <= k <= high:
        assert chance_of_so_many(k, n, rate) <= 0.05 + 1e-9
    else:
        assert chance_of_so_many(k, n, rate) >= 0.05 - 1e-9


@pytest.mark.parametrize("by", ["system", "part-kind", "technician"])
def test_jobs_of_which_nothing_is_said_are_not_the_same_work(by: By) -> None:
    nothing = {"part_kinds": ((),) * 40, "systems": ("",) * 40}
    one, other = (
        replace(jobs(*[SETTLED] * 30, *[BACK] * 10, names=(name,)), **nothing)
        for name in ("one", "other")
    )
    found = group_rates(together(one, other), by)
    assert [(group.alike, group.by_system, group.expected) for group in found] == [(0, 0, None)] * 2


def test_what_luck_gives_is_not_said_of_too_few_jobs() -> None:
    few, many = (
        jobs(*[SETTLED] * 10, *[BACK], names=("few",)),
        jobs(*[SETTLED] * 90, names=("many",)),
    )
    found = {group.name: group for group in group_rates(together(few, many), "technician")}
    assert found["few"].luck is not None
    assert found["few"].luck_told is None
    assert not found["few"].stands_out
