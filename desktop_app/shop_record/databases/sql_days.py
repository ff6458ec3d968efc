"""Days inside a statement, in the words of each database: days are kept as text, 2026-11-16."""

from __future__ import annotations

from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, String
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.functions import GenericFunction


class DayOf(GenericFunction[str]):
    """The day of a moment that is kept as text."""

    type = String()
    name = "day_of"
    inherit_cache = True


class DaysBefore(GenericFunction[str]):
    """The day so many days before a day; the number may be a column."""

    type = String()
    name = "days_before"
    inherit_cache = True


def day_of(moment: Any) -> ColumnElement[str]:
    """Return the first ten letters of a moment: its day."""
    return DayOf(moment)


def days_before(day: date, days: Any) -> ColumnElement[str]:
    """Return the day so many days before, as text."""
    return DaysBefore(day.isoformat(), days)


@compiles(DayOf, "sqlite")
def _day(one: DayOf, compiler: Any, **more: Any) -> str:
    return f"substr({compiler.process(one.clauses, **more)}, 1, 10)"


@compiles(DayOf, "postgresql")
def _day_on_a_server(one: DayOf, compiler: Any, **more: Any) -> str:
    return f"left({compiler.process(one.clauses, **more)}, 10)"


@compiles(DaysBefore, "sqlite")
def _before(one: DaysBefore, compiler: Any, **more: Any) -> str:
    day, days = (compiler.process(piece, **more) for piece in one.clauses)
    return f"date({day}, '-' || {days} || ' days')"


@compiles(DaysBefore, "postgresql")
def _before_on_a_server(one: DaysBefore, compiler: Any, **more: Any) -> str:
    day, days = (compiler.process(piece, **more) for piece in one.clauses)
    # Twenty thousand years are beyond any window, and within the server's calendar.
    back = f"CAST(LEAST({days}, 700000) AS integer)"
    return f"to_char(CAST({day} AS date) - {back}, 'YYYY-MM-DD')"
