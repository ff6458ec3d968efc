"""A week as ISO 8601 numbers it: Monday to Sunday, the first one holding the year's 4 January."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

_FORM = re.compile(r"([0-9]{4})-?[Ww]([0-9]{2})")


@dataclass(frozen=True, slots=True, order=True)
class Week:
    """One ISO week; `year` is the week's own year, which differs from the day's near New Year."""

    year: int
    number: int

    @property
    def monday(self) -> date:
        """The first day."""
        return date.fromisocalendar(self.year, self.number, 1)

    @property
    def sunday(self) -> date:
        """The last day."""
        return self.monday + timedelta(days=6)

    def moved(self, weeks: int) -> Week:
        """Return the week so many weeks later, or earlier with a negative number."""
        return week_of(self.monday + timedelta(weeks=weeks))

    def __str__(self) -> str:
        return f"{self.year:04d}-W{self.number:02d}"


def week_of(day: date) -> Week:
    """Return the week that a day lies in."""
    year, number, _ = day.isocalendar()
    return Week(year, number)


def read_week(text: str) -> Week:
    """Read "2026-W47"; a ShopTrouble says what is accepted or that the year has no such week."""
    match = _FORM.fullmatch(text.strip())
    if match is None:
        raise ShopTrouble(
            tr("“{text}” is not a week.", text=text.strip()[:40]),
            do=tr("Write year and week, like 2026-W47."),
        )
    year, number = int(match[1]), int(match[2])
    if not 1000 <= year <= 9000:
        raise ShopTrouble(
            tr("There are no weeks of {year:04d} here.", year=year),
            do=tr("Accepted: 1000 to 9000."),
        )
    try:
        date.fromisocalendar(year, number, 1)
    except ValueError:
        missing = tr("There is no week {year:04d}-W{number:02d}.", year=year, number=number)
        raise ShopTrouble(missing, do=_last_of(year)) from None
    return Week(year, number)


def _last_of(year: int) -> str:
    # 28 December always lies in its year's last week (ISO 8601: week 1 holds 4 January).
    last = week_of(date(year, 12, 28)).number
    return tr("The weeks of {year:04d} run from W01 to W{last}.", year=year, last=last)
