"""A copy of the record taken while people work, and what a copy says of itself once it is held."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from time import monotonic
from typing import Any

from sqlalchemy import Connection, text
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.past import history
from desktop_app.shop_record.record_name import is_server_folder
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

_PAGES = 1000  # copied at a time: for so long, some milliseconds, nobody can write
_AGAIN = 8  # times that writers may make it begin anew, before it copies all at once
_WAIT_S = 10.0


@dataclass(frozen=True, slots=True)
class RecordFacts:
    """Where the history of a copy stands, its form, its jobs and the photos that its rows name.

    `last_at` is when its last entry was written, as it is kept.
    """

    shop: str
    record_form: str
    entries: int
    head: str
    photos: frozenset[str]
    jobs: int
    last_at: str


class _Unsteady(Exception):
    """Others wrote so often that copying piece by piece came to no end."""


def take_snapshot(record: Path, to: Path) -> None:
    """Copy the record into a new file, as it stood at one moment.

    Others go on reading and writing. It is not on the disk yet when this returns. Raises
    ShopTrouble where somebody holds the record for long, or where there is no room.
    """
    for _ in snapshot_steps(record, to):
        pass


def snapshot_steps(record: Path, to: Path) -> Iterator[Step]:
    """Do what `take_snapshot` does; that of a server comes in many steps, for it may take long."""
    if is_server_folder(record.parent):
        from desktop_app.shop_record.server.server_snapshot import copy_from_server

        yield from copy_from_server(record.parent, to)
    else:
        _copy_file(record, to)


def _copy_file(record: Path, to: Path) -> None:
    try:
        live = sqlite3.connect(f"{record.resolve().as_uri()}?mode=rw", uri=True, timeout=_WAIT_S)
        try:
            try:
                _copy(live, to, _PAGES)
            except _Unsteady:
                _copy(live, to, -1)
        finally:
            live.close()
    except sqlite3.Error as error:
        said = str(error).lower()
        if "malformed" in said or "not a database" in said:
            raise ShopDamaged(
                tr("The shop's record is damaged."),
                tr("No backup was made of it."),
                tr("Go back to your last good backup."),
            ) from error
        raise ShopTrouble(tr("The record could not be copied: {error}.", error=error)) from error


def _copy(live: sqlite3.Connection, to: Path, pages: int) -> None:
    to.unlink(missing_ok=True)
    left, again, busy_since = 1 << 62, 0, monotonic()

    def look(status: int, remaining: int, _total: int) -> None:
        nonlocal left, again, busy_since
        if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            if monotonic() - busy_since > _WAIT_S:
                raise ShopTrouble(
                    tr("The shop's record is busy in another program."), do=tr("Try again later.")
                )
            return
        busy_since = monotonic()
        again += remaining > left
        left = remaining
        if again > _AGAIN:
            raise _Unsteady

    copy = sqlite3.connect(to, isolation_level=None)
    try:
        copy.execute("PRAGMA synchronous = OFF")  # it is synced once, by whoever wants it kept
        live.backup(copy, pages=pages, progress=look, sleep=0.02)
    finally:
        copy.close()


def read_facts(copy: Path, *, wholly: bool) -> RecordFacts:
    """Check a copy and say what it holds; a ShopDamaged tells what is not as it was written.

    Its pages, the rows that point to others and the chain of the history are held; `wholly` also
    holds every index. Only for copies: a record at work is opened as a shop.
    """
    if not dialect.carries_our_mark(copy):
        raise ShopDamaged(tr("it is not a shop's record"))
    engine = dialect.open_engine(copy)
    try:
        with engine.connect() as connection:
            return _facts(connection, wholly)
    except (DBAPIError, sqlite3.Error, ValueError, TypeError, AttributeError) as error:
        raise ShopDamaged(tr("its pages are damaged")) from error
    finally:
        engine.dispose()


def _facts(connection: Connection, wholly: bool) -> RecordFacts:
    odd = "SELECT name FROM sqlite_master WHERE type IN ('view', 'trigger')"
    names: Sequence[str] = connection.execute(text(odd)).scalars().all()
    for name in names:
        raise ShopDamaged(tr("it brings commands of its own along (“{name}”)", name=name[:60]))
    problems = _broken(connection, wholly)
    entries, broken = history.chain_problems(connection)
    for words in (*problems, *broken):
        raise ShopDamaged(words[:200])
    first = connection.execute(text("SELECT hash FROM history WHERE seq = 1")).scalar()
    last = connection.execute(
        text("SELECT hash, at FROM history ORDER BY seq DESC LIMIT 1")
    ).first()
    # Forms that are older than this program's tables are read too: so these are plain words.
    named: Sequence[Any] = (
        connection.execute(text("SELECT DISTINCT sha256 FROM photo")).scalars().all()
    )
    form = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
    return RecordFacts(
        shop=first or "",
        record_form=str(form),
        entries=entries,
        head=last.hash if last else "",
        photos=frozenset(str(one) for one in named),
        jobs=connection.execute(text("SELECT count(*) FROM job")).scalar_one(),
        last_at=str(last.at) if last else "",
    )


def _broken(connection: Connection, wholly: bool) -> list[str]:
    if wholly:
        return dialect.integrity_problems(connection)
    found: Sequence[Any] = connection.execute(text("PRAGMA quick_check(1)")).scalars().all()
    pointing = connection.execute(text("PRAGMA foreign_key_check")).first()
    problems = [] if found == ["ok"] else [str(one) for one in found]
    if pointing is not None:
        problems.append(
            tr(
                "a row of {table} points to a row of {other} that is missing",
                table=pointing[0],
                other=pointing[2],
            )
        )
    return problems
