"""Which generations stay: by example, and whatever was made when."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.shop_record.backups.generations_kept import days_without, is_due, which_stay

NOW = datetime(2026, 11, 16, 12)  # noqa: DTZ001 - generations are named by the shop's own clock
MOMENTS = st.sets(
    st.integers(-60 * 24 * 900, 60 * 24).map(lambda minutes: NOW + timedelta(minutes=minutes)),
    max_size=80,
)


def days_ago(*days: float) -> list[datetime]:
    return [NOW - timedelta(days=each) for each in days]


def test_all_of_two_days_stay() -> None:
    hours = [NOW - timedelta(hours=each) for each in range(48)]
    assert which_stay(hours, NOW) == set(hours)


def test_of_older_days_the_last_one_stays() -> None:
    day = NOW - timedelta(days=5)
    hours = [day - timedelta(hours=each) for each in range(4)]
    assert which_stay(hours, NOW) == {day}


def test_a_year_of_days_leaves_days_weeks_and_months() -> None:
    made = days_ago(*range(400))
    stay = sorted(which_stay(made, NOW), reverse=True)
    assert stay[:12] == made[:12]
    sundays = [NOW - timedelta(days=1 + 7 * week) for week in range(9)]
    assert set(sundays) <= set(stay)
    ends = [(2026, month) for month in range(10, 2, -1)]
    last_of_month = {max(m for m in made if (m.year, m.month) == each) for each in ends}
    assert last_of_month <= set(stay)
    assert len(stay) <= 12 + 10 + 9
    assert stay[-1] == datetime(2026, 3, 31, 12)  # noqa: DTZ001


def test_after_a_long_pause_what_there_is_stays() -> None:
    made = days_ago(300, 301, 302)
    assert which_stay(made, NOW) == set(made)


def test_a_clock_that_was_set_back_costs_nothing() -> None:
    made = days_ago(-40, -39, -38, 0)
    assert which_stay(made, NOW) == set(made)


def test_days_of_a_clock_that_ran_ahead_take_nobodys_place() -> None:
    true = [NOW - timedelta(days=n) for n in range(10)]
    ahead = [NOW + timedelta(days=n) for n in range(30, 60)]
    assert which_stay([*true, *ahead], NOW) == which_stay(true, NOW) | set(ahead)


@given(made=MOMENTS)
def test_the_newest_and_the_last_two_days_always_stay(made: set[datetime]) -> None:
    stay = which_stay(made, NOW)
    assert stay <= made
    assert {one for one in made if one > NOW - timedelta(days=2)} <= stay
    assert not made or max(made) in stay


@given(made=MOMENTS)
def test_no_more_stay_than_is_said(made: set[datetime]) -> None:
    older = {one for one in made if one <= NOW - timedelta(days=2)}
    assert len(which_stay(older, NOW)) <= 12 + 10 + 9


@given(made=MOMENTS)
def test_thinning_out_twice_takes_no_more(made: set[datetime]) -> None:
    stay = which_stay(made, NOW)
    assert which_stay(stay, NOW) == stay


@given(made=MOMENTS)
def test_as_many_days_weeks_and_months_stay_as_there_are(made: set[datetime]) -> None:
    stay = which_stay(made, NOW)
    for most, stretch in (
        (12, lambda one: one.date()),
        (10, lambda one: one.isocalendar()[:2]),
        (9, lambda one: (one.year, one.month)),
    ):
        newest = sorted({stretch(one) for one in made}, reverse=True)[:most]
        assert set(newest) <= {stretch(one) for one in stay}


@pytest.mark.parametrize("gaps", [[1], [1, 1, 3], [7], [2, 1]])
def test_day_by_day_it_always_reaches_back_seven_months(gaps: list[int]) -> None:
    """Thinned out after each backup, as it is done, the far end never comes nearer."""
    kept: set[datetime] = set()
    now = begin = NOW
    for number in range(300):
        now += timedelta(days=gaps[number % len(gaps)])
        kept = set(which_stay(kept | {now}, now))
        a_month_at_most = timedelta(days=31)  # of the first month the last one stays
        reach = min(now - begin - a_month_at_most, timedelta(days=7 * 30))
        assert now - min(kept) >= reach - timedelta(days=max(gaps))


@given(made=MOMENTS)
def test_one_is_due_until_the_day_has_one(made: set[datetime]) -> None:
    assert is_due(made, NOW) == (NOW.date() not in {one.date() for one in made})
    assert not is_due(made | {NOW}, NOW)


@pytest.mark.parametrize(
    ("newest", "since", "days"),
    [
        (None, None, 0),
        (None, NOW - timedelta(days=8), 8),
        (NOW - timedelta(days=6, hours=23), NOW - timedelta(days=80), 6),
        (NOW - timedelta(days=7), NOW - timedelta(days=80), 7),
        (NOW + timedelta(days=7), NOW - timedelta(days=80), 0),
    ],
)
def test_days_without_a_good_backup(
    newest: datetime | None, since: datetime | None, days: int
) -> None:
    assert days_without(newest, since, NOW) == days
