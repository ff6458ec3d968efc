"""A server that goes while a page takes one look: that is said, and the next question answered."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from sqlalchemy import func, select

from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.databases.dialect_blocks import read_past
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_trouble import ServerLost
from tests.on_a_server.shops import database_of, opened
from tests.on_a_server.test_others import until
from tests.servers import Server


@pytest.fixture
def record(server_folder: Path) -> Iterator[ShopRecord]:
    with opened(server_folder) as record:
        yield record


def people(record: ShopRecord) -> int:
    with record.reading() as connection:
        return int(connection.execute(select(func.count(Person.id))).scalar_one())


def rows_in_blocks(record: ShopRecord) -> None:
    with record.reading() as connection:
        list(read_past(connection, select(Person.id), None, 10))


def end_all(server: Server, folder: Path) -> None:
    """End every connection to a shop's database, as a server does that is started anew."""
    others = (
        f"FROM pg_stat_activity WHERE datname = '{database_of(folder)}' AND pid <> pg_backend_pid()"
    )
    server.sql(f"SELECT pg_terminate_backend(pid) {others}")
    until(lambda: server.sql(f"SELECT count(*) {others}")[0][0] in (0, "0"))


@pytest.mark.parametrize("ask", [people, rows_in_blocks])
def test_it_is_said_by_the_next_question_and_the_one_after_it_is_answered(
    record: ShopRecord, server: Server, server_folder: Path, ask: Callable[[ShopRecord], object]
) -> None:
    record.is_watched = True
    with record.one_look():
        assert people(record) == 0
        end_all(server, server_folder)
        with pytest.raises(ServerLost):
            ask(record)
        assert record.away is not None
        record.away = None  # whoever watches has found it again
        assert people(record) == 0


def test_it_goes_when_all_was_read(record: ShopRecord, server: Server, server_folder: Path) -> None:
    with record.one_look():
        assert people(record) == 0
        end_all(server, server_folder)
    assert people(record) == 0
