"""Past jobs as the word index takes them, read a few thousand at a time."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from functools import lru_cache
from typing import Any

from sqlalchemy import Connection, func, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.distance import KM_PER_MILE
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.shop_record.databases.dialect_search import JobText, read_texts
from desktop_app.shop_record.databases.listed import among
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.symptom_search.fixes import fix_words
from desktop_app.symptom_search.stored import KINDS_SAID
from desktop_app.symptom_search.stored_courses import CarsAfter, Left, read_courses
from desktop_app.symptom_search.word_forms import plain_words
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.course import COUNTED, NOT_CAUGHT
from desktop_app.symptom_search.word_index.entry import FIELDS, JobEntry, fix_key, marked

_REMEMBERED = 20_000


def entries_of(
    connection: Connection, ids: Sequence[int], last: Mapping[int, int] | None = None
) -> list[JobEntry]:
    """Return the entries of those jobs that there are, by rising ids.

    `last` gives the days of all vehicles' last visits, where many jobs are read piece by piece.
    """
    chosen = among(ids)
    texts = read_texts(connection, ids)
    rows = connection.execute(_JOBS.where(Job.id.in_(chosen)).order_by(Job.id)).all()
    days = [_day(row.left_at) for row in rows if row.left_at is not None] or [1]
    vehicles = [row.vehicle_id for row in rows]
    cars = CarsAfter(connection, vehicles, min(days), max(days), last)
    facts = _facts(connection, [*ids, *cars.jobs().difference(ids)])
    fitted = _grouped(connection, KINDS_SAID.where(Pair.job_id.in_(chosen), Pair.fitted == 1))
    left = [one for row in rows if (one := _left(row, cars, facts)) is not None]
    settled = {one.job: one.settles for one in left}
    courses = read_courses(connection, left, cars, facts)
    entries = []
    for row in rows:
        words = texts.get(row.id, _NOTHING)
        course, seen = courses.get(row.id, (0, 0))
        counted = is_counted(row.cause_found, row.cause, row.correction, row.work)
        course |= COUNTED if counted else NOT_CAUGHT if row.cause_found == 0 else 0
        is_repair = counted and row.left_at is not None
        entries.append(
            JobEntry(
                job=row.id,
                texts=tuple(getattr(words, field) for field in FIELDS),
                facts=(*facts.get(row.id, ()), *_car(row.description)),
                came=_day(row.came_at),
                left=entry.NOT_HANDED_OVER if row.left_at is None else _day(row.left_at),
                settles=settled.get(row.id, entry.NEVER_SETTLED),
                course=course,
                seen=seen,
                vehicle=row.vehicle_id,
                fixes=_fixes(fitted.get(row.id, ()), row.correction) if is_repair else (),
            )
        )
    return entries


def _left(row: Any, cars: CarsAfter, facts: Mapping[int, Collection[str]]) -> Left | None:
    """Return what is asked of a job that left, to find its returns; None while it is here."""
    if row.left_at is None:
        return None
    left = _day(row.left_at)
    settles = left + row.window_days if row.window_days > 0 else entry.NEVER_SETTLED
    if row.window_rule == "both" and row.window_miles > 0:
        per_mile = KM_PER_MILE if row.odometer_unit == "km" else 1
        driven = None if row.went is None else row.went + row.window_miles * per_mile
        settles = max(settles, cars.driven_on(row.vehicle_id, left, driven) or entry.NEVER_SETTLED)
    shares = _shared(facts.get(row.id, ()))
    return Left(row.id, left, settles, row.vehicle_id, shares, row.came_at, row.left_at)


def _shared(facts: Collection[str]) -> frozenset[str]:
    """Return of a job's facts those that make a later job with the same ones a possible return."""
    return frozenset(fact for fact in facts if fact.startswith(_SHARED))


_NOTHING = JobText()
_SHARED = tuple(marked(kind, "") for kind in (entry.SYMPTOM, entry.CODE, entry.PART, entry.SYSTEM))
_JOBS = (
    select(
        *(Job.id, Job.system, Job.cause_found, Job.cause, Job.correction, Job.work),
        *(Job.left_at, Job.window_days, Job.window_miles, Job.window_rule),
        *(Visit.came_at, Visit.vehicle_id, Vehicle.description, Vehicle.odometer_unit),
        func.coalesce(Job.odometer_out, Visit.odometer_out, Visit.odometer_in).label("went"),
    )
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
)


def _facts(connection: Connection, ids: Sequence[int]) -> dict[int, list[str]]:
    """Return each job's marked terms, each once: symptoms, conditions, codes, kinds, system."""
    chosen = among(ids)
    found: dict[int, list[str]] = {}
    facts: Sequence[tuple[str, Any]] = (
        (entry.SYMPTOM, select(JobSymptom.job_id, JobSymptom.symptom)),
        (entry.HAPPENS, _conditions(1)),
        (entry.NEVER, _conditions(0)),
        (entry.CODE, select(TroubleCode.job_id, TroubleCode.code)),
        (entry.PART, KINDS_SAID),
        (entry.SYSTEM, select(Job.id, Job.system).where(Job.system != "")),
    )
    for kind, query in facts:
        job = query.selected_columns[0]
        for row in connection.execute(query.where(job.in_(chosen)).distinct()).all():
            found.setdefault(row[0], []).append(marked(kind, row[1]))
    return found


def _conditions(happens: int) -> Any:
    return select(JobCondition.job_id, JobCondition.condition).where(
        JobCondition.happens == happens
    )


def _grouped(connection: Connection, query: Any) -> dict[int, list[str]]:
    found: dict[int, list[str]] = {}
    for row in connection.execute(query).all():
        found.setdefault(row[0], []).append(row[1])
    return found


def _fixes(kinds: Iterable[str], correction: str) -> tuple[int, ...]:
    """Return what mended a job: the kinds fitted, else the correction's words."""
    named = set(kinds) or {fix_words(correction)} - {""}
    return tuple(sorted(map(fix_key, named)))


@lru_cache(_REMEMBERED)
def _day(at: str) -> int:
    return kept_day(at).toordinal()


@lru_cache(_REMEMBERED)
def _car(description: str) -> tuple[str, ...]:
    words = dict.fromkeys(plain_words(description).split())
    return tuple(marked(entry.CAR, word) for word in words)
