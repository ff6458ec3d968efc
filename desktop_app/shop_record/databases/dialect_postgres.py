"""Everything that only PostgreSQL can do: connecting, beginning, its errors, its own checks.

One deed at a time: whoever writes holds one lock of the whole shop till the end, as SQLite has it,
so the chain of the history is one chain. Who only reads waits for nobody and sees one state.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from time import monotonic
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import DBAPIError, DisconnectionError
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.pool import QueuePool
from sqlalchemy.types import Integer

from desktop_app.language import tr
from desktop_app.shop_record.databases.by_database import PATIENCE
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_password import newest_password
from desktop_app.shop_record.server.server_trouble import server_lost
from desktop_app.shop_record.trouble import NotSaved, ShopDamaged, ShopTrouble

CHANNEL = "benchwitness"  # where each deed is told as soon as it is there
WAIT_MS = 2000
SILENT_MS = 8000  # a server that says nothing for so long is taken for lost
_WAITS = "waits"  # where a connection keeps how long it waits, if not as usual
_HEAD = "head"  # ... and who gives the end of the history, asked for as a deed begins

_BEGIN_TO_READ = "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"
# The lock that whoever writes holds: who may only read can't take it, and nobody waits to read.
_ALONE = "LOCK TABLE setting IN EXCLUSIVE MODE"
_ALONE_IN_EMPTY = "SELECT pg_advisory_xact_lock(1113019441)"  # there are no tables yet
_LAST_ENTRY = "SELECT seq, hash FROM history ORDER BY seq DESC LIMIT 1"

# SQLSTATE of the standard, and PostgreSQL's own, that a shop can do something about.
_BUSY = ("55P03", "40001", "40P01")
_FULL = ("53100", "53200")
_NOT_ALLOWED = ("42501", "25006")
_FOREIGN_KEY = "23503"
_BROKEN_OFF = "57014"
_GONE = frozenset({"OperationalError", "InterfaceError"})  # of the driver, without a state
_DAMAGED = ("XX001", "XX002")
_TOO_LARGE = ("22003", "54000")
_KEPT = tr("What you typed is still in its field; nothing was saved.")


@compiles(Integer, "postgresql")
def _as_wide_as_sqlite(_kind: Any, _compiler: Any, **more: Any) -> str:
    """Whole numbers are kept in eight bytes, as SQLite has them; asked for they may be shorter."""
    return "BIGINT" if "type_expression" in more else "INTEGER"


def open_server(address: ServerAddress, password: str | None) -> Engine:
    """Return an engine on a shop's database; nobody has connected yet when this returns.

    Raises ShopTrouble where the driver is not installed.
    """
    try:
        from desktop_app.shop_record.server.server_patience import Patience
        from desktop_app.shop_record.server.server_text import PlainText
        from desktop_app.shop_record.server.server_trips import FewTrips, FewTripsCursor
    except ImportError as error:
        raise ShopTrouble(
            tr("A shop on a server needs the driver of its database, which is not installed here."),
            do=tr('Install it in the folder of the program: .venv/bin/pip install ".[postgres]"'),
        ) from error

    patience = Patience()

    def connect() -> Any:
        said: dict[str, Any] = address.parameters()
        if address.is_here():  # said even where empty: PGHOST and PGHOSTADDR may lead elsewhere
            said = {"host": "", "hostaddr": "", **said}
        raw = FewTrips.connect(
            **said,
            cursor_factory=FewTripsCursor,
            password=newest_password(address, password),  # it may have been changed meanwhile
            autocommit=True,  # BEGIN and COMMIT are said here, in as few trips as can be
            connect_timeout=patience.connect_seconds(),
            application_name="benchwitness",
            client_encoding="utf8",
            keepalives_idle=5,
            keepalives_interval=2,
            keepalives_count=3,
            tcp_user_timeout=SILENT_MS,
            options=f"-c lock_timeout={WAIT_MS} -c idle_in_transaction_session_timeout=900000 "
            "-c synchronous_commit=on "
            "-c TimeZone=UTC -c DateStyle=ISO -c search_path=public",
        )
        raw.patience, raw.made_at = patience, monotonic()
        raw.adapters.register_dumper(str, PlainText)
        return raw

    engine = create_engine(
        "postgresql+psycopg://",
        creator=connect,
        poolclass=QueuePool,
        pool_recycle=600,
        execution_options={PATIENCE: patience},
    )
    event.listen(engine, "begin", _begin)
    event.listen(engine, "rollback", _forget_waits)
    event.listen(engine, "checkout", _refuse_one_cut_off)
    return engine


def _refuse_one_cut_off(raw: Any, _kept: Any, _lent: Any) -> None:
    """Let no connection be used that the server closed while it lay idle: the pool makes anew."""
    if raw.was_cut_off() or raw.patience.is_stale(raw.made_at):
        raise DisconnectionError


def _begin(connection: Connection) -> None:
    raw: Any = connection.connection.driver_connection
    connection.info.pop(_HEAD, None)
    options = connection.get_execution_options()
    with errors_as_usual(connection, "BEGIN"):
        if options.get("one_by_one"):  # who upgrades wants to know how many rows a step changed
            raw.one_by_one()
        else:
            raw.ask_together()
    if options.get("adding"):  # something that stands alone, and that no other row is told of yet
        connection.exec_driver_sql("BEGIN")
    elif options.get("building"):
        connection.exec_driver_sql("BEGIN")
        connection.exec_driver_sql(_ALONE_IN_EMPTY)
    elif options.get("writing"):
        connection.exec_driver_sql("BEGIN")
        connection.exec_driver_sql(_ALONE)
        connection.info[_HEAD] = ask_ahead(connection, _LAST_ENTRY)
    else:
        connection.exec_driver_sql(_BEGIN_TO_READ)


def entry_asked_ahead(connection: Connection) -> tuple[int, str] | None:
    """Return number and hash of the last entry, asked when the deed began; None: not any more."""
    asked: Callable[[], list[Any]] | None = connection.info.pop(_HEAD, None)
    if asked is None:
        return None
    last = next(iter(asked()), (0, ""))
    return int(last[0]), str(last[1])


def ask_ahead(connection: Connection, query: str) -> Callable[[], list[Any]]:
    """Ask for rows that come with the next answer; what is returned gives them."""
    raw: Any = connection.connection.driver_connection
    with errors_as_usual(connection, query):  # of what was said before, where that is heard now
        cursor = raw.ask_ahead(query)

    def rows() -> list[Any]:
        with errors_as_usual(connection, query):
            found: list[Any] = cursor.fetchall()  # it has mostly come by now
        return found

    return rows


def hear_refusals(connection: Connection) -> None:
    """Wait until the server has heard all that was said, and raise what it refuses of that."""
    raw: Any = connection.connection.driver_connection
    with errors_as_usual(connection, "what was said before"):
        raw.hear()


def wait_at_most(connection: Connection, seconds: float | None) -> None:
    """Let a connection wait so long for whoever writes; None is as usual."""
    if connection.info.get(_WAITS) == seconds:
        return
    wait = WAIT_MS if seconds is None else round(1000 * seconds)
    said = f"SET lock_timeout = {wait}"
    with errors_as_usual(connection, said):  # SQLAlchemy would begin a transaction for it
        raw: Any = connection.connection.driver_connection
        raw.execute(said)
        raw.hear()  # else it would be taken back with the deed that begins next
    connection.info[_WAITS] = seconds


def _forget_waits(connection: Connection) -> None:
    """Say anew how long to wait: what was said inside of a deed went with it."""
    if not connection.invalidated and _WAITS in connection.info:
        connection.info[_WAITS] = "unknown"


def as_trouble(error: Exception, under_way: str = "") -> ShopTrouble | None:
    """Turn an error of the server that a shop can do something about into words; else None."""
    said = getattr(error, "orig", error)
    state: str = getattr(said, "sqlstate", None) or ""
    if state in _BUSY:
        if under_way:
            return NotSaved(
                tr("“{under_way}” is under way.", under_way=under_way),
                _KEPT,
                tr("Try again when it is done."),
            )
        return NotSaved(
            tr("Somebody else is writing into the shop's record."), _KEPT, tr("Try again.")
        )
    if state in _FULL:
        return NotSaved(
            tr("The server's disk is full."), _KEPT, tr("Make room on it and try again.")
        )
    if state in _NOT_ALLOWED:
        return NotSaved(
            tr("You may look at this shop's record but not change it."),
            _KEPT,
            tr("Ask the shop's owner for the right to work in it."),
        )
    if state == _FOREIGN_KEY:
        return ShopTrouble(
            tr("What this belongs to is no longer there."),
            tr("Nothing was changed."),
            tr("It was taken out or undone; look at the page again."),
        )
    if state == _BROKEN_OFF:
        return NotSaved(tr("The server broke this off."), _KEPT, tr("Try again."))
    if state in _TOO_LARGE:
        return NotSaved(
            tr("A number is larger than the record can hold."), _KEPT, tr("Look it over.")
        )
    if state in _DAMAGED:
        return damaged_server()
    if lost(error):
        return server_lost()
    return None


def lost(error: Exception) -> bool:
    """Tell whether an error means that the server is not there, or went away."""
    said = getattr(error, "orig", error)
    state: str = getattr(said, "sqlstate", None) or ""
    if state[:2] in ("08", "57") and state != "57014":
        return True
    return bool(getattr(error, "connection_invalidated", False)) or (
        not state and not _GONE.isdisjoint(sort.__name__ for sort in type(said).__mro__)
    )


def damaged_server() -> ShopDamaged:
    """Return what to say of a database that the server can't read."""
    return ShopDamaged(
        tr("The server says that the shop's database is damaged."),
        tr("It was left as it is."),
        tr("Whoever looks after the server should look at its disk; your backups are whole shops."),
    )


