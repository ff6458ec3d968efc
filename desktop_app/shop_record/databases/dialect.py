"""Everything that only SQLite can do: opening the file, its pragmas, its errors."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from functools import partial
from itertools import chain
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event, text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.pool import QueuePool

from desktop_app.language import tr
from desktop_app.shop_record.databases.by_database import by_database
from desktop_app.shop_record.trouble import NotSaved, RecordBusy, ShopDamaged, ShopTrouble

APPLICATION_ID = 0x42575431  # "BWT1": marks a file as a shop's record
WAIT_SECONDS = 2.0
_WITH_ONE = 100  # rows with one statement: some 3,000 values, where SQLite takes 32,766
_WAITS = "waits"  # where a connection keeps how long it waits, if not as usual

# How SQLite speaks of a file that is not as it was written.
_DAMAGED = (
    "malformed",
    "not a database",
    "disk i/o",
    "could not decode",
    "unsupported file format",
    "no such table",
    "no such column",
    "vtable constructor",
    "sql logic error",
)

# Rollback journal with EXTRA lost no acknowledged commit in simulated power cuts; the rest guards
# against mistakes (foreign keys), against triggers being walked around, and against odd files.
PRAGMAS: tuple[tuple[str, str, Any], ...] = (
    ("journal_mode", "DELETE", "delete"),
    ("synchronous", "EXTRA", 3),
    ("foreign_keys", "ON", 1),
    ("recursive_triggers", "ON", 1),
    ("trusted_schema", "OFF", 0),
    ("cell_size_check", "ON", 1),
)


def create_file(path: Path) -> None:
    """Make an empty record file that carries our mark; refuse one that is already there."""
    if path.exists():
        raise ShopTrouble(
            tr("{path} is already there.", path=path),
            do=tr("Choose another folder or open this shop."),
        )
    try:
        with closing(sqlite3.connect(path)) as fresh, fresh:
            fresh.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            fresh.execute("PRAGMA user_version = 1")
    except sqlite3.OperationalError as error:
        path.unlink(missing_ok=True)
        raise ShopTrouble(
            tr("{path} cannot be written: {error}.", path=path, error=error),
            do=tr("Make room, or choose a folder where you may write."),
        ) from error


def open_engine(path: Path) -> Engine:
    """Return an engine on an existing record file; never creates one.

    Every connection sets the pragmas, reads them back, and refuses to work where one did not take.
    """
    uri = f"{path.resolve().as_uri()}?mode=rw"

    def connect() -> sqlite3.Connection:
        return sqlite3.connect(
            uri, uri=True, timeout=WAIT_SECONDS, isolation_level=None, check_same_thread=False
        )

    engine = create_engine("sqlite+pysqlite://", creator=connect, poolclass=QueuePool)
    event.listen(engine, "connect", _set_up)
    event.listen(engine, "begin", _begin)
    return engine


def _set_up(connection: Any, _record: Any) -> None:
    cursor = connection.cursor()
    for name, wanted, reads in PRAGMAS:
        cursor.execute(f"PRAGMA {name} = {wanted}")
        found = cursor.execute(f"PRAGMA {name}").fetchone()
        if found is None or found[0] != reads:
            raise ShopTrouble(
                tr(
                    "The database did not accept {name} = {wanted} (it says {found}).",
                    name=name,
                    wanted=wanted,
                    found=found,
                ),
                kept=tr("Nothing was changed."),
                do=tr("Move the shop's folder to a disk of this computer and open it again."),
            )
    cursor.close()


def _begin(connection: Connection) -> None:
    writing = connection.get_execution_options().get("writing", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")


def carries_our_mark(path: Path) -> bool:
    """Tell whether the file is a shop's record, by the mark in its header."""
    with path.open("rb") as file:
        head = file.read(72)
    return (
        head[:16] == b"SQLite format 3\x00" and int.from_bytes(head[68:72], "big") == APPLICATION_ID
    )


@by_database
def wait_at_most(connection: Connection, seconds: float | None) -> None:
    """Let a connection wait so long for a lock that somebody else holds; None is as usual."""
    if connection.info.get(_WAITS) == seconds:
        return
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    wait = WAIT_SECONDS if seconds is None else seconds
    raw.execute(f"PRAGMA busy_timeout = {round(1000 * wait)}")
    connection.info[_WAITS] = seconds


