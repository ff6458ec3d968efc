"""Every row that a record keeps, and what it should be once a deed is taken back."""

from __future__ import annotations

from functools import cache
from typing import Any

from sqlalchemy import Connection, Select, select

from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.databases.dialect_search import jobs_indexed, read_texts
from desktop_app.shop_record.deed import RowChange
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import Base

Row = dict[str, Any]
State = dict[str, dict[int, Row]]  # by table and id
SEARCH = "the search's words"


def state_of(record: ShopRecord) -> State:
    """Read every row of every table but the history's, and the words that the search has."""
    record.know_tables()
    with record.reading() as connection:
        kept = {
            name: {row["id"]: dict(row) for row in connection.execute(wanted).mappings()}
            for name, wanted in _all_tables().items()
        }
        return kept | {SEARCH: _searched(connection)}


@cache
def _all_tables() -> dict[str, Select[Any]]:
    tables = Base.metadata.sorted_tables
    return {table.name: select(table) for table in tables if table.name != "history"}


def _searched(connection: Connection) -> dict[int, Row]:
    texts = read_texts(connection, sorted(jobs_indexed(connection)))
    return {job: words._asdict() for job, words in texts.items()}


def differences(one: State, other: State) -> list[str]:
    """Name the rows that differ, with both forms: what a failed test shows."""
    return [
        f"{table} {row}: {one[table].get(row)} / {other[table].get(row)}"
        for table in sorted(one.keys() & other.keys())
        for row in sorted(one[table].keys() | other[table].keys())
        if one[table].get(row) != other[table].get(row)
    ]


def without_search(state: State) -> State:
    """The kept rows alone: what the search has follows from them."""
    return {table: rows for table, rows in state.items() if table != SEARCH}


def with_taken_back(now: State, changes: list[RowChange], bulk: list[BulkRows]) -> State | None:
    """The kept rows with one entry taken back; None where a row is not as the entry left it."""
    wanted = {table: dict(rows) for table, rows in without_search(now).items()}
    for change in reversed(changes):
        rows = wanted[change.table]
        row = rows.get(change.row_id)
        if not _as_left(row, change.after):
            return None
        if change.before is None:
            del rows[change.row_id]
        elif row is None:
            rows[change.row_id] = dict(change.before)
        else:
            rows[change.row_id] = row | change.before
    for one in bulk:
        for row_id in range(one.first, one.last + 1):
            if wanted[one.table].pop(row_id, None) is None:
                return None
    return wanted


def _as_left(row: Row | None, left: Row | None) -> bool:
    if row is None or left is None:
        return row is None and left is None
    return all(row[name] == value for name, value in left.items())