def integrity_problems(connection: Connection) -> list[str]:
    """Return rules of the tables that are not held by the server any more; mostly none."""
    said = (
        "SELECT conrelid::regclass::text, conname FROM pg_constraint "
        "WHERE NOT convalidated AND connamespace = 'public'::regnamespace"
    )
    rows = connection.exec_driver_sql(said)
    return [
        tr("the rule {name} of {table} is not held any more", name=name, table=table)
        for table, name in rows
    ]


def damage_seen_quickly(connection: Connection) -> list[str]:
    """Return what the server says of pages that did not have their checksum."""
    said = "SELECT checksum_failures FROM pg_stat_database WHERE datname = current_database()"
    failures = connection.exec_driver_sql(said).scalar() or 0
    return (
        [tr("{failures} pages of the server did not have their checksum", failures=failures)]
        if failures
        else []
    )


def description(connection: Connection) -> list[str]:
    """Return how tables, their columns, rules, indexes and triggers are described."""
    said = (
        "SELECT 'column', table_name, column_name, data_type || ' ' || is_nullable "
        "FROM information_schema.columns WHERE table_schema = 'public' UNION ALL "
        "SELECT 'rule', conrelid::regclass::text, conname, pg_get_constraintdef(oid) "
        "FROM pg_constraint WHERE connamespace = 'public'::regnamespace UNION ALL "
        "SELECT 'index', tablename, indexname, indexdef FROM pg_indexes "
        "WHERE schemaname = 'public' UNION ALL "
        "SELECT 'trigger', tgrelid::regclass::text, tgname, pg_get_triggerdef(oid) "
        "FROM pg_trigger WHERE NOT tgisinternal ORDER BY 1, 2, 3"
    )
    return [" ".join(map(str, row)) for row in connection.exec_driver_sql(said)]


