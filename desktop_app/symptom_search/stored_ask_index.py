"""The word index of a shop: made from the record, kept as a file beside it, never behind a deed.

The file can be thrown away at any time. What was changed since it was made is read from the
history, and those jobs are scored from arrays of their own.
"""

from __future__ import annotations

import threading
from collections.abc import Generator, Mapping, Sequence
from weakref import WeakKeyDictionary

from sqlalchemy import Connection, func, select

from desktop_app.language import tr
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.symptom_search.stored_ask_file import IndexFiles, Made
from desktop_app.symptom_search.stored_changes import jobs_changed
from desktop_app.symptom_search.stored_courses import last_visits
from desktop_app.symptom_search.stored_entries import entries_of
from desktop_app.symptom_search.word_index.arrays import Arrays, Part
from desktop_app.symptom_search.word_index.entry import JobEntry
from desktop_app.symptom_search.word_index.writing import ArraysWriter, arrays_of, mean_lengths

AT_ONCE = 1000  # jobs of a shop whose index is made whenever it is asked for, and kept in no file
AT_A_TIME = 2000
MOST_LATE = 2000  # jobs changed since; with more of them the index is of no use
RENEW_AT = 500
_SAMPLED = 10_000  # jobs that the mean lengths of the fields are taken from
_RANGE = 500
_WORDS = tr("jobs read for the search")


class AskIndex:
    """The arrays of one open record; several threads may ask."""

    def __init__(self, record: ShopRecord) -> None:
        self._files = IndexFiles(record.folder)
        self._lock = threading.Lock()
        self._main: Arrays | None = None
        self._seen = 0
        self._late: dict[int, JobEntry | None] = {}
        self._parts: list[Part] = []

    def parts(self, connection: Connection) -> list[Part] | None:
        """Return the arrays that hold every job as it is now, each once, with who of them counts.

        None while there is no index, or it is too far behind, or is just being opened.
        """
        if not self._lock.acquire(blocking=False):
            return None
        try:
            if self._main is None and not self._begin(connection):
                return None
            return self._parts if self._follow(connection) else None
        finally:
            self._lock.release()

    def is_behind(self, connection: Connection) -> bool:
        """Tell whether the index should be made (again)."""
        return self.parts(connection) is None or len(self._late) > RENEW_AT

    def renew(self, record: ShopRecord) -> Generator[Step, None, None]:
        """Make the index from the record, in steps that never hold the record for long."""
        with record.reading() as connection:
            made, jobs, last_job = _state(connection)
            last_seen = last_visits(connection, None)
            writer = ArraysWriter(_sampled_lengths(connection, last_job, last_seen))
        done, last = 0, 0
        while True:
            with record.reading() as connection:
                ids = _next_jobs(connection, last)
                entries = entries_of(connection, ids, last_seen)
            if not ids:
                break
            writer.add(entries)
            done, last = done + len(ids), ids[-1]
            yield Step(min(done, jobs), max(jobs, done), _WORDS)
        arrays = self._files.keep(writer.finish(), made)
        with self._lock:
            self._take(arrays, made.seq)

    def _begin(self, connection: Connection) -> bool:
        """Open the file, or make the arrays where the shop is small."""
        kept = self._files.open(lambda seq: _hash_at(connection, seq))
        if kept is not None:
            self._take(kept[0], kept[1].seq)
            return True
        made, jobs, _ = _state(connection)
        if jobs > AT_ONCE:
            return False
        self._take(arrays_of(entries_of(connection, _next_jobs(connection, 0))), made.seq)
        return True

    def _take(self, arrays: Arrays, seq: int) -> None:
        self._main, self._seen = arrays, seq
        self._late = {}
        self._parts = [Part(arrays)]

    def _follow(self, connection: Connection) -> bool:
        """Read what was changed since; False where that is too much."""
        assert self._main is not None
        last = last_number(connection)
        if last <= self._seen:
            return True
        changed = jobs_changed(connection, self._seen, MOST_LATE)
        if changed is None or len(changed | self._late.keys()) > MOST_LATE:
            self._main = None if self._main.jobs <= AT_ONCE else self._main
            return self._main is None and self._begin(connection)
        if changed:
            now = {entry.job: entry for entry in entries_of(connection, sorted(changed))}
            self._late |= {job: now.get(job) for job in changed}
            self._parts = _with_late(self._main, self._late)
        self._seen = last
        return True


_OPEN: WeakKeyDictionary[ShopRecord, AskIndex] = WeakKeyDictionary()
_OPENING = threading.Lock()


def index_of(record: ShopRecord) -> AskIndex:
    """Return the index of an open record, always the same one."""
    with _OPENING:
        index = _OPEN.get(record)
        if index is None:
            index = _OPEN[record] = AskIndex(record)
        return index


def _with_late(main: Arrays, late: dict[int, JobEntry | None]) -> list[Part]:
    import numpy as np

    alive = ~np.isin(main.ids, np.fromiter(late, np.int32))
    entries = [late[job] for job in sorted(late)]
    newer = arrays_of([one for one in entries if one is not None], main.lengths.tolist())
    return [Part(main, alive), Part(newer)]


def _state(connection: Connection) -> tuple[Made, int, int]:
    """Return the last deed, the number of jobs and the last of them."""
    seq = last_number(connection)
    jobs, last = connection.execute(select(func.count(Job.id), func.max(Job.id))).one()
    return Made(seq, _hash_at(connection, seq)), jobs, last or 0


def _hash_at(connection: Connection, seq: int) -> str:
    """Return the hash of a deed's entry; empty where there is no such deed."""
    found = select(HistoryEntry.hash).where(HistoryEntry.seq == seq)
    return connection.execute(found).scalar() or ""


def _next_jobs(connection: Connection, after: int) -> list[int]:
    rows = select(Job.id).where(Job.id > after).order_by(Job.id).limit(AT_A_TIME)
    return [row[0] for row in connection.execute(rows)]


def _sampled_lengths(
    connection: Connection, last_job: int, last_seen: Mapping[int, int]
) -> Sequence[float]:
    """Return the mean words of each field, over stretches of jobs spread over the history."""
    ranges = _SAMPLED // _RANGE
    step = max(_RANGE, last_job // ranges)
    entries: list[JobEntry] = []
    for start in range(0, last_job + 1, step):
        entries += entries_of(connection, range(start, start + _RANGE), last_seen)
    return mean_lengths(entries)
