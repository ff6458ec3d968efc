"""A whole record carried from one database into another, row for row, and both compared."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Generator, Iterator, Mapping
from pathlib import Path

from sqlalchemy import Connection, MetaData, Table, func, inspect, select

from desktop_app.language import tr
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.databases import dialect, dialect_search
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

AT_A_TIME = 2000
HISTORY = "history"
# What a database has for itself: made anew in the other one, or its own affair.
_ITS_OWN = ("sqlite_", "job_text", "job_words", "alembic_version", "photo_content", "set_up")


def tables_of(connection: Connection) -> list[Table]:
    """Return all tables of a record as the database has them, those first on which others hang."""
    names = inspect(connection).get_table_names()
    kept = [name for name in names if not name.startswith(_ITS_OWN)]
    found = MetaData()
    found.reflect(connection, only=kept)
    return found.sorted_tables


def carry_over(source: Connection, target: Connection) -> Generator[Step, None, Mapping[str, int]]:
    """Copy every row, the numbers given out and the words of jobs into an empty record.

    Both stand in a transaction of their own: the source is one state, the target all or nothing.
    Returns the numbers: a server tells at any time those of now, whatever state is looked at.
    """
    tables = tables_of(source)
    of = len(tables) + 1
    for number, table in enumerate(tables):
        yield Step(number, of, tr("Copying {name}", name=table.name))
        names = [column.name for column in table.columns]
        for rows in dialect.all_rows(source, table.name, names, AT_A_TIME):
            dialect.insert_rows(target, table.name, names, rows)
            yield Step(number, of, tr("Copying {name}", name=table.name))
    given = dialect.ids_given(source)
    for name, highest in given.items():
        dialect.give_ids_from(target, name, highest)
    yield Step(of - 1, of, tr("Copying the words of the jobs"))
    jobs = sorted(dialect_search.jobs_indexed(source))
    for start in range(0, len(jobs), AT_A_TIME):
        some = jobs[start : start + AT_A_TIME]
        dialect_search.write_texts(target, dialect_search.read_texts(source, some))
    return given


def refuse_difference(source: Connection, target: Connection) -> None:
    """Compare two records row by row; ShopTrouble names the first table that differs."""
    for _ in compare(source, target, dialect.ids_given(source)):
        pass


def compare(source: Connection, target: Connection, given: Mapping[str, int]) -> Iterator[Step]:
    """Do what `refuse_difference` does, a step for each table; `given` are the numbers copied."""
    tables = tables_of(source)
    for number, table in enumerate(tables):
        yield Step(number, len(tables), tr("Comparing {name}", name=table.name))
        names = [column.name for column in table.columns]
        if _digest(source, table.name, names) != _digest(target, table.name, names):
            raise ShopTrouble(
                tr(
                    "The copy is not the same as the record: the table {name} differs.",
                    name=table.name,
                ),
                kept=tr("The shop that was to be copied is as it was."),
                do=tr("Try again; look at the disk of the copy."),
            )
    copied = dialect.ids_given(target)
    if {name: n for name, n in given.items() if n} != {name: n for name, n in copied.items() if n}:
        raise ShopTrouble(
            tr("The copy would give numbers out that the record has given out before."),
            kept=tr("The shop that was to be copied is as it was."),
            do=tr("Try again."),
        )


def counted(connection: Connection) -> tuple[int, int]:
    """Return how many rows a record has, and how many entries its history has."""
    rows = entries = 0
    for table in tables_of(connection):
        count = connection.execute(select(func.count()).select_from(table)).scalar_one()
        if table.name == HISTORY:
            entries = count
        else:
            rows += count
    return rows, entries


def copy_to_file(connection: Connection, to: Path) -> Iterator[Step]:
    """Write the record of a server into a new file of SQLite, and compare both."""
    dialect.create_file(to)
    upgrade.build(to)
    engine = dialect.open_engine(to)
    try:
        with engine.connect() as plain:
            target = plain.execution_options(writing=True)
            dialect.let_any_row_in(plain)
            with target.begin():
                given = yield from carry_over(connection, target)
            with plain.begin():
                yield from compare(connection, plain, given)
    finally:
        engine.dispose()


def _digest(connection: Connection, table: str, names: list[str]) -> str:
    """Return the SHA-256 of all rows of a table in the order of their numbers."""
    digest = hashlib.sha256()
    for rows in dialect.all_rows(connection, table, names, AT_A_TIME):
        digest.update(f"{json.dumps(rows)[1:-1]}, ".encode())  # the same however many at a time
    return digest.hexdigest()
