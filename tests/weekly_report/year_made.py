"""A year of jobs made in memory, for tests of the sheets: no record, only what is asked."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from typing import Any

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.return_cost import ReturnCost
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.figures import (
    ShopWords,
    WeekFigures,
    WeekRows,
    week_figures,
)
from desktop_app.weekly_report.week import Week
from desktop_app.weekly_report.year_behind import JobDone, ReturnDone, YearBehind

WEEK = Week(2026, 46)
LAST = WEEK.sunday
SHOP = ShopWords("Tin Heron Garage", "mi", "$", "A4", 90, 3000, "first")


def done(number: str, days_gone: int = 200, **more: Any) -> JobDone:
    """A counted job that left so many days before the week's Sunday; well unless said otherwise."""
    fields: dict[str, Any] = {
        "number": number,
        "left_on": LAST - timedelta(days=days_gone),
        "vehicle": f"car {number}",
        "counted": True,
        "cause_found": True,
        "correction": "put right",
        "system": "ignition",
        "symptoms": (),
        "parts": (),
        "technician": "Ada",
        "hours": None,
        "unbilled_hours": None,
        "price_cents": None,
        "proof_level": 2,
        "now_and_then": False,
        "window_days": 90,
        "window_miles": 3000.0,
        "days_gone": days_gone,
        "state": "came back" if more.get("back_after") is not None else "nothing heard",
        **more,
    }
    fields.setdefault("counts_from", fields["window_days"] or NO_LAST_DAY)
    return JobDone(**fields)


def came(
    job: JobDone,
    later: str,
    days: int,
    miles: float | None = None,
    judgement: Judgement | None = Judgement.SAME_PART,
    cause: str | None = None,
    cost: ReturnCost | None = None,
) -> ReturnDone:
    """A return of a job so many days after it left."""
    candidate = Candidate(
        job.number,
        later,
        days,
        miles,
        True,
        "time",
        ("same system: x",),
        0.1,
        job.number,
        judgement,
    )
    came_on = job.left_on + timedelta(days=days)
    row = ReturnRow(candidate, 1, 2, job.vehicle, job.left_on, came_on, cause_class=cause)
    return ReturnDone(row, cost=cost)


def figures(
    jobs: Sequence[JobDone], returns: Sequence[ReturnDone] = (), shop: ShopWords = SHOP
) -> WeekFigures:
    """The figures of the week 2026-W46 over these jobs and returns of the year before it."""
    first: date = WEEK.moved(-51).monday
    year = YearBehind(first, LAST, tuple(jobs), tuple(returns))
    shown = WEEK.moved(-25).monday
    behind = tuple(one.row for one in returns if one.row.came_on >= shown)
    left = tuple(job.left_on for job in jobs if job.left_on >= shown)
    rows = WeekRows((), (), (), left, behind, year)
    return week_figures(WEEK, datetime(2026, 11, 16, 12, tzinfo=UTC), LAST, shop, rows)
