"""Bringing a record to the newest form: numbered steps, a backup first, newer ones refused."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, Engine, inspect, text

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

if TYPE_CHECKING:
    from alembic.config import Config

NEWEST = "0005"
STEPS = ("0001", "0002", "0003", "0004", "0005")
# The SHA-256 of how a database of the newest form describes itself (record_check.described): one
# for each way in which the libraries have worded the same tables.
DESCRIBED = frozenset({"dc7e9494bb2c22c710cb36912ae31b3b81d40af2f5f100aaefb6fb918ad54f74"})


def build(path: Path) -> None:
    """Run all steps on a record file that was just made."""
    engine = dialect.open_engine(path)
    try:
        with _alone(engine) as connection:
            _run_steps(connection)
    finally:
        engine.dispose()


def build_on(connection: Connection) -> None:
    """Run all steps in the open transaction of an empty database on a server."""
    _run_steps(connection)


def anybody_may(_connection: Connection) -> None:
    """Who may write a file may bring it up to date."""


def bring_up_to_date(
    engine: Engine, path: Path, now: datetime, may: Callable[[Connection], None] = anybody_may
) -> None:
    """Run the steps that an older record lacks; refuse a newer one.

    The check of the version is one small query; the migration library is loaded only when it is
    needed. `may` refuses who can't change the tables, before a backup is made for it.
    """
    with engine.connect() as connection:
        found = _version(connection)
        if found in STEPS and found != NEWEST:
            may(connection)
    if found == NEWEST:
        return
    if found not in STEPS:
        raise ShopTrouble(
            tr(
                "This shop's record was written by a newer program (form {found}, this one "
                "knows {newest}).",
                found=found,
                newest=NEWEST,
            ),
            kept=tr("The record was not touched."),
            do=tr("Install the newer program on this computer too."),
        )
    with _alone(engine) as connection:
        if _version(connection) == found:  # nobody else was quicker
            _back_up(engine, path, now)
            _run_steps(connection)


def _back_up(engine: Engine, path: Path, now: datetime) -> None:
    """Back the shop up as it is; of a damaged one, of which no backup is made, copy the record."""
    from desktop_app.shop_record.backups.generations import make_generation

    try:
        for _ in make_generation(path.parent, path.parent / "backups", now, tr("before an update")):
            pass
    except ShopDamaged:
        aside = path.with_name(f"shop-before-{NEWEST}-{now:%Y%m%d-%H%M%S}.sqlite")
        with engine.connect() as reader:  # a connection that writes can't be copied from
            dialect.copy_whole(reader, aside)


def is_older(path: Path) -> bool:
    """Tell whether opening a record takes long, for it is of an older form; in a millisecond."""
    try:
        with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True)) as raw:
            found = raw.execute("SELECT version_num FROM alembic_version").fetchone()
    except (sqlite3.Error, OSError):
        return False  # whoever opens it is told why
    return found is not None and found[0] in STEPS and found[0] != NEWEST


@contextmanager
def _alone(engine: Engine) -> Iterator[Connection]:
    """Give a connection that keeps every other writer out; all of its work is done, or nothing."""
    with engine.connect() as plain:
        connection = plain.execution_options(writing=True, one_by_one=True)
        with connection.begin():
            yield connection


def _version(connection: Connection) -> str:
    if not inspect(connection).has_table("alembic_version"):
        raise ShopDamaged(
            tr("The shop's record has no version in it; it is empty or cut short."),
            kept=tr("The file was left as it is."),
            do=tr("Put your last good copy in its place, under the same name."),
        )
    return str(connection.execute(text("SELECT version_num FROM alembic_version")).scalar())


def _run_steps(connection: Connection) -> None:
    from alembic import command

    config = _configuration()
    config.attributes["connection"] = connection
    command.upgrade(config, "head")


def _configuration() -> Config:
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    config.set_main_option("path_separator", "os")
    return config
