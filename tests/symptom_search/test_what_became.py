"""What became of a past job is said as the watch says it, and never better than it is known."""

from __future__ import annotations

import pytest

from tests.symptom_search.conftest import OldJobs

LEFT = "2026-03-02T16:00:00+00:00"
SOON, LATER = "2026-04-06", "2026-08-03"  # in the window of 90 days, and after it


def became(jobs: OldJobs) -> str:
    """Return what is said last of the first job."""
    found = jobs.find("brakes squeal")
    return next(hit.why[-1] for hit in found.hits if hit.number == "J-001")


def moment(day: str) -> str:
    return f"{day}T09:00:00+00:00"


def test_a_window_that_is_over_is_no_proof_that_it_stayed_fixed(old_jobs: OldJobs) -> None:
    old_jobs.job("brakes squeal", left=LEFT)
    assert became(old_jobs) == "nothing heard"


def test_a_customer_who_says_so_after_the_window_is(old_jobs: OldJobs) -> None:
    job = old_jobs.job("brakes squeal", left=LEFT)
    old_jobs.told(job, "fine", SOON)
    assert became(old_jobs) == "nothing heard"
    old_jobs.told(job, "fine", LATER)
    assert became(old_jobs) == "seen fine"


@pytest.mark.parametrize(
    ("concern", "came", "said"),
    [
        ("heater blows cold", LATER, "seen fine"),
        ("brakes squeal again", LATER, "came back after the window"),
        ("brakes squeal again", SOON, "a return waits to be judged"),
        ("heater blows cold", SOON, "nothing heard"),
    ],
)
def test_a_later_visit_counts_at_once_for_what_it_is(
    old_jobs: OldJobs, concern: str, came: str, said: str
) -> None:
    car = old_jobs.car("AB12 CDE")
    old_jobs.job("brakes squeal", car=car, left=LEFT)
    assert became(old_jobs) == "nothing heard"
    old_jobs.job(concern, car=car, left=moment(came))
    assert became(old_jobs) == said


@pytest.mark.parametrize(
    ("came", "said"),
    [
        ("2026-03-02T17:30:00+00:00", "a return waits to be judged"),
        ("2026-03-02T15:30:00+00:00", "nothing heard"),  # it was still here
        ("2026-03-02", "nothing heard"),  # nobody knows when
    ],
)
def test_a_visit_on_the_day_of_the_hand_over_is_a_later_one_by_the_clock(
    old_jobs: OldJobs, came: str, said: str
) -> None:
    car = old_jobs.car("AB12 CDE")
    old_jobs.job("brakes squeal", car=car, left=LEFT)
    old_jobs.job("brakes squeal again", car=car, left=came)
    assert became(old_jobs) == said


@pytest.mark.parametrize(
    ("judgement", "said"),
    [
        ("same symptom", "came back"),
        ("foretold", "nothing heard"),
        ("other hands", "nothing heard"),
        ("cannot tell", "came back, cannot tell"),
        ("unrelated", "nothing heard"),
    ],
)
def test_a_return_is_called_what_it_was_judged(
    old_jobs: OldJobs, judgement: str, said: str
) -> None:
    car = old_jobs.car("AB12 CDE")
    first = old_jobs.job("brakes squeal", car=car, left=LEFT)
    second = old_jobs.job("brakes squeal again", car=car, left=moment(SOON))
    old_jobs.came_back(first, second, judgement)
    assert became(old_jobs) == said


@pytest.mark.parametrize("judgement", ["foretold", "other hands", "cannot tell"])
def test_a_visit_after_the_window_that_counts_for_nothing_shows_the_car(
    old_jobs: OldJobs, judgement: str
) -> None:
    car = old_jobs.car("AB12 CDE")
    first = old_jobs.job("brakes squeal", car=car, left=LEFT)
    second = old_jobs.job("brakes squeal again", car=car, left=moment(LATER))
    old_jobs.came_back(first, second, judgement)
    assert became(old_jobs) == "seen fine"


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"cause_found": 0}, "not caught"),
        ({"left": moment("2026-11-10")}, "under watch"),
        ({"window_rule": "both"}, "under watch"),  # the miles that must end it were not read
    ],
)
def test_what_is_not_known_is_not_said(
    old_jobs: OldJobs, more: dict[str, object], said: str
) -> None:
    old_jobs.job("brakes squeal", **{"left": LEFT} | more)
    assert became(old_jobs) == said


def test_a_car_that_is_gone_is_lost_sight_of(old_jobs: OldJobs) -> None:
    job = old_jobs.job("brakes squeal", left=LEFT)
    old_jobs.told(job, "car is gone", SOON)
    assert became(old_jobs) == "lost sight"


def test_only_repairs_count_as_fixes_and_a_waiting_return_is_not_settled(
    old_jobs: OldJobs,
) -> None:
    pads = {"parts": ("brake-pads",), "left": LEFT}
    waits = old_jobs.job("brakes squeal", **pads)
    old_jobs.job("brakes squeal", **pads)
    old_jobs.job("brakes squeal", cause_found=0, **pads)
    old_jobs.job("brakes squeal", work="inspection", **pads)
    old_jobs.told(waits, "same trouble", SOON)
    found = old_jobs.find("brakes squeal")
    (fix,) = found.fixes
    assert (len(fix.jobs), fix.settled) == (2, 1)
    assert found.counted == 2
    said = fix.as_json()
    assert (said["jobs"], said["settled"], said["came_back"], said["rate"]) == (2, 1, 0, 0.0)
