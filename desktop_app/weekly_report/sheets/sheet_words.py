"""What the sheets share: their repeated line, columns, amounts, units."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from desktop_app.repair_jobs.distance import from_miles
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Column, Kind

NAMELESS = "Names are left out. The house rule “names in book” puts them in, for the owner alone."


def about(figures: WeekFigures, rows: int | None, period: str = "") -> str:
    """Return the line that every sheet repeats: whose, which week, when it was made, how many."""
    week = figures.week
    words = [
        figures.shop.name,
        period or f"{week}, {week.monday.isoformat()} to {week.sunday.isoformat()}",
        f"made {figures.made_at:%Y-%m-%d %H:%M}",
    ]
    if rows is not None:
        words.append("1 row" if rows == 1 else f"{rows:,} rows")
    return " · ".join(words)


def year_words(figures: WeekFigures) -> str:
    """Return the period of the sheets that look back over a year."""
    year = figures.year
    return f"{figures.week}, jobs handed over {year.first.isoformat()} to {year.last.isoformat()}"


def weeks_ago(figures: WeekFigures, day: date) -> int:
    """Return how many weeks before the reported one a day lies; 0 for the week itself."""
    return -((day - figures.week.monday).days // 7)


def columns(*pairs: tuple[str, Kind] | Column) -> tuple[Column, ...]:
    """Return columns from (header, kind), or as they are."""
    return tuple(one if isinstance(one, Column) else Column(*one) for one in pairs)


def amount(cents: int | None) -> float | None:
    """Return cents as an amount."""
    return None if cents is None else cents / 100


def unit_words(figures: WeekFigures) -> str:
    """Return the shop's unit of distance as a word."""
    return "miles" if figures.shop.distance_unit == "mi" else "kilometres"


def distance(figures: WeekFigures, miles: float) -> float:
    """Return miles in the shop's unit."""
    return from_miles(miles, figures.shop.distance_unit)


def plural(number: int, one: str, many: str = "") -> str:
    """Return a count with its noun: "1 job", "3 jobs"."""
    return f"{number:,} {one if number == 1 else many or one + 's'}"


def joined(words: Iterable[str]) -> str:
    """Return words as one cell, each once."""
    return ", ".join(dict.fromkeys(word for word in words if word))
