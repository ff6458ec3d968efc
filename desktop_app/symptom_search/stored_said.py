"""What was said of jobs, read with one question: what their words in the index are made of.

One statement that is made once: of a deed of some milliseconds, five more were the larger half.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from sqlalchemy import (
    Connection,
    Integer,
    Select,
    bindparam,
    literal_column,
    null,
    select,
    union_all,
)

from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.stored import (
    Job,
    JobCheck,
    JobCondition,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.shop_record.databases.listed import as_listed, taken_apart
from desktop_app.symptom_search.job_said import JobSaid

# Of each sort of row: its job, its number, and then what it says.
_JOB = (
    select(
        *(Job.id, Job.id, Job.concern, Job.cause, Job.correction),
        *(Vehicle.description, Vehicle.plate, Vehicle.tag, Vehicle.vin, Person.name),
    )
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    .outerjoin(Person, Person.id == Job.technician_id)
)
_HAPPENS = select(JobCondition.job_id, JobCondition.id, JobCondition.condition).where(
    JobCondition.happens == 1
)
_TERM = select(Pair.job_id, PartCondition.id, PartCondition.term).join(
    PartCondition, PartCondition.pair_id == Pair.id
)
_FINDING = select(JobCheck.job_id, JobCheck.id, JobCheck.words, JobCheck.outcome).where(
    JobCheck.kind == "inspection"
)
_CODE = select(TroubleCode.job_id, TroubleCode.id, TroubleCode.code)
_PART = select(
    *(Pair.job_id, Pair.id, Pair.part_kind, Pair.supplier, Pair.number_on_box),
    *(Pair.number_on_part, Pair.note_removed, Pair.note_replacement),
)
_SORTS = (_JOB, _HAPPENS, _TERM, _FINDING, _CODE, _PART)
_JOBS, _CONDITIONS, _TERMS, _FINDINGS, _CODES, _PARTS = range(len(_SORTS))
_COLUMNS = 8  # of what a row says; shorter ones are filled up


def said_of(connection: Connection, ids: Sequence[int]) -> dict[int, JobSaid]:
    """Return what was said of these jobs, by their rows; those that are gone are left out."""
    rows: Any
    if isinstance(ids, range) and ids.step == 1 and ids:
        rows = connection.execute(_OF_A_RANGE, {"first": ids[0], "last": ids[-1]})
    else:
        rows = connection.execute(_OF_SOME, {"ids": as_listed(ids)})
    found: tuple[dict[int, list[Any]], ...] = tuple({} for _ in _SORTS)
    for sort, job, number, *said in rows:
        found[sort].setdefault(job, []).append((number, *said))
    return {
        job: JobSaid(
            concern=row[1],
            cause=row[2],
            correction=row[3],
            conditions=_flat(found[_CONDITIONS], job),
            codes=_flat(found[_CODES], job),
            parts=[tuple(part[1:7]) for part in sorted(found[_PARTS].get(job, ()), key=_number)],
            vehicle=(row[4], row[5], row[6], row[7]),
            person=row[8] or "",
            seen=_flat(found[_TERMS], job) + _flat(found[_FINDINGS], job),
        )
        for job, (row,) in found[_JOBS].items()
    }


def _number(row: Sequence[Any]) -> int:
    number: int = row[0]
    return number


def _flat(rows: dict[int, list[Any]], job: int) -> list[str]:
    """Return the words of a job's rows in the order in which they were written."""
    return [word for row in sorted(rows.get(job, ()), key=_number) for word in row[1:] if word]


def _of_jobs(where: Callable[[Any], Any]) -> Any:
    """Return the one statement: rows of all sorts, each with its sort's place before it."""
    return union_all(*(_filled(sort, where) for sort in range(len(_SORTS))))


def _filled(sort: int, where: Callable[[Any], Any]) -> Select[Any]:
    job, number, *said = _SORTS[sort].selected_columns
    empty = [null().label(f"none_{place}") for place in range(_COLUMNS - len(said))]
    whole = _SORTS[sort].with_only_columns(
        literal_column(str(sort)).label("sort"),
        job,
        number.label("number"),
        *said,
        *empty,
        maintain_column_froms=True,
    )
    return whole.where(where(job))


_OF_SOME = _of_jobs(lambda job: job.in_(taken_apart(bindparam("ids"), Integer())))
_OF_A_RANGE = _of_jobs(lambda job: job.between(bindparam("first"), bindparam("last")))
