"""Full-text search as SQLite does it (FTS5), behind a small interface that knows no SQLite."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from typing import NamedTuple

from sqlalchemy import Connection, text
from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record.databases.by_database import by_database
from desktop_app.shop_record.databases.dialect import wait_at_most

# How much a word counts in each column, in the columns' order: most where the customer says it.
WEIGHTS = (3.0, 2.0, 2.0, 1.5, 3.0, 2.0, 2.0, 1.0)
_RANK = f"bm25({', '.join(str(weight) for weight in WEIGHTS)})"
_LAST_CHARACTER = "\U0010ffff"
# Memory for pages and for words not yet written out: usually, and while very much is written.
_PAGES_USUAL_KB, _PAGES_KB = 2000, 32_768
# Up to here pages wait in memory for the end: the first that is written shuts all readers out.
_UNWRITTEN_KB = 100_000
_PATIENCE_SECONDS = 60  # for readers, at the end: hundreds of thousands of rows are not thrown away
_WORDS_USUAL, _WORDS_BYTES = 1 << 20, 1 << 23


class JobText(NamedTuple):
    """The words of one job that can be searched, column by column; all in folded words."""

    concern: str = ""
    cause: str = ""
    correction: str = ""
    conditions: str = ""
    codes: str = ""
    parts: str = ""
    vehicle: str = ""
    people: str = ""


class Wanted(NamedTuple):
    """One word to find: any of these whole words, or any word with one of these beginnings."""

    whole: tuple[str, ...] = ()
    beginnings: tuple[str, ...] = ()
    column: str = ""


@by_database
def write_texts(connection: Connection, texts: Mapping[int, JobText]) -> None:
    """Put the texts of jobs into the index, in place of what it had for them."""
    if texts:
        connection.exec_driver_sql(
            "INSERT OR REPLACE INTO job_text(rowid, concern, cause, correction, conditions, "
            "codes, parts, vehicle, people) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
            [(job, *words) for job, words in texts.items()],
        )


@by_database
@contextmanager
def room_to_write(connection: Connection) -> Iterator[None]:
    """Give the database and its index more memory while very much is written in one deed."""
    connection.exec_driver_sql(f"PRAGMA cache_size = -{_PAGES_KB}")
    connection.exec_driver_sql(f"PRAGMA cache_spill = -{_UNWRITTEN_KB}")
    wait_at_most(connection, _PATIENCE_SECONDS)
    _hold_back(connection, _WORDS_BYTES)
    try:
        yield
        _hold_back(connection, _WORDS_USUAL)
    finally:
        if not connection.invalidated:
            connection.exec_driver_sql(f"PRAGMA cache_size = -{_PAGES_USUAL_KB}")


def _hold_back(connection: Connection, size: int) -> None:
    """Let the index hold so many bytes of words in memory before it writes them out."""
    said = "INSERT INTO job_text(job_text, rank) VALUES ('hashsize', ?)"
    connection.exec_driver_sql(said, (size,))


@by_database
def read_texts(connection: Connection, jobs: Sequence[int]) -> dict[int, JobText]:
    """Return what the index has of these jobs."""
    rows = connection.execute(
        text(
            "SELECT rowid, concern, cause, correction, conditions, codes, parts, vehicle, people "
            "FROM job_text WHERE rowid IN (SELECT value FROM json_each(:ids))"
        ),
        {"ids": json.dumps(list(jobs))},
    )
    return {row[0]: JobText(*row[1:]) for row in rows}


@by_database
def remove_texts(connection: Connection, jobs: Sequence[int]) -> None:
    """Take jobs out of the index."""
    for job in jobs:
        connection.execute(text("DELETE FROM job_text WHERE rowid = :id"), {"id": job})


@by_database
def remove_range(connection: Connection, first: int, last: int) -> None:
    """Take all jobs from the first to the last out of the index."""
    gone = "DELETE FROM job_text WHERE rowid BETWEEN ? AND ?"
    connection.exec_driver_sql(gone, (first, last))


@by_database
def empty_index(connection: Connection) -> None:
    """Take everything out of the index."""
    connection.execute(text("DELETE FROM job_text"))


@by_database
def index_is_whole(connection: Connection) -> bool:
    """Let the index hold its words against its texts; it takes the lock of a writer for that."""
    try:
        connection.exec_driver_sql("INSERT INTO job_text(job_text) VALUES ('integrity-check')")
    except DBAPIError as error:
        said = str(error.orig).lower()
        if "malformed" in said or "vtable" in said or "logic error" in said:
            return False
        raise
    return True


@by_database
def make_words_anew(connection: Connection) -> None:
    """Make the words of the index anew from its texts, however damaged they are."""
    connection.exec_driver_sql("INSERT INTO job_text(job_text) VALUES ('rebuild')")


@by_database
def jobs_indexed(connection: Connection) -> set[int]:
    """Return the jobs that the index has texts of."""
    return {row[0] for row in connection.exec_driver_sql("SELECT rowid FROM job_text")}


@by_database
def best(connection: Connection, all_of: Sequence[Wanted], limit: int) -> list[int]:
    """Return the jobs that have all the words, by BM25 (k1 1.2, b 0.75, columns weighted)."""
    return _matching(connection, all_of, f"AND rank MATCH '{_RANK}' ORDER BY rank", limit)


@by_database
def newest(connection: Connection, all_of: Sequence[Wanted], limit: int) -> list[int]:
    """Return the jobs that have all the words, the newest first; nothing is scored."""
    return _matching(connection, all_of, "ORDER BY rowid DESC", limit)


@by_database
def jobs_with_stems(connection: Connection, stems: Iterable[str]) -> dict[str, int]:
    """Return in how many jobs each of these stems stands; those in none are left out."""
    listed = {f"s{i}": stem for i, stem in enumerate(stems)}
    if not listed:
        return {}
    places = ", ".join(f":{name}" for name in listed)
    rows = connection.execute(
        text(f"SELECT term, doc FROM job_words WHERE term IN ({places})"), listed
    )
    return {row[0]: row[1] for row in rows}


@by_database
def stems_beginning(connection: Connection, beginning: str, limit: int) -> list[tuple[str, int]]:
    """Return stems that begin so, with the number of jobs that have each."""
    rows = connection.execute(
        text("SELECT term, doc FROM job_words WHERE term >= :low AND term < :high LIMIT :most"),
        {"low": beginning, "high": beginning + _LAST_CHARACTER, "most": limit},
    )
    return [(row[0], row[1]) for row in rows]


def _matching(
    connection: Connection, all_of: Sequence[Wanted], order: str, limit: int
) -> list[int]:
    expression = _expression(all_of)
    if not expression:
        return []
    rows = connection.execute(
        text(f"SELECT rowid FROM job_text WHERE job_text MATCH :words {order} LIMIT :most"),
        {"words": expression, "most": limit},
    )
    return [row[0] for row in rows]


def _expression(all_of: Sequence[Wanted]) -> str:
    """Write the words in FTS5's language; everything is quoted, so nothing typed is syntax."""
    parts = []
    for wanted in all_of:
        choices = [_quoted(word) for word in wanted.whole if word]
        choices += [f"{_quoted(word)} *" for word in wanted.beginnings if word]
        if choices:
            where = f"{wanted.column} : " if wanted.column else ""
            parts.append(f"{where}({' OR '.join(choices)})")
    return " AND ".join(parts)


def _quoted(word: str) -> str:
    clean = word.replace('"', " ").replace("\x00", " ").strip()
    return f'"{clean}"'