def ids_given(connection: Connection) -> dict[str, int]:
    """Return the highest id that each table has ever given out."""
    said = (
        "SELECT t.relname, COALESCE(pg_sequence_last_value(s.oid), 0) FROM pg_class s "
        "JOIN pg_depend d ON d.objid = s.oid AND d.deptype IN ('a', 'i') "
        "JOIN pg_class t ON t.oid = d.refobjid "
        "WHERE s.relkind = 'S' AND t.relnamespace = 'public'::regnamespace"
    )
    given = {str(row[0]): int(row[1]) for row in connection.exec_driver_sql(said) if row[1]}
    entries = connection.exec_driver_sql("SELECT max(seq) FROM history").scalar()
    return given | ({"history": entries} if entries else {})


def let_it_lie(connection: Connection) -> None:
    """Let the open transaction of a connection lie idle for as long as it takes."""
    connection.exec_driver_sql("SET LOCAL idle_in_transaction_session_timeout = 0")


def give_ids_from(connection: Connection, table: str, highest: int) -> None:
    """Let no id up to this one be given out again."""
    if table == "history":
        return  # its numbers are counted on from its last entry
    if highest:
        said = (
            "SELECT setval(s, GREATEST(%s, pg_sequence_last_value(s))) "
            "FROM CAST(pg_get_serial_sequence(%s, 'id') AS regclass) AS s"
        )
        connection.exec_driver_sql(said, (highest, f'public."{table}"'))


