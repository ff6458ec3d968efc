"""The search index kept in step: each job's words are written anew when something of it changes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.stored import (
    Job,
    JobCheck,
    JobCondition,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.shop_record.deed import RowChange
from desktop_app.shop_record.dialect_search import (
    JobText,
    among,
    empty_index,
    remove_texts,
    write_texts,
)
from desktop_app.shop_record.tables import Base
from desktop_app.symptom_search.stored_evidence import reversed_vin
from desktop_app.symptom_search.word_forms import plain_words

AT_A_TIME = 2000

# Columns whose change leaves the words of a job as they are.
_JOB_WORDLESS = """number says_same system cause_found hours unbilled_hours price_cents
    proof_level proof_words proof_distance declined left_at odometer_out window_days window_miles
    window_rule"""
_VISIT_WORDLESS = """customer_id came_at left_at odometer_in odometer_out odometer_unread
    brought_by"""
_WORDLESS = {
    "job": frozenset(_JOB_WORDLESS.split()),
    "visit": frozenset(_VISIT_WORDLESS.split()),
    "pair": frozenset(["price_cents", "fate", "fitted", "position", "origin"]),
}
_OF_A_JOB = ("job_condition", "trouble_code", "job_check", "pair")


class JobIndex:
    """Writes the words of jobs into the index.

    Add `follow` to a record's followers; `rebuild` writes everything anew. The part kinds give
    the parts their names.
    """

    def __init__(self, kinds: Mapping[str, PartKind]) -> None:
        self._part_words = {
            kind.id: plain_words(" ".join((kind.id, kind.name, *kind.also)))
            for kind in kinds.values()
        }

    def follow(self, connection: Connection, changes: Sequence[RowChange]) -> None:
        """Write the jobs anew whose words the changes of one deed touch."""
        jobs = {job for change in changes for job in _jobs_touched(connection, change)}
        if jobs:
            texts = self.texts(connection, sorted(jobs))
            write_texts(connection, texts)
            remove_texts(connection, sorted(jobs - texts.keys()))

    def rebuild(self, connection: Connection) -> int:
        """Write the whole index anew and return the number of jobs; the caller commits."""
        empty_index(connection)
        count, last = 0, 0
        while True:
            rows = connection.execute(
                select(Job.id).where(Job.id > last).order_by(Job.id).limit(AT_A_TIME)
            )
            ids = [row[0] for row in rows]
            if not ids:
                return count
            write_texts(connection, self.texts(connection, ids))
            count, last = count + len(ids), ids[-1]

    def texts(self, connection: Connection, ids: Sequence[int]) -> dict[int, JobText]:
        """Return the words of these jobs; those that are gone are left out."""
        conditions = _words_of(connection, ids, _CONDITIONS)
        seen = _words_of(connection, ids, _TERMS)
        found = _words_of(connection, ids, _FINDINGS)
        codes = _words_of(connection, ids, _CODES)
        parts = _words_of(connection, ids, _PARTS)
        texts = {}
        for row in connection.execute(_JOBS.where(Job.id.in_(among(ids)))):
            happens = [condition_words(one[0]) for one in conditions.get(row.id, ())]
            terms = _flat(seen.get(row.id, ())) + _flat(found.get(row.id, ()))
            texts[row.id] = JobText(
                concern=plain_words(row.concern),
                cause=plain_words(row.cause),
                correction=plain_words(row.correction),
                conditions=plain_words(" ".join(dict.fromkeys(happens + terms))),
                codes=plain_words(" ".join(dict.fromkeys(_flat(codes.get(row.id, ()))))),
                parts=" ".join(dict.fromkeys(self._part_lines(parts.get(row.id, ())))),
                vehicle=_vehicle_words(row.description, row.plate, row.tag, row.vin),
                people=plain_words(row.person or ""),
            )
        return texts

    def _part_lines(self, rows: Iterable[Sequence[str]]) -> Iterator[str]:
        for kind, *others in rows:
            yield self._part_words.get(kind) or plain_words(kind)
            for other in others:
                if other:
                    yield plain_words(other)


_CONDITIONS = select(JobCondition.job_id, JobCondition.condition).where(JobCondition.happens == 1)
_TERMS = select(Pair.job_id, PartCondition.term).join(
    PartCondition, PartCondition.pair_id == Pair.id
)
_FINDINGS = select(JobCheck.job_id, JobCheck.words, JobCheck.outcome).where(
    JobCheck.kind == "inspection"
)
_CODES = select(TroubleCode.job_id, TroubleCode.code)
_PARTS = select(
    Pair.job_id,
    Pair.part_kind,
    Pair.supplier,
    Pair.number_on_box,
    Pair.number_on_part,
    Pair.note_removed,
    Pair.note_replacement,
)
_JOBS = (
    select(
        Job.id,
        Job.concern,
        Job.cause,
        Job.correction,
        Vehicle.description,
        Vehicle.plate,
        Vehicle.tag,
        Vehicle.vin,
        Person.name.label("person"),
    )
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    .outerjoin(Person, Person.id == Job.technician_id)
)


def _words_of(connection: Connection, ids: Sequence[int], query: Any) -> dict[int, list[Any]]:
    job = query.selected_columns[0]
    found: dict[int, list[Any]] = {}
    for row in connection.execute(query.where(job.in_(among(ids)))):
        found.setdefault(row[0], []).append(tuple(row[1:]))
    return found


def _flat(rows: Iterable[Sequence[str]]) -> list[str]:
    return [word for row in rows for word in row if word]


def _vehicle_words(description: str, plate: str | None, tag: str | None, vin: str | None) -> str:
    words = [plain_words(description)]
    for name in (plate, tag):
        if name:
            words += [plain_words(name), matching_plate(name).casefold()]
    if vin:
        words += [matching_plate(vin).casefold(), reversed_vin(vin)]
    return " ".join(dict.fromkeys(words))


def _jobs_touched(connection: Connection, change: RowChange) -> Iterator[int]:
    """Yield the jobs whose words this change touches."""
    changed = change.after or {}
    is_update = change.before is not None and change.after is not None
    if is_update and changed.keys() <= _WORDLESS.get(change.table, frozenset()):
        return
    if change.table == "job":
        yield change.row_id
    elif change.table in _OF_A_JOB:
        yield from _owner(connection, change, "job_id")
    elif change.table == "part_condition":
        for pair in _owner(connection, change, "pair_id"):
            yield from _ids(connection, select(Pair.job_id).where(Pair.id == pair))
    elif change.table == "visit":
        yield from _ids(connection, select(Job.id).where(Job.visit_id == change.row_id))
    elif change.table == "vehicle":
        visits = select(Visit.id).where(Visit.vehicle_id == change.row_id)
        yield from _ids(connection, select(Job.id).where(Job.visit_id.in_(visits)))
    elif change.table == "own_kind":
        for kind in _owner(connection, change, "kind"):
            yield from _ids(connection, select(Pair.job_id).where(Pair.part_kind == kind))
    elif change.table == "person":
        yield from _ids(connection, select(Job.id).where(Job.technician_id == change.row_id))


def _owner(connection: Connection, change: RowChange, column: str) -> Iterator[int]:
    """Yield the owner of a changed row, from its values before and after, else from the row."""
    named = {
        values[column] for values in (change.before, change.after) if values and column in values
    }
    if not named:
        table = Base.metadata.tables[change.table]
        named = set(_ids(connection, select(table.c[column]).where(table.c.id == change.row_id)))
    yield from named


def _ids(connection: Connection, query: Any) -> Iterator[int]:
    for row in connection.execute(query).all():
        yield row[0]
