"""What the sheets share: their repeated line, columns, amounts, units."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from desktop_app.figures_shown import figure
from desktop_app.language import as_shown, marked, tr
from desktop_app.repair_jobs.distance import from_miles
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Column, Kind

NAMELESS = tr(
    "Names are left out. The house rule “names in book” puts them in, for the owner alone."
)

_ORIGINS = (
    marked("new, vehicle maker's"),
    marked("new, other maker's"),
    marked("reman"),
    marked("rebuilt here"),
    marked("used"),
    marked("customer's own"),
)


def about(figures: WeekFigures, rows: int | None, period: str = "") -> str:
    """Return the line that every sheet repeats: whose, which week, when it was made, how many."""
    week = figures.week
    words = [
        figures.shop.name,
        period
        or tr(
            "{week}, {monday} to {sunday}",
            week=week,
            monday=week.monday.isoformat(),
            sunday=week.sunday.isoformat(),
        ),
        tr("made {made_at:%Y-%m-%d %H:%M}", made_at=figures.made_at),
    ]
    if rows is not None:
        words.append(tr("1 row") if rows == 1 else tr("{rows:,} rows", rows=rows))
    return " · ".join(words)


def year_words(figures: WeekFigures) -> str:
    """Return the period of the sheets that look back over a year."""
    year = figures.year
    return tr(
        "{week}, jobs handed over {first} to {last}",
        week=figures.week,
        first=year.first.isoformat(),
        last=year.last.isoformat(),
    )


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
    return tr("miles") if figures.shop.distance_unit == "mi" else tr("kilometres")


def distance(figures: WeekFigures, miles: float) -> float:
    """Return miles in the shop's unit."""
    return from_miles(miles, figures.shop.distance_unit)


def plural(number: int, one: str, many: str) -> str:
    """Return a count with its noun: "1 job", "3 jobs"."""
    return f"{figure(number, ',')} {one if number == 1 else many}"


def behind_told(row: ReturnRow) -> tuple[str, ...]:
    """Return the job to open for a return that was only told: its later one was never here."""
    return (row.opens,) if row.is_told else ()


def origin_words(origin: str) -> str:
    """Return how it is said where a part comes from; other words than ours as they were written."""
    return as_shown(origin, _ORIGINS)


def joined(words: Iterable[str]) -> str:
    """Return words as one cell, each once."""
    return ", ".join(dict.fromkeys(word for word in words if word))
