"""A deed: one change that the shop makes, in one transaction, with its entry in the history."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, NamedTuple

from sqlalchemy import Connection, delete, insert, select, update
from sqlalchemy.sql.schema import Table

from desktop_app.language import tr
from desktop_app.shop_record.bulk import BulkRows, rows_added
from desktop_app.shop_record.databases.plain_text import plain_text
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_record.trouble import ShopTrouble

Values = Mapping[str, Any]


def _tell_nobody(done: int, of: int) -> None:
    """Hear how far a deed is."""


class RowChange(NamedTuple):
    """One row before and after: no before = added, no after = removed, else the changed columns."""

    table: str
    row_id: int
    before: dict[str, Any] | None
    after: dict[str, Any] | None


class Done(NamedTuple):
    """What a deed did: its words for the undo menu, the tables it touched, its entry's number.

    `seq` is None where nothing had to be changed; `made` is the id of the first row added.
    """

    words: str
    touched: frozenset[str]
    seq: int | None
    made: int | None = None


class Deed:
    """The open transaction of one deed; every write goes through it so that it is remembered.

    `bulk` holds ranges of rows that were written past it, in the order in which they were. `tell`
    hears how many rows of how many are done where that takes long. `entry` is the number and the
    hash of its entry, once that is written.
    """

    __slots__ = ("bulk", "changes", "connection", "entry", "tell", "words")

    def __init__(
        self, connection: Connection, words: str, tell: Callable[[int, int], None] = _tell_nobody
    ) -> None:
        self.connection, self.words, self.tell = connection, words, tell
        self.changes: list[RowChange] = []
        self.bulk: list[BulkRows] = []
        self.entry: tuple[int, str] | None = None

    def add(self, kept: type[Kept], **values: Any) -> int:
        """Add a row and return its id."""
        return self._insert(_table(kept), _plain(values))

    def change(self, kept: type[Kept], row_id: int, **values: Any) -> None:
        """Change columns of a row; columns that already have the value are left alone."""
        self._update(_table(kept), row_id, _plain(values))

    def remove(self, kept: type[Kept], row_id: int) -> None:
        """Take a row out; its last state stays in the history, from where undo brings it back."""
        table = _table(kept)
        before = self._row(table, row_id)
        if before is None:
            raise _gone(table.name, row_id)
        self._delete(table, row_id)
        self.changes.append(RowChange(table.name, row_id, before, None))

    def remember_added(self, kept: type[Kept], first: int, last: int) -> None:
        """Remember rows that were added past the deed: all from the first to the last id."""
        self.bulk.append(rows_added(self.connection, _table(kept), first, last))

    def touched(self) -> frozenset[str]:
        """Return the names of the tables that this deed wrote to."""
        changed = {change.table for change in self.changes}
        return frozenset(changed.union(rows.table for rows in self.bulk))

    def apply(self, change: RowChange, table: Table) -> None:
        """Carry out a change that was written down before (an undo or a redo)."""
        if change.before is None and change.after is not None:
            self._insert(table, change.after)
        elif change.after is None:
            before = self._row(table, change.row_id)
            if before is None:
                raise _gone(table.name, change.row_id)
            self._delete(table, change.row_id)
            self.changes.append(RowChange(table.name, change.row_id, before, None))
        else:
            self._update(table, change.row_id, change.after)

    def first_made(self) -> int | None:
        """Return the id of the first row that this deed added."""
        return next((c.row_id for c in self.changes if c.before is None), None)

    def _insert(self, table: Table, values: Values) -> int:
        added = insert(table).values(**values).returning(*table.c)
        after = dict(self.connection.execute(added).mappings().one())
        self.changes.append(RowChange(table.name, int(after["id"]), None, after))
        return int(after["id"])

    def _update(self, table: Table, row_id: int, values: Values) -> None:
        now = self._row(table, row_id)
        if now is None:
            raise _gone(table.name, row_id)
        after = {name: value for name, value in values.items() if now[name] != value}
        if after:
            self.connection.execute(update(table).where(table.c.id == row_id).values(**after))
            before = {name: now[name] for name in after}
            self.changes.append(RowChange(table.name, row_id, before, after))

    def _delete(self, table: Table, row_id: int) -> None:
        self.connection.execute(delete(table).where(table.c.id == row_id))

    def _row(self, table: Table, row_id: int) -> dict[str, Any] | None:
        row = self.connection.execute(select(table).where(table.c.id == row_id)).mappings().first()
        return None if row is None else dict(row)


def _plain(values: Values) -> Values:
    return {name: plain_text(value) for name, value in values.items()}


def _table(kept: type[Kept]) -> Table:
    table = kept.__table__
    assert isinstance(table, Table)
    return table


def _gone(table: str, row_id: int) -> ShopTrouble:
    return ShopTrouble(
        tr("That entry ({table} {row_id}) is no longer there.", table=table, row_id=row_id),
        kept=tr("Nothing was changed."),
        do=tr("It was taken out at another desk or undone; look at the page again."),
    )
