"""Which rows of the record are not there: taken out, or undone."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection, Integer, column, select, table

Row = tuple[str, int]  # the name of its table, and its id


def rows_gone(connection: Connection, rows: Iterable[Row]) -> set[Row]:
    """Return those of the rows that are not in the record."""
    asked = set(rows)
    there: set[Row] = set()
    for name in {name for name, _ in asked}:
        number = column("id", Integer)
        ids = [row_id for of, row_id in asked if of == name]
        found = connection.execute(select(number).select_from(table(name)).where(number.in_(ids)))
        there |= {(name, row_id) for row_id in found.scalars()}
    return asked - there
