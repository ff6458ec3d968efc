"""Shops on the tests' server, made and opened as the program does it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import psycopg

from desktop_app.commands.shop_place import open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_address import ServerAddress, read_address
from desktop_app.shop_record.server.server_folder import ServerPlace, read_place, write_place
from desktop_app.shop_record.server.server_shop import create_on_server
from tests.conftest import NOON
from tests.servers import OWNER, Server
from tests.shop_record.backed_up import through


def address_of(server: Server, database: str, user: str = OWNER) -> ServerAddress:
    """The address of a database of the server."""
    return read_address(server.address(database, user))[0]


def database_of(folder: Path) -> str:
    """The name of the database that the folder of a shop names."""
    return read_place(folder).address.database


@contextmanager
def new_on_server(
    server: Server, folder: Path, photos: Path | None = None
) -> Iterator[ServerAddress]:
    """Make a shop in a database that is not there yet, with its roles; it goes with the block."""
    address = address_of(server, server.new_name())
    create_on_server(folder, ServerPlace(address, photos), lambda: NOON).close()
    yield address
    server.drop(address.database)


@contextmanager
def opened(folder: Path) -> Iterator[ShopRecord]:
    """Open a shop as the program does, and close it."""
    record = open_place(folder, lambda: NOON)
    try:
        yield record
    finally:
        record.close()


@contextmanager
def opened_as(server: Server, user: str, database: str, folder: Path) -> Iterator[ShopRecord]:
    """Open a shop as somebody else does, whose computer has a folder of its own."""
    write_place(folder, ServerPlace(address_of(server, database, user)))
    with opened(folder) as record:
        yield record


def said(server: Server, user: str, database: str, words: str) -> str:
    """Say something to the server past the program; return how it refused, "" where it did not."""
    try:
        server.sql(words, database, user)
    except psycopg.Error as error:
        return str(error)
    return ""


def problems_of(record: ShopRecord) -> list[str]:
    """What the check of the whole shop finds."""
    return [problem.what for problem in through(whole_check(record)).problems]
