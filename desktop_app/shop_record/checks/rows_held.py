"""The rows of the record held against its history: what was changed past it, row by row."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator, Sequence
from itertools import repeat
from operator import itemgetter
from typing import Any, NamedTuple

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.checks.rows_expected import TableExpected, Values
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.kept_value import row_place
from desktop_app.shop_record.past.older_forms import HashOfForms
from desktop_app.shop_record.past.rows_hash import AT_A_TIME

_SHOWN = 40  # letters of a value
Row = Sequence[Any]


class RowProblem(NamedTuple):
    """A row that is not as the history says, and in what."""

    where: str
    what: str


def rows_held(connection: Connection, expected: TableExpected) -> Iterator[RowProblem]:
    """Give each row of a table that is not as expected. `expected` is used up."""
    name = expected.table.name
    ranges = deque(_Range(expected, one) for _, one in sorted(expected.bulk.items()))
    at_id = expected.names.index("id")
    for piece in dialect.all_rows(connection, name, expected.names, AT_A_TIME):
        if ranges and ranges[0].takes_all(piece[0][at_id], piece[-1][at_id]):
            ranges[0].take_as_came(piece)
            continue
        ids = list(map(itemgetter(at_id), piece))
        musts = list(map(expected.whole.pop, ids, repeat(None)))
        if musts == piece:
            continue
        for row_id, must, row in zip(ids, musts, piece, strict=True):
            if must is not None:
                if must != row:
                    yield _differs(name, row_id, expected.names, must, row)
                continue
            while ranges and ranges[0].last < row_id:
                yield from ranges.popleft().end()
            if ranges and ranges[0].first <= row_id:
                yield from ranges[0].take(row_id, row)
            else:
                yield RowProblem(
                    row_place(name, row_id),
                    tr("was put in past the history: no deed has made it"),
                )
    for one in ranges:
        yield from one.end()
    for row_id, must in expected.whole.items():
        yield _gone(name, row_id, expected.names, must)


class _Range:
    """Rows that came in bulk: put back as they came, they must have the hash that was kept."""

    def __init__(self, expected: TableExpected, rows: BulkRows) -> None:
        self.first, self.last = rows.first, rows.last
        self._rows, self._expected = rows, expected
        self._hash, self._odd = HashOfForms(rows.table, expected.names), False
        taken_out = (i for i, left in expected.changed.items() if left is None)
        self._out = deque(sorted(i for i in taken_out if rows.first <= i <= rows.last))
        self._untouched = not any(rows.first <= i <= rows.last for i in expected.first)

    def takes_all(self, first: int, last: int) -> bool:
        """Tell whether rows of these ids are all its own, and none of its rows was touched."""
        return self.first <= first and last <= self.last and self._untouched

    def take_as_came(self, rows: Sequence[Row]) -> None:
        """Take rows none of which was touched by a deed since."""
        self._take(rows)

    def take(self, row_id: int, row: Row) -> Iterator[RowProblem]:
        """Take the next row that is there."""
        if row_id in self._out:
            yield RowProblem(
                self._where(row_id), tr("is there, though the history says it was removed")
            )
            return
        self._take_those_out(row_id)
        first = self._expected.first.get(row_id)
        if first is None:
            self._take((row,))
            return
        now = dict(zip(self._expected.names, row, strict=True))
        left = self._expected.changed.pop(row_id, None) or {}
        if any(now[name] != value for name, value in left.items()):
            names = tuple(left)
            was, is_now = tuple(left.values()), tuple(now[name] for name in names)
            yield _differs(self._rows.table, row_id, names, was, is_now)
        self._take((tuple((now | first)[name] for name in self._expected.names),))

    def end(self) -> Iterator[RowProblem]:
        """Say what is wrong with the range as a whole."""
        self._take_those_out(self.last + 1)
        if not self._is_whole():
            yield RowProblem(
                tr(
                    "{table} rows {first} to {last}",
                    table=self._rows.table,
                    first=self.first,
                    last=self.last,
                ),
                tr(
                    "are not as they came in together ({rows:,} rows): at least one was "
                    "changed, put in or taken out past the history",
                    rows=self._rows.rows,
                ),
            )

    def _is_whole(self) -> bool:
        try:
            return not self._odd and self._hash.holds(self._rows.sha256)
        except (TypeError, ValueError):  # the last of them are hashed only now
            return False

    def _take(self, rows: Sequence[Row]) -> None:
        try:
            self._hash.take(rows)
        except (TypeError, ValueError):  # bytes, or no letters: no deed writes such a value
            self._odd = True

    def _take_those_out(self, before: int) -> None:
        """Take the rows that deeds have removed, where they stood."""
        while self._out and self._out[0] < before:
            first = self._expected.first[self._out.popleft()]
            self._take((tuple(first.get(name) for name in self._expected.names),))

    def _where(self, row_id: int) -> str:
        return row_place(self._rows.table, row_id)


def _differs(table: str, row_id: int, names: Sequence[str], must: Row, row: Row) -> RowProblem:
    said = [
        tr(
            "{column} is “{now}”, by the history “{was}”",
            column=name,
            now=_shown(is_now),
            was=_shown(was),
        )
        for name, was, is_now in zip(names, must, row, strict=True)
        if was != is_now
    ]
    return RowProblem(
        row_place(table, row_id),
        tr("was changed past the history: {said}", said="; ".join(said)),
    )


def _gone(table: str, row_id: int, names: Sequence[str], must: Row) -> RowProblem:
    values: Values = dict(zip(names, must, strict=True))
    held = [f"{n} “{_shown(v)}”" for n, v in values.items() if n != "id" and v not in (None, "")]
    return RowProblem(
        row_place(table, row_id),
        tr("is gone past the history; it held {held}", held=", ".join(held[:6])),
    )


def _shown(value: object) -> str:
    text = tr("nothing") if value is None else str(value)
    return text if len(text) <= _SHOWN else f"{text[:_SHOWN]}…"
