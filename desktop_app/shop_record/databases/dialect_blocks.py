"""Very many rows read past SQLAlchemy, as the driver itself gives them: in a third of the time."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import AbstractContextManager, nullcontext
from functools import lru_cache
from itertools import count
from typing import Any

from sqlalchemy import ColumnElement, Connection, Dialect, Select, literal_column
from sqlalchemy.types import Integer, TypeEngine

from desktop_app.shop_record.databases.by_database import on_server

_NUMBERS = count()


def some_of(kind: TypeEngine[Any], *, on_server: bool) -> ColumnElement[Any]:
    """Return the place of a list in a statement that `read_past` reads, taken apart."""
    if not on_server:
        return literal_column("(SELECT value FROM json_each(?))")
    of = "bigint" if isinstance(kind, Integer) else "text"
    return literal_column(f"(SELECT CAST(value AS {of}) FROM json_array_elements_text(%s))")


@lru_cache(maxsize=64)
def _words(statement: Select[*tuple[Any, ...]], dialect: Dialect) -> str:
    """Return a statement as a database hears it, made once of each that is kept."""
    return str(statement.compile(dialect=dialect, compile_kwargs={"literal_binds": True}))


def read_past(
    connection: Connection, statement: Select[*tuple[Any, ...]], listed: str | None, at_once: int
) -> Iterator[Sequence[Sequence[Any]]]:
    """Give the rows of a statement in blocks; `listed` stands where `some_of` said. None is empty.

    The rows are the driver's own tuples.
    """
    words = _words(statement, connection.dialect)
    values = () if listed is None else (listed,)
    name = ""
    guard: AbstractContextManager[None] = nullcontext()
    if on_server(connection):
        from desktop_app.shop_record.databases.dialect_postgres import errors_as_usual

        name = f"past_{next(_NUMBERS)}"  # a cursor of the server: what is not asked for stays there
        words = words.replace("text(%%s)", "text(%s::json)")
        guard = errors_as_usual(connection, words)
    with guard:
        driver = connection.connection
        cursor = driver.cursor(name) if name else driver.cursor()
        try:
            cursor.execute(words, values)
            while rows := cursor.fetchmany(at_once):
                yield rows
        finally:
            cursor.close()
