"""Reading one return that was only told as it is judged, and the earlier job beside it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched.customer_answers import CustomerSaid, heard_words
from desktop_app.returns_watched.job_then import JobThen
from desktop_app.returns_watched.judged_before import (
    JudgedOnce,
    LinkChanged,
    judged_over_time,
)
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_judging import touching
from desktop_app.returns_watched.stored_links import job_days
from desktop_app.returns_watched.stored_then_now import Kinds, read_one
from desktop_app.returns_watched.stored_told import came_since
from desktop_app.returns_watched.told_now import ToldNow
from desktop_app.returns_watched.told_return import ToldReturn, told_returns
from desktop_app.shop_record.kept_value import kept_day


def told_in_answer(connection: Connection, job: int, asked: int) -> ToldReturn | None:
    """Return what was told in an answer, with the answers that belong to it; None where nothing."""
    known = job_days(connection, job)
    if known is None or known.left_at is None:
        return None
    left_on = kept_day(known.left_at)
    came = came_since(connection, job, left_on)
    told = told_returns(answers_of_job(connection, job), left_on, came)
    return next((one for one in told if asked in {each.id for each in one.answers}), None)


def judged_in(connection: Connection, asked: int) -> Judgement | None:
    """Return what a person decided about the telling that an answer is a part of; None: nothing."""
    job = connection.execute(select(CustomerAsked.job_id).where(CustomerAsked.id == asked)).scalar()
    told = None if job is None else told_in_answer(connection, job, asked)
    return None if told is None else told.judged_on.judgement


def read_told_judging(connection: Connection, job: int, asked: int) -> Judging | None:
    """Read what is said about a return that was told; None where it is not told any more."""
    told = told_in_answer(connection, job, asked)
    if told is None:
        return None
    wanted = select(Job.number, Person.name).outerjoin(Person, Person.id == Job.technician_id)
    row, said = connection.execute(wanted.where(Job.id == job)).one(), told.judged_on
    return Judging(
        earlier_id=job,
        later_id=told.answers[0].id,
        earlier=row.number,
        later=heard_words(told.source, told.on),
        first_by=row.name or "",
        judgement=said.judgement,
        judged_by=said.judged_by,
        judged_at=said.judged_at,
        why=said.why,
        cause_class=said.cause_class,
        decisions=_decisions(connection, said),
        heard_by=told.source,
        dangerous=told.dangerous,
    )


def read_then_and_told(
    connection: Connection, job: int, asked: int, kinds: Kinds, today: date
) -> tuple[JobThen, ToldNow] | None:
    """Read the earlier job and what was told of it; None where it is not told any more."""
    told = told_in_answer(connection, job, asked)
    if told is None:
        return None
    then = read_one(connection, job, kinds)
    seen = [day for day in came_since(connection, job, told.on) if day <= today]
    return then, ToldNow(told, unit_of(then.job), seen[-1] if seen else None)


def _decisions(connection: Connection, said: CustomerSaid) -> tuple[JudgedOnce, ...]:
    """Read from the history what was decided, oldest first; the last one holds now."""
    now = {
        "judgement": None if said.judgement is None else said.judgement.value,
        "judged_by": said.judged_by,
        "judged_at": said.judged_at,
        "cause_class": said.cause_class,
    }
    changes = touching(connection, CustomerAsked.__tablename__, said.id)
    return judged_over_time(now, map(_named, changes))


def _named(change: LinkChanged) -> LinkChanged:
    """Return a change with nobody as "", as it stands where a visit is judged."""

    def plain(row: Mapping[str, Any] | None) -> Mapping[str, Any] | None:
        if row is None or "judged_by" not in row:
            return row
        return {**row, "judged_by": row["judged_by"] or ""}

    before = plain(change.before)
    return LinkChanged(change.seq, change.at, change.who, change.reverses, before, change.after)
