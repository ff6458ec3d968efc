"""From which day on the customers of the jobs on watch are to be asked, read from the record."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from sqlalchemy import Connection

from desktop_app.returns_watched.ask_list import JobBeside
from desktop_app.returns_watched.call_due import call_due
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_watch_place import read_beside
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.weekly_report.year_behind import YearBehind


def read_calls_due(
    connection: Connection, watch: Sequence[WatchedJob], year: YearBehind, after_days: int
) -> dict[str, date]:
    """Return the day by job number; jobs that need no asking are left out.

    What was answered after the year's last day is not known on it.
    """
    watched = {job.job for job in watch}
    done = {job.number: job for job in year.jobs if job.number in watched}
    answers = read_answers(connection, [job.job_id for job in watch if job.job in done])
    older = read_beside(connection, [job.job_id for job in watch if job.job not in done])
    found: dict[str, date] = {}
    for job in watch:
        own = done.get(job.job)
        beside = (
            older[job.job_id]
            if own is None
            else JobBeside(
                now_and_then=own.now_and_then,
                proof_level=own.proof_level,
                answers=answers.get(job.job_id, ()),
            )
        )
        due = call_due(job, _as_it_stood(beside, year.last), after_days)
        if due is not None:
            found[job.job] = due
    return found


def _as_it_stood(beside: JobBeside, on: date) -> JobBeside:
    if not beside.answers:
        return beside
    return replace(beside, answers=tuple(said for said in beside.answers if said.on <= on))
