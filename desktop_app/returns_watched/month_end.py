"""Calendar months after a day, and what they are in days."""

from __future__ import annotations

from calendar import monthrange
from datetime import date


def months_after(day: date, months: int) -> date:
    """Return the day so many calendar months later: the same date of that month.

    Where that month is shorter it is its last day: 31 January and one month is 28 February, or 29
    in a leap year. So counts Regulation (EEC, Euratom) 1182/71, Article 3 (2) (c), from memory: a
    period of months ends with the last hour of the same date, or else with the last day of the
    month.
    """
    years, month = divmod(day.month - 1 + months, 12)
    year = day.year + years
    if year > date.max.year:
        return date.max
    return date(year, month + 1, min(day.day, monthrange(year, month + 1)[1]))


def most_days_of_months(months: int) -> int:
    """Return the most days that so many calendar months can have, wherever they begin."""
    starts = (date(year, month, 1) for year in range(2023, 2027) for month in range(1, 13))
    return max(days_of_months(start, months) for start in starts)


def days_of_months(day: date, months: int) -> int:
    """Return how many days after a day so many calendar months end."""
    return (months_after(day, months) - day).days