_MOVED = "SQLITE_READONLY_DBMOVED"  # the file is gone, or another one lies there by now
# What the database says, through SQLAlchemy and where rows are read from the driver in blocks.
ERRORS = (DBAPIError, sqlite3.Error)


def as_trouble(error: Exception, under_way: str = "") -> ShopTrouble | None:
    """Turn one of ERRORS that a shop can do something about into words; else None.

    `under_way` is what is known to be written for a long time by somebody else.
    """
    cause = getattr(error, "orig", error)
    if type(cause).__module__.startswith("psycopg"):
        from desktop_app.shop_record.databases import dialect_postgres

        return dialect_postgres.as_trouble(error, under_way)
    said = str(cause).lower()
    kept = tr("What you typed is still in its field; nothing was saved.")
    if ("locked" in said or "busy" in said) and under_way:
        return RecordBusy(
            tr("“{under_way}” is under way.", under_way=under_way),
            kept,
            tr("Try again when it is done."),
        )
    if "locked" in said or "busy" in said:
        what = tr("The shop's record is busy in another program.")
        return RecordBusy(what, kept, tr("Try again."))
    if "full" in said:
        return NotSaved(tr("The disk is full."), kept, tr("Free some space and try again."))
    if getattr(cause, "sqlite_errorname", "") == _MOVED:
        return record_moved()
    if "readonly" in said or "read-only" in said:
        return NotSaved(
            tr("The shop's folder can be read but not written."),
            kept,
            tr("Ask for the right to write."),
        )
    if "foreign key constraint" in said:
        return ShopTrouble(
            tr("What this belongs to is no longer there."),
            tr("Nothing was changed."),
            tr("It was taken out or undone; look at the page again."),
        )
    if any(words in said for words in _DAMAGED):
        return damaged_record()
    if "unable to open" in said:
        return NotSaved(
            tr("The shop's record cannot be opened."), kept, tr("Is its folder still there?")
        )
    return None


def record_moved() -> NotSaved:
    """Return what to say where a record is gone that was opened, or another lies in its place."""
    return NotSaved(
        tr("The shop's folder is not where it was when it was opened."),
        tr("What you typed is still in its field; nothing was saved."),
        tr("Put it back, or the disk or stick that it is on."),
    )


def damaged_record() -> ShopDamaged:
    """Return what to say of a record that the database can't read."""
    return ShopDamaged(
        tr("The shop's record is damaged or its disk fails."),
        tr("The file was left as it is."),
        tr("Put your last good copy of shop.sqlite in its place."),
    )


@by_database
def integrity_problems(connection: Connection) -> list[str]:
    """Return what the database says of its own damage; an empty list where it is whole."""
    found = [str(row[0]) for row in connection.execute(text("PRAGMA integrity_check"))]
    problems = [] if found == ["ok"] else found
    for row in connection.execute(text("PRAGMA foreign_key_check")):
        problems.append(
            tr(
                "{table} row {row} points to a row of {other} that is missing",
                table=row[0],
                row=row[1],
                other=row[2],
            )
        )
    return problems


@by_database
def damage_seen_quickly(connection: Connection) -> list[str]:
    """Return what the database's quick check says of its pages; an empty list where all is well."""
    found = [str(row[0]) for row in connection.exec_driver_sql("PRAGMA quick_check(1)")]
    return [] if found == ["ok"] else found


@by_database
def description(connection: Connection) -> list[str]:
    """Return how tables, indexes, views and triggers are described, the search index's own aside.

    What FTS5 makes for itself may be described otherwise by another version of it.
    """
    wanted = "SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY type, name"
    rows = connection.exec_driver_sql(wanted).all()
    return [" ".join(map(str, row)) for row in rows if "job_text_" not in f"{row[1]} {row[2]}"]


@by_database
def ids_given(connection: Connection) -> dict[str, int]:
    """Return the highest id that each table has ever given out."""
    return dict(connection.exec_driver_sql("SELECT name, seq FROM sqlite_sequence").all())


@by_database
def entry_asked_ahead(_connection: Connection) -> tuple[int, str] | None:
    """Return the end of the history as it was asked when a deed began; None where it was not."""
    return None


