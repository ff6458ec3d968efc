"""The rows of an export written into an empty record under their own ids, each held to account."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from sqlalchemy import Connection, Table, func, select
from sqlalchemy.exc import DataError, DBAPIError, IntegrityError

from desktop_app.language import tr
from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared.stored_check import bench_problems
from desktop_app.records_exchanged.export_names import (
    HISTORY,
    IDS_GIVEN,
    LATER_TABLES,
    TABLE_FILES,
    table_file,
)
from desktop_app.records_exchanged.stored_export import columns_of, history_table, kept_tables
from desktop_app.records_exchanged.whole_checksums import refused, row_of
from desktop_app.returns_watched.stored_check import record_problems
from desktop_app.shop_record.bulk import rows_added
from desktop_app.shop_record.databases.dialect import give_ids_from, insert_rows
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.past.history import chain_problems
from desktop_app.shop_record.trouble import ShopTrouble

NumberedRows = Iterable[list[tuple[int, tuple[Any, ...]]]]
# Above what any shop gives out; what follows many rows goes through the ids between.
MOST_IDS = 100_000_000
# What a database says of a value or a row that can't stand there.
_REFUSED = (IntegrityError, DataError)
_SHA256 = re.compile(r"[0-9a-f]{64}")


def is_untouched(connection: Connection) -> bool:
    """Tell whether nothing was ever written into the record."""
    tables = [*kept_tables(), history_table()]
    return all(connection.execute(select(table).limit(1)).first() is None for table in tables)


def write_table(deed: Deed, table: Table, pieces: NumberedRows) -> Iterator[int]:
    """Add the rows of a table to the deed, giving how many there are so far.

    Raises ShopTrouble with file and row where an id is out of order or a row can't stand there.
    """
    first = last = count = 0
    for rows in pieces:
        for number, values in rows:
            if not last < values[0] <= MOST_IDS:
                where = row_of(table_file(table.name), number, "id")
                raise refused(
                    where, tr("{id} is not above the id before, or too large", id=values[0])
                )
            first, last = first or values[0], values[0]
        _insert(deed.connection, table, table_file(table.name), rows)
        count += len(rows)
        yield count
    if first:
        deed.bulk.append(rows_added(deed.connection, table, first, last))


def write_history(connection: Connection, pieces: NumberedRows) -> Iterator[int]:
    """Write the entries as they were and work out their hashes again.

    Raises ShopTrouble where an entry says one thing in its columns and another in its body, and
    where a hash doesn't hold.
    """
    table, count = history_table(), 0
    names = [column.name for column in columns_of(table)]
    for rows in pieces:
        for at, (number, values) in enumerate(rows, count + 1):
            _check_entry(
                row_of(HISTORY, number),
                at,
                dict(zip(names, values, strict=True)),
            )
        _insert(connection, table, HISTORY, rows)
        count += len(rows)
        yield count
    _, problems = chain_problems(connection)
    if problems:
        raise refused(HISTORY, problems[0])


def _check_entry(where: str, seq: int, entry: dict[str, Any]) -> None:
    if entry["seq"] != seq:
        raise refused(f"{where}, seq", tr("entry {number} is missing", number=seq))
    try:
        facts = json.loads(entry["body"])
        same = all(facts[name] == entry[name] for name in ("at", "who", "words", "reverses"))
        whole = isinstance(facts["changes"], list)
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise refused(f"{where}, body", tr("it is no entry of a history")) from error
    if not same or not whole:
        raise refused(where, tr("the entry says one thing in its columns and another in its body"))
    if entry["reverses"] is not None and entry["reverses"] >= entry["seq"]:
        raise refused(where, tr("it takes back an entry that is not before it"))


def _insert(
    connection: Connection, table: Table, file: str, rows: list[tuple[int, tuple[Any, ...]]]
) -> None:
    try:
        _write_in(connection, table, [values for _, values in rows])
    except _REFUSED as error:
        raise _of_row(connection, table, file, rows, error) from error


def _write_in(connection: Connection, table: Table, rows: Sequence[tuple[Any, ...]]) -> None:
    """Write all of these rows or none: the deed goes on either way."""
    with connection.begin_nested():
        insert_rows(connection, table.name, [column.name for column in columns_of(table)], rows)


def _of_row(
    connection: Connection,
    table: Table,
    file: str,
    rows: Sequence[tuple[int, tuple[Any, ...]]],
    error: DBAPIError,
) -> ShopTrouble:
    """Say which row the database refuses: they are tried one by one, up to the first."""
    for number, values in rows:
        try:
            _write_in(connection, table, [values])
        except _REFUSED as refusal:
            return _why(connection, table, row_of(file, number), values, refusal)
    return refused(file, tr("the record can't hold its rows ({reason})", reason=error.orig))


def _why(
    connection: Connection, table: Table, where: str, values: Sequence[Any], refusal: DBAPIError
) -> ShopTrouble:
    for column, value in zip(columns_of(table), values, strict=True):
        for foreign in column.foreign_keys:
            there = select(foreign.column).where(foreign.column == value)
            if value is not None and connection.execute(there).first() is None:
                why = tr("there is no {table} {id}", table=foreign.column.table.name, id=value)
                return refused(f"{where}, {column.name}", why)
    return refused(where, tr("the record can't hold it ({reason})", reason=refusal.orig))


def raise_ids_given(connection: Connection, pieces: NumberedRows) -> None:
    """Let no id be given again that the exported record ever gave to a row."""
    tables = {table.name: table for table in kept_tables()}
    for rows in pieces:
        for number, (name, highest) in rows:
            where = row_of(IDS_GIVEN, number)
            if name not in tables:
                raise refused(where, tr("there is no table “{name}”", name=name[:60]))
            used = connection.execute(select(func.max(tables.pop(name).c.id))).scalar() or 0
            if not used <= highest <= MOST_IDS:
                raise refused(
                    where,
                    tr(
                        "{highest} can't be the highest id (there is {used})",
                        highest=highest,
                        used=used,
                    ),
                )
            give_ids_from(connection, name, highest)
    if missing := tables.keys() - LATER_TABLES:
        raise refused(IDS_GIVEN, tr("the table {table} is missing", table=min(missing)))


def photos_differ(connection: Connection, named: Iterable[tuple[int, str]]) -> int | None:
    """Return the first photo's row that the table and the list of files don't say alike."""
    kept = connection.execute(select(Photo.id, Photo.sha256).order_by(Photo.id))
    listed = iter(named)
    for row in kept:
        if next(listed, None) != (row.id, row.sha256) or not _SHA256.fullmatch(row.sha256):
            return int(row.id)
    left = next(listed, None)
    return None if left is None else left[0]


def refuse_what_no_deed_writes(connection: Connection) -> None:
    """Raise ShopTrouble where the check of a shop would find a value that nothing has written."""
    for where, what in record_problems(connection):
        raise refused(_in_file(where), what.rstrip("."))
    for what in bench_problems(connection):
        raise refused("tables", what.rstrip("."))


def _in_file(where: str) -> str:
    """Return a place in the record ("visit row 3") as the file that it was read from.

    In any language a table's own name and the number of the row stand in it.
    """
    words = re.findall(r"\w+", where)
    table = next((word for word in words if word in TABLE_FILES), None)
    row = next((word for word in words if word.isdecimal()), None)
    if table is None or row is None:
        return where
    return tr("{file}, id {id}", file=table_file(table), id=row)
