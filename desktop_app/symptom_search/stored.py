"""How past jobs are read: as they are shown and weighed, and what mended them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from typing import NamedTuple

from sqlalchemy import Connection, func, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.shop_record.databases.dialect_search import JobText, read_texts
from desktop_app.shop_record.databases.listed import among
from desktop_app.symptom_search.filters import vehicle_class


class JobSeen(NamedTuple):
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
    for row in connection.execute(_JOB_LINES.where(Job.id.in_(among(wanted)))).all():
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


def vehicle_classes(connection: Connection, most: int) -> tuple[str, ...]:
    """Return the classes of the vehicles, the commonest first."""
    counted: Counter[str] = Counter()
    described = select(Vehicle.description, func.count()).group_by(Vehicle.description)
    for description, vehicles in connection.execute(described):
        counted[vehicle_class(description)] += vehicles
    del counted[""]
    return tuple(sorted(counted, key=lambda one: (-counted[one], one))[:most])


def jobs_here_now(connection: Connection, most: int) -> list[int]:
    """Return the jobs of the cars that are in the shop now, the newest first.

    A visit ends with the last of its jobs, and jobs are known by when they left: so few rows are
    read, however many there are.
    """
    here = select(Job.visit_id).where(Job.left_at.is_(None))
    query = select(Job.id).where(Job.visit_id.in_(here)).order_by(Job.id.desc()).limit(most)
    return [row[0] for row in connection.execute(query)]


def jobs_latest(connection: Connection, most: int) -> list[int]:
    """Return the jobs written last."""
    return [r[0] for r in connection.execute(select(Job.id).order_by(Job.id.desc()).limit(most))]


def mended_by(connection: Connection, ids: Iterable[int]) -> dict[int, tuple[list[str], str]]:
    """Return of each job the part kinds fitted, by name, and its correction."""
    chosen = among(ids)
    mended: dict[int, tuple[list[str], str]] = {
        job: ([], correction)
        for job, correction in connection.execute(
            select(Job.id, Job.correction).where(Job.id.in_(chosen))
        )
    }
    fitted = KINDS_SAID.where(Pair.job_id.in_(chosen), Pair.fitted == 1)
    for job, kind in connection.execute(fitted.order_by(Pair.part_kind)):
        mended[job][0].append(kind)
    return mended


# A part whose kind nobody said is no fix with a name, and like no other part.
KINDS_SAID = select(Pair.job_id, Pair.part_kind).where(Pair.part_kind != "")
_JOB_LINES = (
    select(
        *(Job.id, Job.number, Job.concern, Job.cause, Job.correction, Job.left_at),
        *(Visit.came_at, Vehicle.description, Vehicle.plate, Vehicle.tag),
    )
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
)