@by_database
def ask_ahead(connection: Connection, query: str) -> Callable[[], Sequence[Any]]:
    """Ask for rows that are not needed yet: a server gives them with the next answer."""
    rows = connection.exec_driver_sql(query).all()
    return lambda: rows


@by_database
def hear_refusals(_connection: Connection) -> None:
    """Let what was refused be raised here; a file refuses at once, a server with its answer."""


@by_database
def let_it_lie(connection: Connection) -> None:
    """Let the open transaction of a connection lie idle for as long as it takes."""


def let_any_row_in(connection: Connection) -> None:
    """Let rows of a copy come in any order; that they point to others is looked at in the end."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    raw.execute("PRAGMA foreign_keys = OFF")


@by_database
def give_ids_from(connection: Connection, table: str, highest: int) -> None:
    """Let no id up to this one be given out again."""
    given = "UPDATE sqlite_sequence SET seq = max(seq, ?) WHERE name = ?"
    if not connection.exec_driver_sql(given, (highest, table)).rowcount and highest:
        given = "INSERT INTO sqlite_sequence (seq, name) VALUES (?, ?)"
        connection.exec_driver_sql(given, (highest, table))


@by_database
def insert_rows(
    connection: Connection, table: str, columns: Sequence[str], rows: Sequence[Sequence[Any]]
) -> None:
    """Write rows straight into a table, past any deed: who calls remembers them.

    A hundred at a time take half as long as one by one: the checks are set up once for them all.
    """
    names = ", ".join(f'"{name}"' for name in columns)
    places = f"({', '.join('?' * len(columns))})"
    sql = f'INSERT INTO "{table}" ({names}) VALUES {places}'
    many = f"{sql}{f', {places}' * (_WITH_ONE - 1)}"
    whole = len(rows) - len(rows) % _WITH_ONE
    for start in range(0, whole, _WITH_ONE):
        values = tuple(chain.from_iterable(rows[start : start + _WITH_ONE]))
        connection.exec_driver_sql(many, values)
    if whole < len(rows):
        connection.exec_driver_sql(sql, list(map(tuple, rows[whole:])))


@by_database
def all_rows(
    connection: Connection, table: str, columns: Sequence[str], at_a_time: int
) -> Iterator[list[tuple[Any, ...]]]:
    """Give all rows of a table by id, some at a time, straight from the driver: for large checks.

    Text that is no UTF-8 any more is given with its odd bytes escaped.
    """
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    names = ", ".join(f'"{name}"' for name in columns)
    number = "id" if "id" in columns else columns[0]
    wanted = f'SELECT {names} FROM "{table}" WHERE "{number}" > ? ORDER BY "{number}"'
    at_id, last = columns.index(number), -(1 << 63)
    try:
        for piece in _pieces(raw.execute(wanted, (last,)), at_a_time):
            last = piece[-1][at_id]
            yield piece
    except sqlite3.OperationalError as error:
        if "decode" not in str(error).lower():
            raise
        with any_text(connection):
            yield from _pieces(raw.execute(wanted, (last,)), at_a_time)


def _pieces(rows: sqlite3.Cursor, at_a_time: int) -> Iterator[list[tuple[Any, ...]]]:
    while piece := rows.fetchmany(at_a_time):
        yield piece


@by_database
@contextmanager
def any_text(connection: Connection) -> Iterator[None]:
    """Read text that is no UTF-8 with its odd bytes escaped, where it else could not be read."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    raw.text_factory = partial(str, encoding="utf-8", errors="backslashreplace")
    try:
        yield
    finally:
        raw.text_factory = str


@by_database
def is_cut_short(connection: Connection, path: Path) -> bool:
    """Tell whether the file has lost its end; the database itself reads on as if it were empty."""
    size: int = connection.exec_driver_sql("PRAGMA page_size").scalar_one()
    pages: int = connection.exec_driver_sql("PRAGMA page_count").scalar_one()
    return path.stat().st_size < size * pages


@by_database
def copy_whole(connection: Connection, to: Path) -> None:
    """Write a consistent copy of the record to a new file; it is on the disk when this returns."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    copy = sqlite3.connect(to)
    try:
        raw.backup(copy)
    finally:
        copy.close()
    with to.open("rb+") as file:
        os.fsync(file.fileno())
