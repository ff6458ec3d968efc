"""Full-text search as PostgreSQL does it (tsvector, GIN), behind the interface that FTS5 has.

Ranking here is only for while the search's own arrays are being made: those rank alike on both.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from typing import Any

from sqlalchemy import Connection

from desktop_app.shop_record.databases.dialect_postgres import wait_at_most
from desktop_app.shop_record.databases.dialect_search import JobText, Wanted

_COLUMNS = JobText._fields
_NAMES = ", ".join(_COLUMNS)
_PATIENCE_SECONDS = 60
# The weights of the classes D, C, B and A: a third of the embedded search's, for 1 is the most.
_RANK = "ts_rank('{0.33, 0.5, 0.67, 1}', words, asked)"
# The index keeps no word that has more bytes, and no more letters of one column (first step).
_LONGEST_WORD, _MOST_LETTERS = 2046, 50_000
_MOST_COUNTED = 20_000  # jobs


def write_texts(connection: Connection, texts: Mapping[int, JobText]) -> None:
    """Put the texts of jobs into the index, in place of what it had for them; in one trip."""
    if not texts:
        return
    kept = ", ".join(f"{name} = EXCLUDED.{name}" for name in _COLUMNS)
    listed = ", ".join(["%s::bigint[]"] + ["%s::text[]"] * len(_COLUMNS))
    said = (
        f"INSERT INTO job_text (id, {_NAMES}) SELECT * FROM unnest({listed}) "
        f"ON CONFLICT (id) DO UPDATE SET {kept}"
    )
    columns = zip(*texts.values(), strict=True)
    connection.exec_driver_sql(said, (list(texts), *map(list, columns)))


@contextmanager
def room_to_write(connection: Connection) -> Iterator[None]:
    """Wait longer for others while very much is written in one deed."""
    wait_at_most(connection, _PATIENCE_SECONDS)
    yield


def read_texts(connection: Connection, jobs: Sequence[int]) -> dict[int, JobText]:
    """Return what the index has of these jobs."""
    said = f"SELECT id, {_NAMES} FROM job_text WHERE id = ANY(%s)"
    rows = connection.exec_driver_sql(said, (list(jobs),))
    return {row[0]: JobText(*row[1:]) for row in rows}


def remove_texts(connection: Connection, jobs: Sequence[int]) -> None:
    """Take jobs out of the index."""
    if jobs:
        connection.exec_driver_sql("DELETE FROM job_text WHERE id = ANY(%s)", (list(jobs),))


def remove_range(connection: Connection, first: int, last: int) -> None:
    """Take all jobs from the first to the last out of the index."""
    connection.exec_driver_sql("DELETE FROM job_text WHERE id BETWEEN %s AND %s", (first, last))


def empty_index(connection: Connection) -> None:
    """Take everything out of the index."""
    connection.exec_driver_sql("DELETE FROM job_text")


def index_is_whole(_connection: Connection) -> bool:
    """The server makes the words of each row itself: they can't be out of step with its texts."""
    return True


def make_words_anew(connection: Connection) -> None:
    """Make the index anew from the texts.

    Only its owner can do that; whoever else asks writes the texts anew, and their words with them.
    """
    said = "SELECT pg_has_role(relowner, 'USAGE') FROM pg_class WHERE relname = 'job_text'"
    if connection.exec_driver_sql(said).scalar():
        connection.exec_driver_sql("REINDEX INDEX ix_job_text_words")


def jobs_indexed(connection: Connection) -> set[int]:
    """Return the jobs that the index has texts of."""
    return {row[0] for row in connection.exec_driver_sql("SELECT id FROM job_text")}


def best(connection: Connection, all_of: Sequence[Wanted], limit: int) -> list[int]:
    """Return the jobs that have all the words, those first where they weigh most."""
    return _matching(connection, all_of, f"{_RANK} DESC, id DESC", limit)


