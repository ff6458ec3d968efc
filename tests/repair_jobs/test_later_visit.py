"""Whether a visit is a later one: by the days, and within a day by the clock where it can tell."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.later_visit import clock_of, is_later_visit

DAY = "2026-11-16"
EIGHT, TEN, THREE = (f"{DAY}T{hour}:00:00+00:00" for hour in ("08", "10", "15"))
NOON = f"{DAY}T12:00:00+00:00"  # as an import keeps a day


@pytest.mark.parametrize(
    ("came", "left", "came_again", "later"),
    [
        (EIGHT, TEN, THREE, True),
        (NOON, TEN, THREE, True),  # when it came at first does not matter
        (EIGHT, THREE, TEN, False),  # it was still here
        (EIGHT, TEN, TEN, False),  # not after the hand-over
        (EIGHT, None, THREE, False),
        (EIGHT, DAY, THREE, False),  # only the day of the hand-over is known
        (EIGHT, NOON, THREE, False),
        (EIGHT, TEN, DAY, False),  # only the day of the later coming is known
        (EIGHT, TEN, NOON, False),
        (EIGHT, f"{DAY}T10:00:00", THREE, False),  # nobody knows of which place this time is
        (EIGHT, f"{DAY}Tten", THREE, False),
        # One day by each computer's own calendar, one moment by the sun.
        (EIGHT, f"{DAY}T14:30:00+00:00", f"{DAY}T15:00:00+02:00", False),
        (EIGHT, f"{DAY}T14:30:00+02:00", f"{DAY}T14:00:00+00:00", True),
        # By the days nothing hangs on the clock.
        ("2026-11-13", DAY, DAY, True),
        ("2026-11-13T08:00:00+00:00", THREE, TEN, True),
        ("2026-11-13", "2026-11-17", DAY, False),
        (DAY, DAY, "2026-11-17", True),
    ],
)
def test_what_comes_after_the_hand_over_is_a_later_visit(
    came: str, left: str | None, came_again: str, later: bool
) -> None:
    assert is_later_visit(came, left, came_again) is later


def test_a_clock_that_was_set_back_makes_no_visit_its_own_return() -> None:
    assert not is_later_visit(TEN, EIGHT, TEN)


def test_the_hour_that_comes_twice_in_autumn_is_told_apart() -> None:
    summer, winter = "2026-10-25T02:30:00+02:00", "2026-10-25T02:10:00+01:00"
    assert is_later_visit("2026-10-25T01:00:00+02:00", summer, winter)


offsets = st.integers(-12, 14).map(lambda hours: timezone(timedelta(hours=hours)))
moments = st.builds(
    lambda day, second, zone: (
        datetime(2026, 3, day, tzinfo=zone) + timedelta(seconds=second)
    ).isoformat(),
    st.integers(1, 3),
    st.integers(0, 86_399),
    offsets,
)
kept = st.one_of(moments, moments.map(lambda at: at[:10]), moments.map(lambda at: at[:19]))


@given(kept, kept, kept, kept)
def test_no_two_visits_are_each_later_than_the_other(
    came: str, left: str, other_came: str, other_left: str
) -> None:
    """Where no job is handed over before the day of its coming, as the record refuses."""
    (came, left), (other_came, other_left) = (
        (one, two) if one[:10] <= two[:10] else (two, one)
        for one, two in ((came, left), (other_came, other_left))
    )
    assert not is_later_visit(came, left, came)
    assert not (
        is_later_visit(came, left, other_came) and is_later_visit(other_came, other_left, came)
    )


@given(kept, kept, kept)
def test_where_only_a_day_is_known_the_days_decide(came: str, left: str, again: str) -> None:
    by_days = came[:10] != again[:10] and left[:10] <= again[:10]
    assert is_later_visit(came, left[:10], again) is by_days
    assert is_later_visit(came, left, again[:10]) is by_days
    assert clock_of(again[:10]) is None
