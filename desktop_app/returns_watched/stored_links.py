"""What is kept about an earlier and a later job together: the judgement and what goes with it."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import damaged

Pair = tuple[str, str]


@dataclass(frozen=True, slots=True)
class LinkKept:
    """What is kept about a pair of jobs beside the judgement; money in cents."""

    why: str = ""
    cause_class: str | None = None
    cost_cents: int | None = None
    judged_by: str = ""
    judged_at: str | None = None
    change_promised: str = ""
    same_vehicle: bool = True


@dataclass(frozen=True, slots=True)
class JobDays:
    """A job's number and the days that decide whether it can have a return or be one."""

    number: str
    came_at: str
    left_at: str | None


def read_links(
    connection: Connection, numbers: Mapping[int, str], job_ids: Collection[int] | None
) -> tuple[dict[Pair, Judgement], dict[Pair, LinkKept]]:
    """Read by pair of job numbers what was judged, and all that is kept about the pairs."""
    judged: dict[Pair, Judgement] = {}
    links: dict[Pair, LinkKept] = {}
    for row in each_row(connection, select(ReturnLink), ReturnLink.later_job_id, job_ids):
        if row.earlier_job_id not in numbers or row.later_job_id not in numbers:
            continue
        pair = (numbers[row.earlier_job_id], numbers[row.later_job_id])
        links[pair] = LinkKept(
            row.why,
            row.cause_class,
            row.cost_cents,
            row.judged_by,
            row.judged_at,
            row.change_promised,
            bool(row.same_vehicle),
        )
        if row.judgement is not None:
            judged[pair] = _judgement(row.judgement)
    return judged, links


def _judgement(kept: str) -> Judgement:
    try:
        return Judgement(kept)
    except ValueError as error:
        raise damaged(kept, "a judgement") from error


def link_between(connection: Connection, earlier_job: int, later_job: int) -> Any:
    """Return the kept row about two jobs, or None."""
    wanted = select(ReturnLink).where(
        ReturnLink.earlier_job_id == earlier_job, ReturnLink.later_job_id == later_job
    )
    return connection.execute(wanted).first()


def job_days(connection: Connection, job_id: int) -> JobDays | None:
    """Return a job's number and days, or None where there is no such job."""
    wanted = (
        select(Job.number, Visit.came_at, Job.left_at)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    )
    row = connection.execute(wanted).first()
    return None if row is None else JobDays(row.number, row.came_at, row.left_at)
