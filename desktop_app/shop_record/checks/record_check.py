"""The check of the record itself: its database, its history, and its rows held against that."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Generator, Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.checks.problem import GO_BACK, Problem
from desktop_app.shop_record.checks.rows_expected import RowsExpected, TableExpected
from desktop_app.shop_record.checks.rows_held import rows_held
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.by_database import on_server
from desktop_app.shop_record.past import history
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.upgrade import DESCRIBED

MOST_NAMED = 200  # rows of one table that are named one by one
THE_DATABASE, THE_HISTORY = tr("the database"), tr("the history")
_COMPARE = tr("Compare with a copy or a printed sheet of that day.")
_WHICH_HOLDS = tr(
    "Somebody or something wrote into the file without this program. Compare with a "
    "backup or a printed sheet, and enter what is right as a new change; the history "
    "stays as it is."
)


@dataclass(slots=True)
class RecordLooked:
    """What was found in the record; `photos` are all that its history ever named, by SHA-256.

    `readable` is False where so much is damaged that not all of it could be looked at.
    """

    problems: list[Problem] = field(default_factory=list)
    entries: int = 0
    photos: set[str] = field(default_factory=set)
    readable: bool = True

    def add(self, other: RecordLooked) -> None:
        """Take what was found elsewhere in the same record."""
        self.problems += other.problems
        self.entries += other.entries
        self.photos |= other.photos
        self.readable &= other.readable

    def try_to(self, what: str, look: Callable[[], Iterable[Problem]]) -> None:
        """Take what `look` finds; where the database can't be read there, that is the problem."""
        try:
            self.problems.extend(look())
        except (*dialect.ERRORS, UnicodeDecodeError) as error:
            said = str(getattr(error, "orig", error))
            unread = tr("It can't be read to the end ({said}).", said=said)
            if what:
                unread = tr("{what} can't be read to the end ({said}).", what=what, said=said)
            self.problems.append(Problem(THE_DATABASE, unread, True, GO_BACK))
            self.readable = False


def look_at_database(connection: Connection) -> RecordLooked:
    """Check what the database can say of itself."""
    found = RecordLooked()
    found.try_to("", lambda: _database(connection))
    return found


def look_at_entries_and_rows(connection: Connection) -> Generator[Step, None, RecordLooked]:
    """Check the history, and the rows against it; the tables must be known."""
    found, expected = RecordLooked(), RowsExpected()
    of = len(expected.tables) + 2
    yield Step(0, of, tr("Reading the history"))
    try:
        heard = list(_history(connection, expected, found))
    except (*dialect.ERRORS, UnicodeDecodeError):
        # It may be text that is none any more: which entries those are, is read the slow way.
        expected = RowsExpected()
        with dialect.any_text(connection):
            found.try_to(tr("The history"), lambda: _history(connection, expected, found))
    else:
        found.problems += heard
    tables = list(expected.tables.values())
    for number, table in enumerate(tables):
        yield Step(1 + number, of, tr("Holding the rows against the history"))
        found.try_to(
            tr("The table {name}", name=table.table.name),
            lambda table=table: _rows(connection, table),  # type: ignore[misc]
        )
    found.try_to("", lambda: _ids(connection, tables, found.entries))
    found.photos = expected.photos
    return found


def described(connection: Connection) -> str:
    """Return the SHA-256 of how the database describes its tables, indexes and triggers."""
    said = "\n".join(re.sub("[ \n\t]+", " ", one) for one in dialect.description(connection))
    return hashlib.sha256(said.encode()).hexdigest()


def _database(connection: Connection) -> Iterator[Problem]:
    for words in dialect.integrity_problems(connection):
        yield Problem(THE_DATABASE, words, True, GO_BACK)
    if on_server(connection):
        return  # each release of a server describes the same tables in its own words
    with dialect.any_text(connection):
        if described(connection) not in DESCRIBED:
            what = tr("Its tables are described otherwise than this program made them.")
            yield Problem(THE_DATABASE, what, False, GO_BACK)


def _history(
    connection: Connection, expected: RowsExpected, found: RecordLooked
) -> Iterator[Problem]:
    found.entries, broken = history.chain_problems(connection, expected.hear)
    for words in broken:
        yield Problem(THE_HISTORY, words, False, _COMPARE)
    for words in expected.odd:
        yield Problem(THE_HISTORY, words, False, _COMPARE)


def _rows(connection: Connection, table: TableExpected) -> Iterator[Problem]:
    more = 0
    for number, (where, what) in enumerate(rows_held(connection, table)):
        if number < MOST_NAMED:
            yield Problem(where, what, True, _WHICH_HOLDS)
        else:
            more += 1
    if more:
        what = tr("{more:,} more rows are not as the history says.", more=more)
        yield Problem(table.table.name, what, True, _WHICH_HOLDS)


def _ids(
    connection: Connection, tables: Iterable[TableExpected], entries: int
) -> Iterator[Problem]:
    """Look at the numbers given out: a history that was cut at its end has given out more."""
    given: dict[str, Any] = dialect.ids_given(connection)
    if given.get("history", 0) != entries:
        what = tr(
            "it ends with entry {entries}, but {given} were written",
            entries=entries,
            given=given.get("history", 0),
        )
        yield Problem(THE_HISTORY, what, True, _COMPARE)
    for table in tables:
        if given.get(table.table.name, 0) < table.highest:
            what = tr("It would give numbers of {name} out a second time.", name=table.table.name)
            yield Problem(THE_DATABASE, what, False, GO_BACK)
