"""All that Under Watch shows: the open windows, and whom to ask."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import Connection, Row, select

from desktop_app.repair_jobs.kept_job import kept_every, kept_level, kept_promise
from desktop_app.repair_jobs.stored import Customer, Job, Visit
from desktop_app.returns_watched.ask_list import JobBeside, ToAsk, whom_to_ask
from desktop_app.returns_watched.customer_answers import CustomerSaid
from desktop_app.returns_watched.kind_windows import promise_words
from desktop_app.returns_watched.plane_path import PlanePath, plane_path
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.kept_value import row_place


@dataclass(frozen=True, slots=True)
class WatchPlace:
    """The jobs on watch, what ends first at the top; whom to ask.

    In the order of the jobs, `paths` are their ways in the plane and `promises` whose window it is.
    """

    jobs: tuple[WatchedJob, ...] = ()
    to_ask: tuple[ToAsk, ...] = ()
    paths: tuple[PlanePath, ...] = ()
    promises: tuple[str, ...] = ()


def read_watch_place(connection: Connection, today: date) -> WatchPlace:
    """Read what is under watch on a day, and whom to ask on it."""
    jobs = read_watch(connection, today)
    beside = read_beside(connection, [job.job_id for job in jobs])
    after = read_rules(connection).ask_after_days
    return WatchPlace(
        jobs=jobs,
        to_ask=whom_to_ask(jobs, beside, today, after),
        paths=tuple(plane_path(job, today) for job in jobs),
        promises=tuple(beside[job.job_id].promise for job in jobs),
    )


def read_beside(connection: Connection, job_ids: Collection[int]) -> dict[int, JobBeside]:
    """Read by job who is to be rung up, how the fault came, and what was answered already."""
    answers = read_answers(connection, job_ids)
    wanted = (
        select(
            *(Job.id, Job.number, Job.fault_every, Job.fault_every_unit, Job.proof_level),
            *(Job.window_from, Job.window_months),
            *(Customer.name, Customer.phone),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .outerjoin(Customer, Customer.id == Visit.customer_id)
    )
    rows = each_row(connection, wanted, Job.id, job_ids)
    return {row.id: _beside(row, answers.get(row.id, ())) for row in rows}


def _beside(row: Row[Any], answers: tuple[CustomerSaid, ...]) -> JobBeside:
    place = row_place("job", row.id, row.number)
    kept_promise(row.window_months, row.window_from, place)
    return JobBeside(
        customer=row.name or "",
        phone=row.phone or "",
        now_and_then=kept_every(row.fault_every, row.fault_every_unit, place) is not None,
        proof_level=kept_level(row.proof_level, place),
        promise=promise_words(row.window_from, row.window_months),
        answers=answers,
    )
