"""What the rows of each table must be, worked out by replaying the history."""

from __future__ import annotations

import json
from collections.abc import Iterator
from operator import itemgetter
from typing import Any, NamedTuple

from sqlalchemy.sql.schema import Table

from desktop_app.language import tr
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.tables import Base

Values = dict[str, Any]
_JSON = json.JSONDecoder()  # its own way in takes half as long as `json.loads`


class EntryHeard(NamedTuple):
    """One entry of the history as it is read: its columns, which its body must repeat."""

    seq: int
    body: str
    hash: str
    words: str
    at: str
    who: str
    reverses: int | None


class TableExpected:
    """The rows of one table: those written one by one as a whole, those in bulk by what differs.

    `whole` holds rows as tuples in the table's order. Of rows that came in bulk, `changed` holds
    the columns that were written since (None: taken out), `first` what stood in them before.
    """

    def __init__(self, table: Table) -> None:
        self.table = table
        self.names = tuple(column.name for column in table.columns)
        self._in_order = itemgetter(*self.names)
        self._place = {name: place for place, name in enumerate(self.names)}
        self.whole: dict[int, tuple[Any, ...]] = {}
        self.bulk: dict[tuple[int, int], BulkRows] = {}
        self.changed: dict[int, Values | None] = {}
        self.first: dict[int, Values] = {}
        self.highest = 0

    def take(self, row_id: int, before: Values | None, after: Values | None) -> None:
        """Take one change of a row."""
        self.highest = max(self.highest, row_id)
        if before is None and after is not None and not self.in_bulk(row_id):
            try:
                self.whole[row_id] = self._in_order(after)
            except KeyError:
                # A column that came into the table later is empty in what was written before it.
                self.whole[row_id] = tuple([after.get(name) for name in self.names])
        elif row_id in self.whole:
            if after is None:
                del self.whole[row_id]
            else:
                now = list(self.whole[row_id])
                for name in after.keys() & self._place.keys():
                    now[self._place[name]] = after[name]
                self.whole[row_id] = tuple(now)
        else:
            self.first[row_id] = (before or {}) | self.first.get(row_id, {})
            left = None if after is None else (self.changed.get(row_id) or {}) | after
            self.changed[row_id] = left

    def take_bulk(self, rows: BulkRows) -> None:
        """Take a range of rows that came or went; it says all that there is to say of its ids."""
        self.highest = max(self.highest, rows.last)
        for ids in (self.whole, self.changed, self.first):
            for row_id in [one for one in ids if rows.first <= one <= rows.last]:
                del ids[row_id]
        inside = [one for one in self.bulk if rows.first <= one[0] and one[1] <= rows.last]
        for one in inside:
            del self.bulk[one]
        if rows.gone is None:
            self.bulk[rows.first, rows.last] = rows

    def in_bulk(self, row_id: int) -> bool:
        """Tell whether a row belongs to a range that came in bulk."""
        return bool(self.bulk) and any(first <= row_id <= last for first, last in self.bulk)


class RowsExpected:
    """Hears the entries in their order; `odd` says which of them contradict themselves."""

    def __init__(self) -> None:
        self.tables = {
            name: TableExpected(table)
            for name, table in Base.metadata.tables.items()
            if name != "history"
        }
        self.photos: set[str] = set()  # by SHA-256: all that were ever named in an entry
        self.odd: list[str] = []

    def hear(self, entry: EntryHeard) -> None:
        """Take one entry; one that can't be read is told by its hash, and left out here."""
        try:
            facts = _read(entry.body)
            self._take(facts)
            said = (facts["words"], facts["at"], facts["who"], facts["reverses"])
        except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
            self.odd.append(
                tr("entry {seq} can't be read: nobody knows what it did", seq=entry.seq)
            )
            return
        if said != (entry.words, entry.at, entry.who, entry.reverses):
            self.odd.append(
                tr(
                    "entry {seq} (“{words}”) is listed with another moment, name or words "
                    "than it was written with",
                    seq=entry.seq,
                    words=facts["words"],
                )
            )

    def _take(self, facts: Values) -> None:
        bulk = [BulkRows(**rows) for rows in facts.get("bulk", ())]
        # Ranges are added before, and taken out after, the changes of rows that hang on them.
        for rows in bulk:
            if rows.gone is None:
                self.tables[rows.table].take_bulk(rows)
        for change in facts["changes"]:
            before, after = change["before"], change["after"]
            self.tables[change["table"]].take(change["row_id"], before, after)
            if change["table"] == "photo":
                self.photos.update(_hashes(before), _hashes(after))
        for rows in bulk:
            if rows.gone is not None:
                self.tables[rows.table].take_bulk(rows)


def _read(body: str) -> Any:
    if body[:1] == "{":
        facts, end = _JSON.raw_decode(body)
        if end == len(body):
            return facts
    return json.loads(body)  # one with space around it was not written by us, but can be read


def _hashes(values: Values | None) -> Iterator[str]:
    if values and "sha256" in values:
        yield values["sha256"]