def all_rows(
    connection: Connection, table: str, columns: Sequence[str], at_a_time: int
) -> Iterator[list[tuple[Any, ...]]]:
    """Give all rows of a table by their number, some at a time."""
    names = ", ".join(f'"{name}"' for name in columns)
    by = "id" if "id" in columns else columns[0]
    wanted = f'SELECT {names} FROM "{table}" ORDER BY "{by}"'
    streamed = {"yield_per": at_a_time}
    with connection.exec_driver_sql(wanted, execution_options=streamed) as found:
        for rows in found.partitions(at_a_time):
            yield list(map(tuple, rows))


def insert_rows(
    connection: Connection, table: str, columns: Sequence[str], rows: Sequence[Sequence[Any]]
) -> None:
    """Write rows straight into a table by COPY, past any deed: who calls remembers them."""
    raw = connection.connection.driver_connection
    assert raw is not None
    if table == "history":  # its end is another one than it was when the deed began
        connection.info.pop(_HEAD, None)
    names = ", ".join(f'"{name}"' for name in columns)
    said = f'COPY "{table}" ({names}) FROM STDIN'
    with errors_as_usual(connection, said), raw.cursor() as cursor, cursor.copy(said) as copy:
        for row in rows:
            copy.write_row(row)


@contextmanager
def errors_as_usual(connection: Connection, said: str) -> Iterator[None]:
    """Let what the driver raises where it is asked itself be raised as SQLAlchemy raises it."""
    import psycopg

    raw = connection.connection.driver_connection
    try:
        yield
    except psycopg.Error as error:
        gone = connection.dialect.is_disconnect(error, raw, None)  # type: ignore[arg-type]
        if gone:
            connection.invalidate(error)
        raise DBAPIError.instance(
            *(said, None, error, psycopg.Error, False, gone, connection.dialect)
        ) from error


@contextmanager
def any_text(_connection: Connection) -> Iterator[None]:
    """The server holds nothing that is no UTF-8."""
    yield


def is_cut_short(_connection: Connection, _path: Path) -> bool:
    """A server looks after its own files."""
    return False


def copy_whole(connection: Connection, to: Path) -> None:
    """Write a copy of the record, as one state of it, to a new file of SQLite."""
    from desktop_app.shop_record.moved import copy_to_file

    for _ in copy_to_file(connection, to):
        pass
