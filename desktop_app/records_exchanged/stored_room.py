"""Room for the rows that an import adds: ids in one range a table, written many at a time."""

from __future__ import annotations

from collections.abc import Iterable
from operator import itemgetter
from typing import Any

from sqlalchemy import bindparam, func, insert, select, update
from sqlalchemy.sql.schema import Table

from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.tables import Kept

Values = dict[str, Any]


class Room:
    """The rows that one import adds to one table, all beyond what the table ever had.

    What it adds is remembered as one range; what was there before is changed through the deed.
    """

    def __init__(self, deed: Deed, kept: type[Kept]) -> None:
        table = kept.__table__
        assert isinstance(table, Table)
        self._deed, self._kept, self._table = deed, kept, table
        connection = deed.connection
        given = "SELECT seq FROM sqlite_sequence WHERE name = ?"
        ever = connection.exec_driver_sql(given, (table.name,)).scalar() or 0
        highest = connection.execute(select(func.max(table.c.id))).scalar() or 0
        self.first = max(int(ever), int(highest)) + 1
        self._next = self.first
        self._waiting: dict[int, Values] = {}
        self._blank: Values = {
            c.name: None if c.default is None else getattr(c.default, "arg", None)
            for c in table.columns
        }
        self._names = [c.name for c in table.columns]

    def add(self, values: Values) -> int:
        """Add a row and return its id."""
        row_id = self._next
        self._next += 1
        self._waiting[row_id] = {**self._blank, **values, "id": row_id}
        return row_id

    def is_new(self, row_id: int) -> bool:
        """Tell whether this import added the row."""
        return row_id >= self.first

    def change(self, row_id: int, values: Values) -> None:
        """Change columns of a row, with its state before where it was there before."""
        if row_id in self._waiting:
            self._waiting[row_id].update(values)
        elif self.is_new(row_id):
            statement = update(self._table).where(self._table.c.id == row_id).values(**values)
            self._deed.connection.execute(statement)
        else:
            self._deed.change(self._kept, row_id, **values)

    def write(self) -> None:
        """Write the rows that wait."""
        if not self._waiting:
            return
        statement = insert(self._table).values({name: bindparam(name) for name in self._names})
        sql = str(statement.compile(self._deed.connection.engine))
        rows = list(map(itemgetter(*self._names), self._waiting.values()))
        self._deed.connection.exec_driver_sql(sql, rows)
        self._waiting.clear()

    def remember(self) -> None:
        """Tell the deed which rows were added."""
        self.write()
        if self._next > self.first:
            self._deed.remember_added(self._kept, self.first, self._next - 1)


def rooms(deed: Deed, kept: Iterable[type[Kept]]) -> dict[type[Kept], Room]:
    """Return a room for each table, those first on which others hang."""
    return {one: Room(deed, one) for one in kept}
