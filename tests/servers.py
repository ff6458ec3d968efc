"""A PostgreSQL server of the tests' own: started where one is wanted, with a database a shop.

`BENCHWITNESS_TESTS_ON=postgresql` lets every test's shop be on it; the tests that promise
something of a server start it in any run. Its data lies where the tests' shops lie, and no write
is waited for: what a server does when the power fails is its makers' promise.
"""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from typing import Any

import pytest

MADE: list[str] = []  # the databases of this run's shops, the newest last
SHARED: set[str] = set()  # those of them that several tests read or copy
VARIABLE = "BENCHWITNESS_TESTS_ON"
OWNER = "shop_owner"
_COPIES = count()
_HASTE = ("fsync=off", "synchronous_commit=off", "full_page_writes=off", "max_connections=300")


def wanted() -> bool:
    """Tell whether the shops of all tests are to be on a server."""
    return os.environ.get(VARIABLE) == "postgresql"


def programs() -> Path | None:
    """Return the folder of the server's programs; None where this computer has none."""
    found = shutil.which("initdb")
    if found:
        return Path(found).resolve().parent
    homes = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda p: int(p.parts[4]))
    return homes[-1].parent if homes else None


@dataclass
class Server:
    """A running server; `folder` holds its data."""

    folder: Path
    port: int
    bin: Path
    settings: tuple[str, ...] = _HASTE
    _numbers: Any = field(default_factory=count)

    def address(self, database: str, user: str = OWNER) -> str:
        """Return the address of a database on it."""
        return f"postgresql+psycopg://{user}@127.0.0.1:{self.port}/{database}"

    def sql(self, said: str, database: str = "postgres", user: str = OWNER) -> list[Any]:
        """Say something to it, outside of any transaction, and return the rows."""
        import psycopg

        place = f"host=127.0.0.1 port={self.port} dbname={database} user={user}"
        with psycopg.connect(place, autocommit=True) as connection:
            found = connection.execute(said)  # type: ignore[call-overload]
            return found.fetchall() if found.description else []

    def new_name(self) -> str:
        """Return the name of a database that is not there yet."""
        return f"shop_{os.getpid()}_{next(self._numbers)}"

    def new_database(self, template: str = "template0") -> str:
        """Make a database that sorts by bytes, and return its name."""
        name = self.new_name()
        self.sql(
            f"CREATE DATABASE {name} TEMPLATE {template} STRATEGY file_copy"
            + (" ENCODING 'UTF8' LC_COLLATE 'C' LC_CTYPE 'C'" if template == "template0" else "")
        )
        return name

    def drop(self, database: str) -> None:
        """Take a database away, whoever is still connected."""
        self.sql(f"DROP DATABASE IF EXISTS {database} WITH (FORCE)")

    def start(self) -> None:
        """Start it and wait until it answers."""
        said = [f"-p {self.port}", f"-c unix_socket_directories={self.folder}"]
        said += [f"-c {one}" for one in self.settings]
        log = self.folder / "server.log"
        self._run("pg_ctl", "-D", self._data, "-w", "-l", str(log), "-o", " ".join(said), "start")

    def stop(self, how: str = "fast") -> None:
        """Stop it: "fast" cuts everybody off in good order, "immediate" as if it were killed."""
        self._run("pg_ctl", "-D", self._data, "-w", "-m", how, "stop")

    def make(self) -> None:
        """Make its data anew."""
        more = ("--no-sync", "--no-locale", "-E", "UTF8", "-k")
        self._run("initdb", "-D", self._data, "-U", OWNER, "-A", "trust", *more)

    @property
    def _data(self) -> str:
        return str(self.folder / "data")

    def _run(self, program: str, *args: str) -> None:
        """Run one of its programs; the server refuses to be root, so it is somebody else then."""
        command = [str(self.bin / program), *args]
        if hasattr(os, "geteuid") and os.geteuid() == 0:
            command = [
                "setpriv",
                "--reuid=postgres",
                "--regid=postgres",
                "--clear-groups",
                *command,
            ]
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL, cwd="/", timeout=120)


@contextmanager
def running(settings: tuple[str, ...] = _HASTE, place: Path | None = None) -> Iterator[Server]:
    """Make a server, start it, and take it away at the end; `place` is a folder for its data."""
    home = programs()
    if home is None:
        lacking = "needs PostgreSQL, which this computer lacks"
        (pytest.fail if os.environ.get("CI") == "true" else pytest.skip)(lacking)
    folder = Path(tempfile.mkdtemp(prefix=".benchwitness-server-", dir=place))
    try:
        if os.geteuid() == 0:
            shutil.chown(folder, "postgres")
        server = Server(folder, _free_port(), home, settings)
        server.make()
        server.start()
        try:
            yield server
        finally:
            server.stop("immediate")
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


def share(folder: Path) -> None:
    """Let a shop outlast the test that made it, where its record is on a server."""
    from desktop_app.shop_record.record_name import is_server_folder
    from desktop_app.shop_record.server.server_folder import read_place

    if is_server_folder(folder):
        SHARED.add(read_place(folder).address.database)


def copy_shop(folder: Path, to: Path) -> Path:
    """Copy a closed shop's folder, and its database where the record is on a server."""
    from desktop_app.shop_record.record_name import is_server_folder
    from desktop_app.shop_record.server.server_folder import read_place, write_place

    shutil.copytree(folder, to)
    if is_server_folder(folder):
        import psycopg

        place = read_place(folder)
        name = f"{place.address.database}_{next(_COPIES)}"
        with psycopg.connect(
            **place.address._replace(database="postgres").parameters(), autocommit=True
        ) as connection:
            said = f"CREATE DATABASE {name} TEMPLATE {place.address.database} STRATEGY file_copy"
            connection.execute(said)  # type: ignore[call-overload]
        MADE.append(name)
        write_place(to, place._replace(address=place.address._replace(database=name)))
    return to
