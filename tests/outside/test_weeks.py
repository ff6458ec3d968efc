"""ISO 8601 weeks: week 1 holds the year's first Thursday."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.week import Week, read_week, week_of

# The first seven are the familiar published list (from memory), the rest follows from the rule.
WEEKS = [
    ("2005-01-01", (2004, 53, 6)),
    ("2005-01-02", (2004, 53, 7)),
    ("2006-01-01", (2005, 52, 7)),
    ("2007-01-01", (2007, 1, 1)),
    ("2007-12-31", (2008, 1, 1)),
    ("2008-12-29", (2009, 1, 1)),
    ("2010-01-03", (2009, 53, 7)),
    ("2009-12-31", (2009, 53, 4)),
    ("2010-01-04", (2010, 1, 1)),
    ("2020-12-31", (2020, 53, 4)),
    ("2026-12-31", (2026, 53, 4)),
    ("2027-01-03", (2026, 53, 7)),
]


@pytest.mark.parametrize(("day", "week"), WEEKS)
def test_days_fall_in_their_published_week(day: str, week: tuple[int, int, int]) -> None:
    year, number, weekday = week
    one = week_of(date.fromisoformat(day))
    assert one == Week(year, number)
    assert (date.fromisoformat(day) - one.monday).days == weekday - 1


def test_only_some_years_have_a_week_53() -> None:
    # Follows from the rule; 71 in every 400 years.
    long_years = [year for year in range(2000, 2041) if has_week_53(year)]
    assert long_years == [2004, 2009, 2015, 2020, 2026, 2032, 2037]
    assert sum(has_week_53(year) for year in range(2000, 2400)) == 71


def has_week_53(year: int) -> bool:
    """Ask the reader of weeks, which refuses a week that the year does not have."""
    try:
        return read_week(f"{year}-W53") == Week(year, 53)
    except ShopTrouble:
        return False
