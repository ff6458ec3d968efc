"""Room for the rows that an import adds: ids in one range a table, written many at a time."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from operator import itemgetter
from typing import TYPE_CHECKING, Any

from sqlalchemy import func, select, update
from sqlalchemy.sql.schema import Table

from desktop_app.shop_record.bulk import BulkRows, rows_added
from desktop_app.shop_record.databases.dialect import give_ids_from, ids_given, insert_rows
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.past.rows_hash import RowsHash
from desktop_app.shop_record.tables import Kept

if TYPE_CHECKING:
    from desktop_app.records_exchanged.stored_known import JobKnown

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
        ever = ids_given(connection).get(table.name, 0)
        highest = connection.execute(select(func.max(table.c.id))).scalar() or 0
        self.first = max(ever, highest) + 1
        self.next = self.first
        self._waiting: dict[int, Values] = {}
        self._blank: Values = {
            c.name: None if c.default is None else getattr(c.default, "arg", None)
            for c in table.columns
        }
        self._names = [c.name for c in table.columns]
        self._in_order = itemgetter(*self._names)
        self._hash = RowsHash()
        self._as_hashed = True

    def add(self, values: Values) -> int:
        """Add a row and return its id."""
        row_id = self.next
        self.next += 1
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
            self._as_hashed = False
            statement = update(self._table).where(self._table.c.id == row_id).values(**values)
            self._deed.connection.execute(statement)
        else:
            self._deed.change(self._kept, row_id, **values)

    def write(self) -> None:
        """Write the rows that wait."""
        if self._waiting:
            rows = list(map(self._in_order, self._waiting.values()))
            self._waiting.clear()
            insert_rows(self._deed.connection, self._table.name, self._names, rows)
            self._hash.take(rows)

    def remember(self, followed: bool) -> None:
        """Tell the deed which rows were added; they are read again only where one was changed."""
        self.write()
        first, last = self.first, self.next - 1
        if last < first:
            return
        give_ids_from(self._deed.connection, self._table.name, last)
        if self._as_hashed:
            digest = self._hash.hexdigest()
            added = BulkRows(self._table.name, first, last, last - first + 1, digest)
        else:
            added = rows_added(self._deed.connection, self._table, first, last)
        self._deed.bulk.append(added._replace(followed=followed))


class Rooms:
    """A room for each table, those first on which others hang."""

    def __init__(self, deed: Deed, kept: Iterable[type[Kept]], job: type[Kept]) -> None:
        self._deed, self._job = deed, job
        self._rooms = {one: Room(deed, one) for one in kept}
        self._afterwards: list[tuple[type[Kept], Values]] = []  # what hangs on jobs from before
        self._hung: dict[int, list[tuple[type[Kept], Values]]] = {}  # the same by those jobs

    def __getitem__(self, kept: type[Kept]) -> Room:
        return self._rooms[kept]

    def is_new(self, job: JobKnown) -> bool:
        """Tell whether this import added the job."""
        return self._rooms[self._job].is_new(job.id)

    def hang(self, kept: type[Kept], job: JobKnown, values: Values) -> int | None:
        """Add a row to a job: in bulk with a new one, else as any other deed at the end."""
        if self.is_new(job):
            return self._rooms[kept].add(values)
        self._afterwards.append((kept, values))
        self._hung.setdefault(job.id, []).append((kept, values))
        return None

    def hung(self, job: JobKnown) -> Sequence[tuple[type[Kept], Values]]:
        """Return what is to hang on a job from before and isn't written yet."""
        return self._hung.get(job.id, ())

    def change(self, kept: type[Kept], one: Any, values: Values) -> None:
        """Change columns of something that is known, in the record and in what is known."""
        self._rooms[kept].change(one.id, values)
        one.values.update(values)

    def write(self) -> None:
        """Write all rows that wait."""
        for room in self._rooms.values():
            room.write()

    def remember(self, followed: bool) -> None:
        """Tell the deed of all that was added, and add what hangs on jobs from before.

        `followed` says whether the search index has their words already.
        """
        for room in self._rooms.values():
            room.remember(followed)
        for kept, values in self._afterwards:
            self._deed.add(kept, **values)
