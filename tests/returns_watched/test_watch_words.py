"""What is said of a job on watch: its window, what is left of it, and how sure its end is."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.watch_end import ProbableEnd
from desktop_app.returns_watched.watch_words import (
    ends_in_words,
    in_one_breath,
    left_in_words,
    miles_in_words,
    state_of,
    window_in_words,
)
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

OUT, TODAY = date(2026, 10, 1), date(2026, 10, 21)
SOON, LATER = date(2026, 12, 1), date(2026, 12, 30)
JOB = WatchedJob(
    job_id=1,
    job="J-1",
    vehicle="van",
    concern="stalls",
    left_on=OUT,
    window=Window(90, 3000),
    days_gone=20,
    miles_gone=1000.0,
    read_on=date(2026, 10, 10),
    days_left=70,
    miles_left=2000.0,
    ends=ProbableEnd(SOON, SOON, SOON, "distance"),
    known=(date(2026, 10, 10), 1000.0),
)
UNREAD = replace(JOB, miles_gone=None, miles_left=None)


def ending(on: date, earliest: date, latest: date, window: Window) -> str:
    """The sentence of a job's end."""
    ends = ProbableEnd(on, earliest, latest, "distance")
    return in_one_breath(replace(JOB, window=window, ends=ends, days_left=None), "mi", TODAY)[2]


@pytest.mark.parametrize(
    ("window", "unit", "says"),
    [
        (Window(90, 3000), "mi", "90 days or 3,000 mi, whichever ends first"),
        (Window(365, 12_000, "both"), "mi", "365 days and 12,000 mi, until both have ended"),
        (Window(1, 0), "mi", "1 day"),
        (Window(0, 1000), "km", "1,609 km"),
    ],
)
def test_a_window_is_said_as_a_person_says_it(
    window: Window, unit: DistanceUnit, says: str
) -> None:
    assert window_in_words(window, unit) == says


def test_a_distance_that_nobody_knows_is_said_to_be_unknown() -> None:
    assert miles_in_words(None, "km") == "not known"


def test_a_comeback_is_told_from_a_job_that_waits_and_from_a_quiet_one() -> None:
    assert state_of(JOB) == "quiet"
    assert state_of(replace(JOB, waits=True)) == "to be judged"
    assert state_of(replace(JOB, came_back=True, waits=True)) == "came back"


def test_an_end_that_nobody_can_say_is_no_day() -> None:
    assert ends_in_words(None) == "nobody can say"


def test_miles_that_nobody_read_are_not_called_unknown() -> None:
    assert left_in_words(UNREAD, "mi") == "70 days, mi not read since"
    assert left_in_words(replace(UNREAD, read_on=None), "km") == "70 days, km not known"


def test_a_job_past_its_days_has_none_left() -> None:
    past = replace(JOB, days_left=-3)
    assert left_in_words(past, "mi") == "0 days, 2,000 mi"
    assert "0 days left, 2,000 mi by that reading." in in_one_breath(past, "mi", TODAY)[2]


def test_how_far_it_went_says_when_it_was_read_or_that_nobody_did() -> None:
    left = "Left 1 October 2026, 20 days ago"
    read = in_one_breath(JOB, "mi", TODAY)
    assert read[:2] == (
        "J-1: van, stalls.",
        f"{left}; 1,000 mi by 10 October 2026, when it was last read.",
    )
    assert in_one_breath(UNREAD, "mi", TODAY)[1] == f"{left}; the odometer was not read since."
    unknown = replace(UNREAD, read_on=None)
    assert in_one_breath(unknown, "mi", TODAY)[1] == (
        f"{left}; the odometer cannot say how far it went."
    )


@pytest.mark.parametrize(
    ("days_left", "miles_left", "says"),
    [
        (1, 2000.0, "1 day left, 2,000 mi by that reading. "),
        (None, 2000.0, "2,000 mi left by that reading. "),
        (1, None, "1 day left. "),
        (None, None, ""),
    ],
)
def test_what_is_left_names_only_limits_there_are(
    days_left: int | None, miles_left: float | None, says: str
) -> None:
    job = replace(JOB, days_left=days_left, miles_left=miles_left)
    assert in_one_breath(job, "mi", TODAY)[2] == f"{says}It ends 1 December 2026, by distance."


@pytest.mark.parametrize(
    ("window", "first", "last", "sure"),
    [
        (Window(90, 3000), SOON, LATER, ", by its time at the latest"),
        (Window(61, 3000, "both"), SOON, LATER, ", not before its time is over"),
        (Window(61, 3000), SOON, LATER, ", by distance"),
        (Window(0, 3000), SOON, LATER, ", by distance"),
    ],
)
def test_only_the_day_that_time_sets_is_called_sure(
    window: Window, first: date, last: date, sure: str
) -> None:
    says = f"It probably ends between 1 December 2026 and 30 December 2026{sure}."
    assert ending(first, first, last, window).endswith(says)


def test_a_bound_beyond_ten_years_says_until_when_nobody_knows() -> None:
    said = ending(SOON, SOON, date(2060, 1, 3), Window(61, 3000, "both"))
    assert said.endswith(", not before its time is over; nobody can say until when.")
    begun = ending(SOON, date(2026, 10, 11), date(2060, 1, 3), Window(0, 3000))
    assert begun.endswith(
        "It may have ended since 11 October 2026 already, by distance; nobody can say until when."
    )
