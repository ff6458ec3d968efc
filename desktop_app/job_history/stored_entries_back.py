"""Which entries are a job's, told from their bodies, the newest first, down to its first one.

Most entries are of other jobs: one look at the text of a body passes over them, and only those
that may concern this job are taken apart. Bodies have their keys in the order of the alphabet, and
inside a text every quotation mark is escaped, so what is looked for stands in no text.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass, replace

from desktop_app.job_history.job_rows import JobRows
from desktop_app.job_history.told_entry import EntryRead, clock_words
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.deed import RowChange
from desktop_app.shop_record.past.entries_kept import EntryKept

_ROW = re.compile(r'"row_id":(\d+),"table":"(\w+)"')
_TAKEN_OUT, _IN_RANGES = '"after":null', '"bulk":['


@dataclass(frozen=True, slots=True)
class _Met:
    seq: int
    at: str


class EntriesBack:
    """Takes the entries of a shop, the newest first, and keeps those of one job."""

    def __init__(self, rows: JobRows) -> None:
        self.rows = rows
        self.found: list[EntryRead] = []
        self.whole = False  # the entry before the job's first one was met too
        self._begun = False  # the job's first one was met
        self._after: _Met | None = None  # the entry that was taken last, the next younger one

    def take(self, entry: EntryKept) -> None:
        """Take the next older entry."""
        if self._after is not None and self.found and not self.found[-1].clock:
            clock = clock_words(self._after.seq, entry.at, self._after.at)
            if clock:
                self.found[-1] = replace(self.found[-1], clock=clock)
        self._after = _Met(entry.seq, entry.at)
        self.whole = self._begun
        if not self.whole and self._may_concern(entry.body):
            self._take_apart(entry)

    def _may_concern(self, body: str) -> bool:
        if _TAKEN_OUT in body or _IN_RANGES in body:
            return True
        return self.rows.named_among(_ROW.findall(body))

    def _take_apart(self, entry: EntryKept) -> None:
        facts = json.loads(entry.body)
        changes = [RowChange(**change) for change in facts["changes"]]
        mine = [change for change in reversed(changes) if self.rows.holds(change)]
        ranges = [BulkRows(**one) for one in facts.get("bulk", ())]
        came = any(map(self.rows.covered_by, ranges))
        with_many = sum(one.rows for one in ranges) if came else 0
        if not mine and not with_many:
            return
        self.found.append(
            EntryRead(
                seq=entry.seq,
                at=entry.at,
                who=entry.who,
                place=str(facts.get("place", "")),
                words=entry.words,
                reverses=entry.reverses,
                changes=tuple(reversed(mine)),
                others=len(changes) - len(mine),
                with_many=with_many,
                brings_others=any(one.gone is not None for one in ranges),
            )
        )
        self._begun = entry.reverses is None and any(map(self.rows.begins, changes))
