"""What somebody has to do about a week: returns to judge, customers to ask, late promises."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from desktop_app.language import tr
from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.weekly_report.before_the_year import Promised
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import ToDo
from desktop_app.weekly_report.sheet_names import CAME_BACK, CHANGES, MONEY_OWED, RAW, WINDOWS


def to_act_on(figures: WeekFigures) -> tuple[ToDo, ...]:
    """Return what is to be done, what could hurt somebody first; nothing that has no job."""
    waits = [one.row for one in figures.year.returns if one.row.waits]
    late = [one for one in open_changes(figures) if one.change.is_late(figures.as_of)]
    day = figures.as_of.isoformat()  # of a week that is over its last day, and not today
    asked = (
        (tr("Somebody could have been hurt"), _opened(dangerous(figures)), CAME_BACK),
        (
            tr("Nobody said whether somebody could have been hurt"),
            _opened(danger_not_said(figures)),
            CAME_BACK,
        ),
        (tr("To be judged, of any week"), _opened(waits), RAW),
        (tr("To be asked by {day}", day=day), calls_now(figures), WINDOWS),
        (
            tr("The window probably ends within {days} days of {day}", days=ENDS_SOON, day=day),
            [job.job for job in ending_soon(figures)],
            WINDOWS,
        ),
        (tr("A promised change is late"), [one.earlier for one in late], CHANGES),
        (tr("A supplier owes for it"), [one.job_number for one in figures.year.owed], MONEY_OWED),
    )
    return tuple(
        ToDo(words, tuple(dict.fromkeys(jobs)), sheet) for words, jobs, sheet in asked if jobs
    )


def is_to_come(figures: WeekFigures) -> bool:
    """Tell whether the week has not begun."""
    return figures.as_of < figures.week.monday


def dangerous(figures: WeekFigures) -> list[ReturnRow]:
    """Return the dangerous returns: the week's, those judged in it, and all that wait."""
    monday = figures.week.monday
    rows = (one.row for one in figures.year.returns)
    return [row for row in rows if row.dangerous and (row.waits or _last_touched(row) >= monday)]


def danger_not_said(figures: WeekFigures) -> list[ReturnRow]:
    """Return the week's returns of which nobody said whether they were dangerous."""
    asked = list(asked_about(figures))
    said = {row.visit for row in figures.came_back if row.dangerous is not None}
    return [row for row in asked if row.visit not in said]


def asked_about(figures: WeekFigures) -> Iterator[ReturnRow]:
    """Yield the week's returns that count as a comeback or wait, a visit once each."""
    for row, counts_as in zip(figures.came_back, figures.counts_as, strict=True):
        if counts_as != "not counted":
            yield row


def open_changes(figures: WeekFigures) -> list[Promised]:
    """Return the changes that were promised after a return and are not made."""
    return [one for one in figures.year.promised() if one.change.is_open(figures.as_of)]


def ending_soon(figures: WeekFigures) -> list[WatchedJob]:
    """Return the jobs under watch whose window probably ends within a week."""
    return [
        job
        for job in figures.on_watch
        if job.expected_close is not None
        and 0 <= (job.expected_close - figures.as_of).days <= ENDS_SOON
    ]


def calls_now(figures: WeekFigures) -> list[str]:
    """Return the numbers of the jobs whose customers are to be asked by now."""
    return [job for job, day in figures.calls_due.items() if day <= figures.as_of]


def _last_touched(row: ReturnRow) -> date:
    """Return the day on which it came, was told or was judged, whichever is the latest."""
    judged = row.judged_at
    return row.came_on if judged is None else max(row.came_on, date.fromisoformat(judged[:10]))


def _opened(rows: Iterable[ReturnRow]) -> list[str]:
    return [row.opens for row in rows]
