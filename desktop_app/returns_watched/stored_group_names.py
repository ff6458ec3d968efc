"""The names under which each job of a rate counts, read from the record."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, Row, exists, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair, Reading
from desktop_app.parts_compared.stored_many import verdicts_of_record
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.repair_jobs.stored import JobSymptom, Person
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written, compared_as
from desktop_app.returns_watched.honest_numbers.group_rates import By
from desktop_app.returns_watched.stored_facts import SymptomNames
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.house_rules import read_rules

Names = Mapping[int, tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class Grouping:
    """By what jobs are grouped, and the plain names of symptoms and the part kinds for it.

    `kinds` judge the pairs for "verdict"; a pair of another kind counts as not compared.
    """

    by: By
    symptoms: SymptomNames
    kinds: Mapping[str, PartKind] | None = None


def read_group_names(
    connection: Connection,
    asked: Grouping,
    rows: Sequence[Row[Any]],
    wanted: Sequence[int] | None,
    part_kinds: Names,
) -> tuple[tuple[str, ...], ...]:
    """Return for each job the names under which it counts; several where it had several parts.

    `wanted` are the ids of the rows, None for every job of the record.
    """
    if asked.by == "verdict":
        found = _verdicts(connection, asked.kinds or {}, wanted)
        return tuple((compared_as(found.get(row.id, ())),) for row in rows)
    said = _said(connection, asked, rows, wanted, part_kinds)
    shown: dict[str, str] = {}
    return tuple(as_first_written(said.get(row.id, ()), shown) for row in rows)


def _said(
    connection: Connection,
    asked: Grouping,
    rows: Sequence[Row[Any]],
    wanted: Sequence[int] | None,
    part_kinds: Names,
) -> Names:
    if asked.by == "technician":
        people = {row.id: row.name for row in connection.execute(select(Person.id, Person.name))}
        return {row.id: (people.get(row.technician_id, ""),) for row in rows}
    if asked.by == "system":
        return {row.id: (row.system,) for row in rows}
    if asked.by == "part-kind":
        return part_kinds
    if asked.by == "supplier":
        return words_of_parts(connection, Pair.supplier, wanted)
    if asked.by == "part-origin":
        return words_of_parts(connection, Pair.origin, wanted)
    heard = select(JobSymptom.job_id, JobSymptom.symptom)
    found = each_row(connection, heard, JobSymptom.job_id, wanted)
    return _by_job((row.job_id, asked.symptoms.get(row.symptom, row.symptom)) for row in found)


def words_of_parts(connection: Connection, column: Any, wanted: Sequence[int] | None) -> Names:
    """Return by job what its fitted parts say in one column; what is blank is left out."""
    fitted = select(Pair.job_id, column).where(Pair.fitted == 1)
    return _by_job(each_row(connection, fitted, Pair.job_id, wanted))


def _by_job(rows: Iterable[Any]) -> dict[int, tuple[str, ...]]:
    found: dict[int, set[str]] = {}
    for job_id, word in rows:
        if word:
            found.setdefault(job_id, set()).add(word)
    return {job_id: tuple(sorted(words)) for job_id, words in found.items()}


def _verdicts(
    connection: Connection, kinds: Mapping[str, PartKind], wanted: Sequence[int] | None
) -> dict[int, list[str]]:
    """Return by job the verdicts on its fitted pairs of which anything was measured."""
    measured = (
        select(Pair.id, Pair.job_id)
        .where(Pair.fitted == 1)
        .where(exists().where(Reading.pair_id == Pair.id))
    )
    jobs = {row.id: row.job_id for row in each_row(connection, measured, Pair.job_id, wanted)}
    if not jobs or not kinds:
        return {}
    confidence = read_rules(connection).confidence
    verdicts = verdicts_of_record(connection, kinds, drawer(connection), confidence, of=jobs.keys())
    found: dict[int, list[str]] = {}
    for pair, verdict in verdicts.items():
        found.setdefault(jobs[pair], []).append(verdict)
    return found
