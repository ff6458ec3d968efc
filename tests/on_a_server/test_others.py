"""Who listens to the others is told of each deed and of a server that goes, till the end."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import open_place
from desktop_app.shop_record.others import Others
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_trouble import ServerLost
from tests.conftest import NOON
from tests.servers import Server
from tests.shop_record.backed_up import named


@pytest.fixture
def here(server_folder: Path) -> Iterator[ShopRecord]:
    """The shop as one workstation has it open."""
    record = open_place(server_folder, lambda: NOON)
    yield record
    record.close()


def until(holds: Callable[[], bool]) -> None:
    """Wait for something that another thread does."""
    for _ in range(3000):
        if holds():
            return
        time.sleep(0.01)
    raise AssertionError("it never came")


def test_each_deed_is_told_and_nothing_after_the_end(here: ShopRecord) -> None:
    told: list[int] = []
    others = Others(here, told.append, lambda _there: None)
    others.start()
    until(lambda: told == [0])
    named(here, "Tuuli")
    until(lambda: told[-1] == 1)
    others.stop()
    named(here, "Ben")
    others.join()
    assert told[-1] == 1
    assert not here.is_watched


def test_what_somebody_else_says_on_the_channel_is_not_believed(
    here: ShopRecord, server: Server
) -> None:
    told: list[int] = []
    others = Others(here, told.append, lambda _there: None)
    others.start()
    until(lambda: told == [0])
    for words in ("no number", "2000000000"):
        server.sql(f"NOTIFY benchwitness, '{words}'", read_place(here.folder).address.database)
    named(here, "Tuuli")
    until(lambda: told[-1] == 1)
    assert set(told) == {0, 1}
    others.stop()
    others.join()


def test_a_torn_address_is_no_end_of_listening(here: ShopRecord, server: Server) -> None:
    there: list[bool] = []
    others = Others(here, lambda _last: None, there.append)
    others.start()
    until(lambda: here.is_watched)
    place = here.folder / "server.toml"
    whole, database = place.read_text("utf-8"), read_place(here.folder).address.database
    place.write_text("addr", "utf-8")
    server.sql(f"ALTER DATABASE {database} ALLOW_CONNECTIONS false")
    _cut_off(server, database)
    until(lambda: there == [False])
    server.sql(f"ALTER DATABASE {database} ALLOW_CONNECTIONS true")
    until(lambda: there == [False, True])
    place.write_text(whole, "utf-8")
    named(here, "Tuuli")
    others.stop()
    others.join()


def test_a_database_that_takes_nobody_is_told_and_its_return_too(
    here: ShopRecord, server: Server
) -> None:
    there: list[tuple[bool, type[ServerLost] | None]] = []
    told: list[int] = []
    others = Others(
        here,
        told.append,
        lambda yes: there.append((yes, type(here.away) if here.away else None)),
    )
    others.start()
    until(lambda: told == [0])
    database = read_place(here.folder).address.database
    server.sql(f"ALTER DATABASE {database} ALLOW_CONNECTIONS false")
    _cut_off(server, database)
    until(lambda: (False, ServerLost) in there)
    with pytest.raises(ServerLost):
        named(here, "Tuuli")
    server.sql(f"ALTER DATABASE {database} ALLOW_CONNECTIONS true")
    until(lambda: there[-1] == (True, None))
    named(here, "Tuuli")
    others.stop()
    others.join()


def test_who_comes_after_the_end_leaves_nothing_open(here: ShopRecord, server: Server) -> None:
    database = read_place(here.folder).address.database
    here.close()
    assert here.can_undo() is None  # a timer of a window that has gone
    said = f"SELECT count(*) FROM pg_stat_activity WHERE datname = '{database}'"
    until(lambda: server.sql(said) == [(0,)])


def _cut_off(server: Server, database: str) -> None:
    server.sql(
        f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{database}'"
    )
