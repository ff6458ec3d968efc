"""The demo's days: whole weeks are moved, weekdays hold, and nothing lies in the future."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from demo_shop.plain_jobs import PlainYears
from demo_shop.shop_calendar import WRITTEN_MONDAY, ShopCalendar
from demo_shop.written_jobs import JOBS
from demo_shop.written_returns import RETURNS

MOMENTS = st.datetimes(
    min_value=datetime(2024, 1, 1),  # noqa: DTZ001
    max_value=datetime(2060, 1, 1),  # noqa: DTZ001
    timezones=st.just(UTC),
)
A_WEEK = [datetime(2026, 11, 16, 7, 5, tzinfo=UTC) + timedelta(days=d) for d in range(7)]


@given(MOMENTS)
def test_the_last_monday_becomes_this_weeks(now: datetime) -> None:
    calendar = ShopCalendar(now)
    monday = calendar.day(f"{WRITTEN_MONDAY:%m-%d}")
    assert monday.weekday() == 0
    assert 0 <= (now.date() - monday).days < 7


@given(MOMENTS, st.dates(date(2026, 1, 1), date(2026, 9, 28)))
def test_weekdays_and_distances_hold(now: datetime, written: date) -> None:
    calendar = ShopCalendar(now)
    moved = calendar.day(f"{written:%m-%d}")
    assert moved.weekday() == written.weekday()
    assert calendar.day("09-28") - moved == WRITTEN_MONDAY - written


@pytest.mark.parametrize("now", A_WEEK)
def test_nothing_that_is_told_is_still_to_come(now: datetime) -> None:
    calendar = ShopCalendar(now)
    told = [calendar.at(moment) for job in JOBS for moment in (job.came, job.left) if moment]
    told += [calendar.at(judged.on) for judged in RETURNS]
    told += [job.left for job in PlainYears(7, calendar).jobs()]
    assert max(told) < now


@pytest.mark.parametrize("now", A_WEEK)
def test_the_same_seed_and_day_tell_the_same_jobs(now: datetime) -> None:
    later = now + timedelta(hours=9)
    one = PlainYears(7, ShopCalendar(now)).jobs()
    other = PlainYears(7, ShopCalendar(later)).jobs()
    assert [(j.concern, j.came, j.car.vin) for j in one] == [
        (j.concern, j.came, j.car.vin) for j in other
    ]


def test_another_seed_tells_other_jobs() -> None:
    calendar = ShopCalendar(A_WEEK[0])
    one, other = (PlainYears(seed, calendar).jobs() for seed in (7, 8))
    assert [job.concern for job in one] != [job.concern for job in other]


def test_working_days_leave_weekends_out() -> None:
    sunday = ShopCalendar(A_WEEK[6])
    assert sunday.workday_before_today() == date(2026, 11, 20)
    assert ShopCalendar(A_WEEK[0]).workday_before_today(2) == date(2026, 11, 12)
