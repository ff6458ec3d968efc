"""Which jobs may be returns of which, and why."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import RunningMiles
from desktop_app.returns_watched.candidate import all_candidates, candidates
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.window import TIME_ONLY, Window

OUT = date(2026, 3, 2)


def job(number: str, opened: int, out: int | None = None, **facts: Any) -> JobFacts:
    """Make a job by the days, counted from one day, on which it was opened and handed over."""
    handed = None if out is None else OUT + timedelta(days=out)
    return JobFacts(number, "car", OUT + timedelta(days=opened), handed, **facts)


FIRST = job(
    "J-104",
    -2,
    0,
    odometer_out=RunningMiles(0, 118_420),
    symptoms=frozenset({"misfire"}),
    system="ignition",
    codes=frozenset({"P0300"}),
    code_families={"P0300": "misfire"},
    part_kinds=frozenset({"distributor-rotor"}),
)
AGAIN = replace(
    FIRST,
    number="J-131",
    opened_on=OUT + timedelta(days=41),
    handed_over_on=None,
    odometer_in=RunningMiles(0, 119_300),
)


def test_a_candidate_says_all_that_the_command_prints() -> None:
    (found,) = candidates([FIRST], AGAIN)
    assert found.as_json() == {
        "earlier": "J-104",
        "later": "J-131",
        "days": 41,
        "distance_miles": 880,
        "in_window": True,
        "decided_by": "time",
        "reasons": [
            "same symptom: misfire",
            "same system: ignition",
            "same code: P0300",
            "same part kind: distributor-rotor",
        ],
        "window_used": 41 / 90,
        "root": "J-104",
        "judgement": None,
    }
    assert found.waits


def test_one_family_of_codes_is_a_reason_of_its_own() -> None:
    later = job(
        "b",
        41,
        codes=frozenset({"P0302", "P0303"}),
        code_families={"P0302": "misfire", "P0303": "misfire"},
    )
    (found,) = candidates([FIRST], later)
    assert found.reasons == ("related code: P0300 and P0302",)


def test_the_customers_word_is_reason_enough() -> None:
    (found,) = candidates([FIRST], job("b", 41, customer_says_same=True))
    assert found.reasons == ("customer says it's the same",)


@pytest.mark.parametrize(
    ("opened", "out", "later_opened", "returns"),
    [
        (-2, 0, 0, True),  # back on the day it left
        (0, 0, 0, False),  # opened on one day: one visit
        (-2, None, 5, False),  # never handed over
        (-2, 6, 5, False),  # handed over after the later one was opened
        (-2, 0, -1, False),  # opened while the car was still here
        (-2, 0, 365, True),
        (-2, 0, 366, False),
    ],
)
def test_only_a_later_visit_can_be_a_return(
    opened: int, out: int | None, later_opened: int, returns: bool
) -> None:
    earlier = job("a", opened, out, system="ignition")
    later = job("b", later_opened, system="ignition")
    assert bool(candidates([earlier], later)) is returns
    assert bool(all_candidates([earlier, later])) is returns


@pytest.mark.parametrize(
    ("came", "left", "again", "returns"),
    [(8, 10, 15, True), (None, 10, 15, True), (8, 15, 10, False), (8, 10, None, False)],
)
def test_within_a_day_the_clock_says_which_visit_is_later(
    came: int | None, left: int, again: int | None, returns: bool
) -> None:
    earlier = job("a", 0, 0, system="ignition", came_clock=came, left_clock=left)
    later = job("b", 0, system="ignition", came_clock=again)
    found = candidates([earlier], later)
    assert [(one.days, one.window_used, one.decided_by) for one in found] == [
        (0, 0, TIME_ONLY)
    ] * returns
    assert all_candidates([earlier, later]) == found


def test_another_vehicle_is_no_return() -> None:
    assert candidates([replace(FIRST, vehicle="other")], AGAIN) == []


def test_beyond_the_window_and_inside_the_long_one_is_listed_as_outside() -> None:
    far = replace(AGAIN, odometer_in=RunningMiles(0, 118_420 + 3001))
    (found,) = candidates([FIRST], far)
    assert not found.in_window
    assert found.decided_by == "distance"
    assert candidates([FIRST], replace(AGAIN, odometer_in=RunningMiles(0, 130_421))) == []


@pytest.mark.parametrize(
    "odometer", [None, RunningMiles(1, 119_300), RunningMiles(0, 118_419), RunningMiles(0, 134_821)]
)
def test_an_odometer_that_cannot_say_leaves_time_alone(odometer: RunningMiles | None) -> None:
    (found,) = candidates([FIRST], replace(AGAIN, odometer_in=odometer))
    assert found.distance_miles is None
    assert found.decided_by == TIME_ONLY
    assert found.window_used == 41 / 90


def test_a_visit_without_a_reason_is_only_another_visit() -> None:
    wipers = job("b", 25, system="electrical")
    assert candidates([FIRST], wipers) == []


def test_a_job_keeps_the_window_it_was_handed_over_with() -> None:
    (found,) = candidates(
        [replace(FIRST, window=Window(400, 20_000))], job("b", 380, system="ignition")
    )
    assert found.in_window
    (found,) = candidates([replace(FIRST, window=Window(10, 500))], AGAIN)
    assert not found.in_window


def test_what_was_judged_stays_listed_and_leads_to_the_root() -> None:
    third = replace(AGAIN, number="J-150", opened_on=OUT + timedelta(days=80), system="")
    second = replace(AGAIN, handed_over_on=OUT + timedelta(days=43))
    late = job("J-200", 900)
    judged = {
        ("J-104", "J-131"): Judgement.SAME_SYMPTOM,
        ("J-104", "J-200"): Judgement.UNRELATED,
    }
    found = all_candidates([late, third, FIRST, second], judged=judged)
    assert [(c.earlier, c.later, c.root, c.judgement) for c in found] == [
        ("J-104", "J-131", "J-104", Judgement.SAME_SYMPTOM),
        ("J-104", "J-150", "J-104", None),
        ("J-131", "J-150", "J-104", None),
        ("J-104", "J-200", "J-104", Judgement.UNRELATED),
    ]
    assert candidates([FIRST, second, third], late, judged=judged) == [found[-1]]


def test_what_was_judged_of_a_job_that_is_not_among_those_read_is_passed_over() -> None:
    judged = {("J-99", "J-131"): Judgement.SAME_PART}
    [found] = all_candidates([FIRST, AGAIN], judged=judged)
    assert (found.earlier, found.later, found.judgement) == ("J-104", "J-131", None)


def test_a_placeholder_vehicle_costs_no_more_than_its_windows_hold() -> None:
    looked_at = 0

    class Counted(str):
        __slots__ = ()

        def __eq__(self, other: object) -> bool:
            nonlocal looked_at
            looked_at += 1
            return str.__eq__(self, other)

        __hash__ = str.__hash__

    jobs = [
        replace(job(f"{n:04}", n * 10, n * 10 + 1), vehicle=Counted("no plate"))
        for n in range(2000)
    ]
    assert all_candidates(jobs) == []
    assert looked_at < 2000 * 45


times = st.one_of(st.none(), st.integers(0, 9))
jobs_made = st.lists(
    st.builds(
        lambda vehicle, opened, stays, system, miles, same, clocks: (
            vehicle,
            opened,
            stays,
            system,
            miles,
            same,
            clocks,
        ),
        st.sampled_from("ab"),
        st.one_of(st.integers(0, 800), st.just(100)),
        st.one_of(st.none(), st.integers(0, 9)),
        st.sampled_from(["", "ignition", "fuel"]),
        st.one_of(st.none(), st.integers(0, 30_000)),
        st.booleans(),
        st.tuples(times, times),
    ),
    max_size=12,
)


def built(made: list[tuple[Any, ...]]) -> list[JobFacts]:
    return [
        JobFacts(
            f"J-{n}",
            vehicle,
            OUT + timedelta(days=opened),
            None if stays is None else OUT + timedelta(days=opened + stays),
            None if miles is None else RunningMiles(0, miles),
            None if miles is None else RunningMiles(0, miles),
            system=system,
            customer_says_same=same,
            came_clock=came,
            left_clock=left,
        )
        for n, (vehicle, opened, stays, system, miles, same, (came, left)) in enumerate(made)
    ]


@given(jobs_made, st.sampled_from(["first", "both"]), st.randoms())
def test_a_whole_history_finds_what_each_visit_finds(made: Any, rule: Any, shuffle: Any) -> None:
    jobs = built(made)
    window, long = Window(90, 3000, rule), Window(365, 12_000, rule)
    one_by_one = {
        (c.earlier, c.later): c for later in jobs for c in candidates(jobs, later, window, long)
    }
    whole = all_candidates(jobs, window, long)
    assert {(c.earlier, c.later): c for c in whole} == one_by_one
    shuffle.shuffle(jobs)
    assert all_candidates(jobs, window, long) == whole


@given(jobs_made)
def test_a_wider_window_never_loses_a_candidate(made: Any) -> None:
    jobs = built(made)
    narrow = {
        (c.earlier, c.later) for c in all_candidates(jobs, Window(30, 1000), Window(60, 2000))
    }
    wide = {(c.earlier, c.later) for c in all_candidates(jobs)}
    assert narrow <= wide
