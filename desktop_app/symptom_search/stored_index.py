"""The search index kept in step: each job's words are written anew when something of it changes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from itertools import chain

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.part_kind import Called
from desktop_app.repair_jobs.concern_conditions import condition_as_written
from desktop_app.repair_jobs.stored import (
    Job,
)
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.shop_record.databases.dialect_search import (
    JobText,
    empty_index,
    remove_texts,
    write_texts,
)
from desktop_app.shop_record.deed import RowChange
from desktop_app.symptom_search.job_said import JobSaid
from desktop_app.symptom_search.stored_changes import jobs_of_change
from desktop_app.symptom_search.stored_evidence import reversed_vin
from desktop_app.symptom_search.stored_said import said_of
from desktop_app.symptom_search.word_forms import plain_words

AT_A_TIME = 2000
# The same lines, cars and names come again and again; a long text hardly twice.
_REMEMBERED, _LONGEST_REMEMBERED = 20_000, 200

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
# A row of these that is new has no jobs but those that are added after it, in the same deed.
_NEVER_ALONE = frozenset(["visit", "vehicle", "person"])
_WORDLESS_TABLES = frozenset(["job_symptom", "return_link", "customer_asked"])


class JobIndex:
    """Writes the words of jobs into the index.

    `commands/shop_place.py` lets it follow a record's deeds; `rebuild` writes everything anew. The
    part kinds give the parts their names, in the program's own words: the index is the same for
    every language.
    """

    def __init__(self, kinds: Mapping[str, Called]) -> None:
        self._part_words = {
            kind.id: plain_words(" ".join((kind.id, *kind.plain_names))) for kind in kinds.values()
        }
        self._part_words_of = lru_cache(_REMEMBERED)(self._part_words_anew)

    def write(
        self, connection: Connection, jobs: Sequence[int], said: Mapping[int, JobSaid]
    ) -> None:
        """Write jobs anew of which all was read; those of which nothing was said are gone."""
        write_texts(connection, {job: self.text(one) for job, one in said.items()})
        remove_texts(connection, [job for job in jobs if job not in said])

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
        return {job: self.text(said) for job, said in said_of(connection, ids).items()}

    def text(self, said: JobSaid) -> JobText:
        """Return the words of a job of which all is known that they are made of."""
        return JobText(
            concern=_words(said.concern),
            cause=_words(said.cause),
            correction=_words(said.correction),
            conditions=_condition_words(tuple(said.conditions), tuple(said.seen)),
            codes=_code_words(tuple(said.codes)),
            parts=self._parts(said.parts),
            vehicle=_vehicle_words(*said.vehicle),
            people=_words(said.person),
        )

    def _parts(self, parts: Sequence[tuple[str, ...]]) -> str:
        words = (self._part_words_of(part) for part in parts)
        return " ".join(dict.fromkeys(chain.from_iterable(words))) if parts else ""

    def _part_words_anew(self, row: tuple[str, ...]) -> tuple[str, ...]:
        kind, *others = row
        words = self._part_words.get(kind) or _words(kind)
        return (words, *(_words(other) for other in others if other))


def jobs_touched(connection: Connection, changes: Sequence[RowChange]) -> list[int]:
    """Return the jobs whose words the changes of one deed touch, in the order of their rows.

    What hangs on a row that the deed added was added by it too, and is among its changes.
    """
    return sorted({job for change in changes for job in _jobs_of(connection, change)})


def _words(text: str) -> str:
    return _plain_words(text) if len(text) <= _LONGEST_REMEMBERED else plain_words(text)


_plain_words = lru_cache(_REMEMBERED)(plain_words)


@lru_cache(_REMEMBERED)
def _condition_words(conditions: tuple[str, ...], seen: tuple[str, ...]) -> str:
    happens = map(condition_as_written, sorted(conditions))
    return _words(" ".join(dict.fromkeys([*happens, *seen])))


@lru_cache(_REMEMBERED)
def _code_words(codes: tuple[str, ...]) -> str:
    return plain_words(" ".join(dict.fromkeys(codes)))


@lru_cache(_REMEMBERED)
def _vehicle_words(description: str, plate: str | None, tag: str | None, vin: str | None) -> str:
    words = [plain_words(description)]
    for name in (plate, tag):
        if name:
            words += [plain_words(name), matching_plate(name).casefold()]
    if vin:
        words += [matching_plate(vin).casefold(), reversed_vin(vin)]
    return " ".join(dict.fromkeys(words))


def _jobs_of(connection: Connection, change: RowChange) -> Iterator[int]:
    """Yield the jobs whose words this change touches."""
    changed = change.after or {}
    if change.before is None and change.table in _NEVER_ALONE:
        return
    is_update = change.before is not None and change.after is not None
    if change.table in _WORDLESS_TABLES:
        return
    if is_update and changed.keys() <= _WORDLESS.get(change.table, frozenset()):
        return
    yield from jobs_of_change(connection, change)
