"""Past jobs as the word index takes them, read a few thousand at a time."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.shop_record.dialect_search import JobText, among, read_texts
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.symptom_search.fixes import fix_words
from desktop_app.symptom_search.stored import came_back
from desktop_app.symptom_search.word_forms import plain_words
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.entry import FIELDS, JobEntry, fix_key, marked

_REMEMBERED = 20_000


def entries_of(connection: Connection, ids: Sequence[int]) -> list[JobEntry]:
    """Return the entries of those jobs that there are, by rising ids."""
    chosen = among(ids)
    texts = read_texts(connection, ids)
    facts = _facts(connection, ids)
    fitted = _grouped(
        connection,
        select(Pair.job_id, Pair.part_kind).where(Pair.job_id.in_(chosen), Pair.fitted == 1),
    )
    back = came_back(connection, ids)
    entries = []
    for job, system, correction, left_at, window, came_at, vehicle, described in connection.execute(
        _JOBS.where(Job.id.in_(chosen)).order_by(Job.id)
    ):
        words = texts.get(job, _NOTHING)
        left = _day(str(left_at)) if left_at is not None else entry.NOT_HANDED_OVER
        settles = left + window if left_at is not None and window > 0 else entry.NEVER_SETTLED
        marks = (*facts.get(job, ()), *_car_and_system(described, system))
        fixes = _fixes(fitted.get(job, ()), correction) if left_at is not None else ()
        said = tuple(getattr(words, field) for field in FIELDS)
        came = _day(str(came_at))
        entries.append(JobEntry(job, said, marks, came, left, settles, job in back, vehicle, fixes))
    return entries


_NOTHING = JobText()
_JOBS = (
    select(
        *(Job.id, Job.system, Job.correction, Job.left_at, Job.window_days),
        *(Visit.came_at, Visit.vehicle_id, Vehicle.description),
    )
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
)


def _facts(connection: Connection, ids: Sequence[int]) -> dict[int, list[str]]:
    """Return the marked terms of each job: symptoms, conditions, codes, part kinds; each once."""
    chosen = among(ids)
    found: dict[int, list[str]] = {}
    facts: Sequence[tuple[str, Any]] = (
        (entry.SYMPTOM, select(JobSymptom.job_id, JobSymptom.symptom)),
        (entry.HAPPENS, _conditions(1)),
        (entry.NEVER, _conditions(0)),
        (entry.CODE, select(TroubleCode.job_id, TroubleCode.code)),
        (entry.PART, select(Pair.job_id, Pair.part_kind)),
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
def _car_and_system(description: str, system: str) -> tuple[str, ...]:
    words = dict.fromkeys(plain_words(description).split())
    terms = tuple(marked(entry.CAR, word) for word in words)
    return (*terms, marked(entry.SYSTEM, system)) if system else terms
