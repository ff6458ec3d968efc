"""The tables of the record read row by row, as they are written into an export."""

from __future__ import annotations

from collections.abc import Generator, Iterator, Sequence
from typing import Any

from sqlalchemy import Column, Connection, Float, Integer, Table, func, select

from desktop_app.records_exchanged.export_cells import CellRule
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.dialect_blocks import read_past
from desktop_app.shop_record.tables import Base, HistoryEntry

AT_A_TIME = 2000
# How the words of the deed begin that brings a whole export back: it is known again by them, in
# whichever language it was done.
BROUGHT_BACK = "Bring back the export "

Rows = Sequence[Sequence[Any]]


def kept_tables() -> list[Table]:
    """Return the tables whose rows deeds change, those first on which others hang."""
    history = history_table()
    return [table for table in Base.metadata.sorted_tables if table is not history]


def history_table() -> Table:
    """Return the table of the history."""
    table = HistoryEntry.__table__
    assert isinstance(table, Table)
    return table


def columns_of(table: Table) -> list[Column[Any]]:
    """Return the columns of a table, the number of the row first."""
    return sorted(table.columns, key=lambda column: not column.primary_key)


def rules_of(table: Table) -> tuple[CellRule, ...]:
    """Return how each column of a table is written, in the order of `columns_of`."""
    return tuple(
        CellRule(column.name, _kind(column.type), bool(column.nullable))
        for column in columns_of(table)
    )


def _kind(of: Any) -> Any:
    if isinstance(of, Integer):
        return "whole"
    return "number" if isinstance(of, Float) else "text"


def table_rows(connection: Connection, table: Table) -> Generator[Rows, None, None]:
    """Give all rows of a table by their number, some thousands at a time."""
    columns = columns_of(table)
    yield from _in_pieces(connection, select(*columns).order_by(columns[0]))


def history_rows(connection: Connection) -> Generator[Rows, None, None]:
    """Give the entries of the history.

    Where bringing an export back was the last that was done, that entry is left out: the record is
    still the one that was exported, and what comes after it in another shop is its own entry.
    """
    table = history_table()
    last = connection.execute(
        select(table.c.seq, table.c.words, table.c.reverses).order_by(table.c.seq.desc()).limit(1)
    ).first()
    wanted = select(*columns_of(table)).order_by(table.c.seq)
    if last is not None and last.reverses is None and last.words.startswith(BROUGHT_BACK):
        wanted = wanted.where(table.c.seq < last.seq)
    yield from _in_pieces(connection, wanted)


def ids_given(connection: Connection) -> list[tuple[str, int]]:
    """Return the highest id that each table ever gave to a row, also to one that is gone."""
    ever = dialect.ids_given(connection)
    return [(table.name, ever.get(table.name, 0)) for table in kept_tables()]


def count_of(connection: Connection, table: Table) -> int:
    """Return how many rows a table has."""
    return connection.execute(select(func.count()).select_from(table)).scalar_one()


def _in_pieces(connection: Connection, wanted: Any) -> Iterator[Rows]:
    """Give the rows of a query as plain tuples, past what SQLAlchemy makes of each."""
    return read_past(connection, wanted, None, AT_A_TIME)
