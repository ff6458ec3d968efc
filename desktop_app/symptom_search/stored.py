"""How past jobs are read: as they are shown and weighed, and what became of them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, Text, column, func, select, table

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.shop_record.dialect_search import JobText, among, read_texts
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.symptom_search.fixes import MendedJob

# The judgements that make a return a comeback, and the table that keeps them; it belongs to a
# folder beside this one, so it is named here and not imported.
COMEBACKS = ("same symptom", "same system", "same part", "from our hands")
NOT_OURS = ("other-use", "new")
_RETURNS = table(
    "return_link",
    column("earlier_job_id"),
    column("judgement", Text),
    column("cause_class", Text),
)


@dataclass(frozen=True, slots=True)
class JobSeen:
    """One past job as it is shown and weighed; days are ISO dates.

    Concern, cause and correction are as they were written; the other texts are the index's words.
    """

    id: int
    number: str
    day: str
    left: str
    vehicle: str
    plate: str
    texts: Mapping[str, str]


def jobs_seen(connection: Connection, ids: Iterable[int]) -> dict[int, JobSeen]:
    """Read jobs as they are shown, by id."""
    wanted = list(ids)
    indexed = read_texts(connection, wanted)
    seen = {}
    for row in connection.execute(_job_lines().where(Job.id.in_(among(wanted)))):
        words = indexed.get(row.id, JobText())
        texts = {
            "concern": row.concern,
            "cause": row.cause,
            "correction": row.correction,
            "conditions": words.conditions,
            "codes": words.codes,
            "parts": words.parts,
            "vehicle": words.vehicle,
            "people": words.people,
        }
        seen[row.id] = JobSeen(
            row.id,
            row.number,
            row.came_at[:10],
            (row.left_at or "")[:10],
            row.description,
            row.plate or row.tag or "",
            texts,
        )
    return seen


def jobs_here_now(connection: Connection, most: int) -> list[int]:
    """Return the jobs of the cars that are in the shop now, the newest first."""
    query = select(Job.id).join(Visit, Visit.id == Job.visit_id).where(Visit.left_at.is_(None))
    return [row[0] for row in connection.execute(query.order_by(Job.id.desc()).limit(most))]


def jobs_latest(connection: Connection, most: int) -> list[int]:
    """Return the jobs written last."""
    return [r[0] for r in connection.execute(select(Job.id).order_by(Job.id.desc()).limit(most))]


def mended_jobs(connection: Connection, ids: Sequence[int]) -> list[MendedJob]:
    """Return those of the jobs that were handed over, with what mended them."""
    chosen = among(ids)
    replaced: dict[int, set[str]] = {}
    for job, kind in connection.execute(
        select(Pair.job_id, Pair.part_kind).where(Pair.job_id.in_(chosen), Pair.fitted == 1)
    ):
        replaced.setdefault(job, set()).add(kind)
    back = {
        row[0]
        for row in connection.execute(
            select(_RETURNS.c.earlier_job_id).where(
                _RETURNS.c.earlier_job_id.in_(chosen),
                _RETURNS.c.judgement.in_(COMEBACKS),
                func.coalesce(_RETURNS.c.cause_class, "").not_in(NOT_OURS),
            )
        )
    }
    rows = connection.execute(
        select(Job.id, Job.correction, Job.left_at, Job.window_days)
        .where(Job.id.in_(chosen), Job.left_at.is_not(None))
        .order_by(Job.id.desc())
    )
    return [
        MendedJob(
            job,
            frozenset(replaced.get(job, ())),
            correction,
            kept_day(str(left_at)),
            window,
            job in back,
        )
        for job, correction, left_at, window in rows
    ]


def _job_lines() -> Any:
    return (
        select(
            Job.id,
            Job.number,
            Job.concern,
            Job.cause,
            Job.correction,
            Job.left_at,
            Visit.came_at,
            Vehicle.description,
            Vehicle.plate,
            Vehicle.tag,
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    )
