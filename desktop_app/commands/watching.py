"""`returns` and `watch`: who came back, and which windows are open."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import TYPE_CHECKING

from desktop_app.commands.days_said import day_said, span_said
from desktop_app.commands.opened_shop import shop_of, symptom_names
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.returns_watched.met_by import is_aside

if TYPE_CHECKING:
    from desktop_app.returns_watched.stored_return_rows import ReturnsFound
    from desktop_app.returns_watched.watching import WatchedJob


def returns(asked: Asked) -> Outcome:
    """List the returns, judged or not, by the day on which the later job was opened."""
    from desktop_app.returns_watched.stored_returns import find_returns

    since, until = span_said(asked)
    with shop_of(asked) as record, record.reading() as connection:
        found = find_returns(connection, since, until, symptom_names())
    return Outcome((one.as_json() for one in found.candidates), _return_lines(found))


def _return_lines(found: ReturnsFound) -> Iterator[str]:
    said = False
    for row in found.rows():
        said = True
        yield (
            f"{row.later} after {row.earlier}: {row.apart('mi')}; "
            f"{row.candidate.why() or 'judged by hand'}; "
            f"{row.state_words}"
            f"{'' if row.in_window else ' (beyond the window)'}"
            f"{' (not counted: its cause is not ours)' if is_aside(row) else ''}"
        )
    if not said:
        yield "Nobody came back in that time."


def watch(asked: Asked) -> Outcome:
    """List the jobs whose window is open."""
    from desktop_app.returns_watched.stored_returns import read_watch

    today = day_said("--today", asked.today)
    with shop_of(asked) as record, record.reading() as connection:
        day = today or record.clock().date()
        jobs = read_watch(connection, day)
        lines = tuple(_watched_line(job, day) for job in jobs)
    return Outcome([job.as_json() for job in jobs], lines or ("No window is open.",))


def _watched_line(job: WatchedJob, today: date) -> str:
    from desktop_app.returns_watched.watch_words import days_in_words

    left = [] if job.days_left is None else [days_in_words(job.days_left)]
    if job.miles_left is not None:
        left.append(f"{job.miles_left:,.0f} miles")
    by = " as last read" if job.miles_left is not None else ""
    said = f" {', '.join(left)} left{by};" if left else ""
    if job.window.miles and job.not_read_since:
        said += " miles not read since;"
    if job.expected_close is None:
        return f"{job.job}  {job.vehicle}:{said} ends by distance alone, nobody can say when"
    end = f"{job.expected_close.isoformat()} by {job.expected_close_by}"
    ends = "expected to end" if job.expected_close >= today else "may have ended"
    return f"{job.job}  {job.vehicle}:{said} {ends} {end}"