def newest(connection: Connection, all_of: Sequence[Wanted], limit: int) -> list[int]:
    """Return the jobs that have all the words, the newest first; nothing is scored."""
    return _matching(connection, all_of, "id DESC", limit)


def jobs_with_stems(connection: Connection, stems: Iterable[str]) -> dict[str, int]:
    """Return in how many jobs each of these stems stands; those in none are left out."""
    said = (
        "SELECT stem, count(*) FROM unnest(%s::text[], %s::text[]) AS asked(stem, lexeme) "
        "JOIN job_text ON words @@ lexeme::tsquery GROUP BY stem"
    )
    wanted = [one for one in dict.fromkeys(map(_clean, stems)) if one]
    if not wanted:
        return {}
    rows = connection.exec_driver_sql(said, (wanted, list(map(_lexeme, wanted))))
    return {row[0]: row[1] for row in rows}


def stems_beginning(connection: Connection, beginning: str, limit: int) -> list[tuple[str, int]]:
    """Return stems that begin so, with the number of jobs that have each.

    Where very many jobs have one, the newest of them alone are counted: this runs as people type.
    """
    clean = _clean(beginning)
    if not clean:
        return []
    # Inside quotes of its own the beginning is quoted.
    jobs = (
        f"SELECT words FROM job_text WHERE words @@ {_literal(f'{_lexeme(clean)}:*')}::tsquery "
        f"ORDER BY id DESC LIMIT {_MOST_COUNTED}"
    )
    said = "SELECT word, ndoc FROM ts_stat(%s) WHERE left(word, %s) = %s ORDER BY word LIMIT %s"
    rows = connection.exec_driver_sql(said, (jobs, len(clean), clean, limit))
    return [(row[0], row[1]) for row in rows]


def _matching(
    connection: Connection, all_of: Sequence[Wanted], order: str, limit: int
) -> list[int]:
    asked: list[str] = []
    values: list[Any] = []
    narrowed: list[str] = []
    only: list[Any] = []
    for one in all_of:
        if not any((*one.whole, *one.beginnings)):
            continue
        said, given = _query(one)
        if not said:
            return []  # nothing that was wanted can stand in any job
        asked.append(f"({said})")
        values += given
        if one.column:
            column = f"left({one.column}, {_MOST_LETTERS})"
            narrowed.append(f" AND to_tsvector('shop_words', {column}) @@ ({said})")
            only += given
    if not asked:
        return []
    said = (
        f"SELECT id FROM job_text, (SELECT {' && '.join(asked)} AS asked) q "
        f"WHERE words @@ asked{''.join(narrowed)} ORDER BY {order} LIMIT %s"
    )
    rows = connection.exec_driver_sql(said, (*values, *only, limit))
    return [row[0] for row in rows]


def _query(wanted: Wanted) -> tuple[str, list[str]]:
    """Write one word's choices as a query; everything typed is a value, never a part of it.

    A beginning is brought to its stem first, as the embedded search does it too.
    """
    said, values = [], []
    for word in filter(None, map(_clean, wanted.whole)):
        said.append("phraseto_tsquery('shop_words', %s)")
        values.append(word)
    for word in filter(None, map(_clean, wanted.beginnings)):
        said.append("to_tsquery('shop_words', %s)")
        values.append(f"{_lexeme(word)}:*")
    return " || ".join(said), values


def _clean(word: str) -> str:
    """Return a word as it may stand in the index, "" where it can't."""
    clean = word.replace("\x00", " ").strip()
    return "" if len(clean.encode()) > _LONGEST_WORD else clean


def _lexeme(word: str) -> str:
    """Quote a word as a query of words has it."""
    return "'" + word.replace("\\", "\\\\").replace("'", "''") + "'"


def _literal(said: str) -> str:
    """Quote a text as a statement has it (standard_conforming_strings)."""
    return "'" + said.replace("'", "''") + "'"
