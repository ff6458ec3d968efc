"""How past jobs are read: as they are shown and weighed, and what became of them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, Connection, Text, column, select, table
from sqlalchemy.orm import InstrumentedAttribute

from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.stored import Job, JobCondition, Person, TroubleCode, Vehicle, Visit
from desktop_app.shop_record.dialect_search import among
from desktop_app.symptom_search.fixes import MendedJob

# The judgements that make a return a comeback, and the table that keeps them; it belongs to a
# folder beside this one, so it is named here and not imported.
COMEBACKS = ("same symptom", "same system", "same part", "from our hands")
_RETURNS = table("return_link", column("earlier_job_id"), column("judgement", Text))


@dataclass(frozen=True, slots=True)
class JobSeen:
    """One past job as it is shown and weighed; days are ISO dates."""

    id: int
    number: str
    day: str
    left: str
    vehicle: str
    plate: str
    person: str
    texts: Mapping[str, str]


def jobs_seen(connection: Connection, ids: Iterable[int]) -> dict[int, JobSeen]:
    """Read jobs as they are shown, by id."""
    wanted = list(ids)
    codes = _listed(connection, TroubleCode.job_id, TroubleCode.code, wanted)
    parts = _listed(connection, Pair.job_id, Pair.part_kind, wanted)
    happens = _listed(
        connection, JobCondition.job_id, JobCondition.condition, wanted, JobCondition.happens == 1
    )
    terms: dict[int, list[str]] = {}
    for job, term in connection.execute(
        select(Pair.job_id, PartCondition.term)
        .join(PartCondition, PartCondition.pair_id == Pair.id)
        .where(Pair.job_id.in_(among(wanted)))
    ):
        terms.setdefault(job, []).append(term)
    seen = {}
    for row in connection.execute(_job_lines().where(Job.id.in_(among(wanted)))):
        conditions = [condition_words(one) for one in happens.get(row.id, ())]
        texts = {
            "concern": row.concern,
            "cause": row.cause,
            "correction": row.correction,
            "conditions": ", ".join(dict.fromkeys(conditions + terms.get(row.id, []))),
            "codes": ", ".join(dict.fromkeys(codes.get(row.id, ()))),
            "parts": ", ".join(dict.fromkeys(parts.get(row.id, ()))),
            "vehicle": row.description,
            "person": row.person or "",
        }
        seen[row.id] = JobSeen(
            row.id,
            row.number,
            row.came_at[:10],
            (row.left_at or "")[:10],
            row.description,
            row.plate or row.tag or "",
            row.person or "",
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
                _RETURNS.c.earlier_job_id.in_(chosen), _RETURNS.c.judgement.in_(COMEBACKS)
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
            date.fromisoformat(str(left_at)[:10]),
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
            Person.name.label("person"),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .outerjoin(Person, Person.id == Job.technician_id)
    )


def _listed(
    connection: Connection,
    job: InstrumentedAttribute[int],
    what: InstrumentedAttribute[str],
    ids: list[int],
    *where: ColumnElement[bool],
) -> dict[int, list[str]]:
    found: dict[int, list[str]] = {}
    query = select(job, what).where(job.in_(among(ids)), *where)
    for job_id, word in connection.execute(query):
        found.setdefault(job_id, []).append(word)
    return found
