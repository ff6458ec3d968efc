"""Which rows belong to a job: those that hang on it, also those that are gone by now."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from desktop_app.shop_record.bulk import BulkRows
    from desktop_app.shop_record.deed import RowChange

Row = tuple[str, int]  # a table and an id
# Of each table the columns by which its rows hang on others, and the tables of these.
HangsOn = Mapping[str, tuple[tuple[str, str], ...]]
ANSWERED = "answered"  # names what it is about in words: "visit:12:odometer"


class JobRows:
    """The rows of one job; it learns of rows that are gone while the history is read backwards.

    A row is taken out before the one that it hangs on, so that going back the latter is met first.
    """

    def __init__(
        self, job: int, visit: int, kept: Mapping[Row, Mapping[str, Any]], on: HangsOn
    ) -> None:
        self.job, self.visit = job, visit
        self.rows = dict(kept)
        self.here = frozenset(kept)  # those that are in the record now
        self._hangs_on = on
        self._in_bodies = {(str(number), table) for table, number in kept}

    def holds(self, change: RowChange) -> bool:
        """Tell whether a change was made to a row of the job."""
        row = (change.table, change.row_id)
        if row in self.rows:
            return True
        gone = change.before if change.after is None else None
        if gone is None or not self._hangs(change.table, gone):
            return False
        self.rows[row] = gone
        self._in_bodies.add((str(change.row_id), change.table))
        return True

    def named_among(self, rows: Iterable[tuple[str, str]]) -> bool:
        """Tell whether one of these, each an id and a table as bodies write them, is the job's."""
        return not self._in_bodies.isdisjoint(rows)

    def covered_by(self, bulk: BulkRows) -> bool:
        """Tell whether a range of rows that were brought in or taken out holds one of the job."""
        return any(t == bulk.table and bulk.first <= row <= bulk.last for t, row in self.rows)

    def begins(self, change: RowChange) -> bool:
        """Tell whether a change wrote down the visit that the job belongs to."""
        return change.before is None and (change.table, change.row_id) == ("visit", self.visit)

    def _hangs(self, table: str, values: Mapping[str, Any]) -> bool:
        if table == ANSWERED:
            return about_row(values["about"]) in self.rows
        return any((on, values.get(column)) in self.rows for column, on in self._hangs_on[table])


def about_row(about: str) -> Row | None:
    """Return the row that a question was about: ("visit", 12) for "visit:12:odometer"."""
    table, _, rest = about.partition(":")
    number = rest.partition(":")[0]
    return (table, int(number)) if number.isascii() and number.isdecimal() else None
