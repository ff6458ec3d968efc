"""Weeks are those of ISO 8601, and a week that a year does not have is refused."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.week import read_week, week_of

DAYS = st.dates(date(1900, 1, 1), date(2999, 12, 31))


@pytest.mark.parametrize(
    ("text", "monday"),
    [
        ("2026-W47", date(2026, 11, 16)),
        (" 2026-w47 ", date(2026, 11, 16)),
        ("2026W47", date(2026, 11, 16)),
        ("2026-W53", date(2026, 12, 28)),
        ("2020-W53", date(2020, 12, 28)),
        ("2025-W01", date(2024, 12, 30)),
    ],
)
def test_a_week_is_read_as_written(text: str, monday: date) -> None:
    # The years with 53 weeks are those whose 1 January, or whose 31 December, is a Thursday
    # (ISO 8601); 2020 and 2026 are such years, 2025 is not.
    week = read_week(text)
    assert (week.monday, week.sunday) == (monday, monday + timedelta(days=6))


def test_a_week_that_the_year_does_not_have_is_refused_with_the_last_one() -> None:
    with pytest.raises(ShopTrouble, match=r"no week 2025-W53.*W01 to W52"):
        read_week("2025-W53")


@pytest.mark.parametrize(
    "text", ["", "2026", "47", "2026-47", "2026-W00", "2026-W54", "2026-W7", "0000-W10", "٢٠٢٦-W47"]
)
def test_what_is_not_a_week_is_refused_with_what_is_accepted(text: str) -> None:
    with pytest.raises(ShopTrouble) as told:
        read_week(text)
    assert told.value.do


@given(DAYS)
def test_every_day_lies_in_its_own_week_and_the_week_reads_back(day: date) -> None:
    week = week_of(day)
    assert week.monday <= day <= week.sunday
    assert week.monday.weekday() == 0
    assert read_week(str(week)) == week


@given(DAYS, st.integers(-600, 600))
def test_moving_on_and_back_is_the_same_week(day: date, weeks: int) -> None:
    week = week_of(day)
    assert week.moved(weeks).moved(-weeks) == week
    assert week.moved(1) > week
