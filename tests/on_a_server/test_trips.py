"""Answers that are heard late: nothing is kept falsely, and a connection is as it was before."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy.exc import IntegrityError

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.on_a_server.shops import opened


@pytest.fixture
def record(server_folder: Path) -> Iterator[ShopRecord]:
    with opened(server_folder) as record:
        yield record


def waits_now(record: ShopRecord, seconds: float | None) -> str:
    """How long the next connection waits for who writes, as the server says."""
    with record.listening() as connection:
        dialect.wait_at_most(connection, seconds)
        with connection.begin():
            return str(connection.exec_driver_sql("SHOW lock_timeout").scalar())


def failing(deed: Deed) -> None:
    deed.add(Person, name="Tuuli")
    raise RuntimeError


def test_a_refusal_that_comes_with_the_commit_keeps_nothing(record: ShopRecord) -> None:
    actions.write_up(record, WriteUp("misses", plate="TH 1", odometer=1))
    before = record.can_undo()
    with pytest.raises(ShopTrouble, match="no longer there"), record.deed("Point nowhere") as deed:
        deed.change(Job, 1, technician_id=99)
    assert record.can_undo() == before
    with record.reading() as connection:
        assert last_number(connection) == 1
    actions.add_person(record, "Tuuli")


def test_what_a_deed_says_first_is_refused_though_nobody_asks_after_it(record: ShopRecord) -> None:
    def work(deed: Deed) -> None:
        deed.connection.exec_driver_sql("INSERT INTO job_text (id) VALUES (1)")  # without its texts
        deed.add(Person, name="Tuuli")

    with pytest.raises(IntegrityError):
        record.do("Half a row", work)
    with record.reading() as connection:
        assert last_number(connection) == 0


def test_how_long_is_waited_outlives_a_deed_that_is_refused(record: ShopRecord) -> None:
    assert waits_now(record, 0.05) == "50ms"
    with pytest.raises(RuntimeError):
        record.do("Fails", failing)
    assert waits_now(record, None) == "2s"
    with pytest.raises(RuntimeError):
        record.do("Fails", failing)
    assert waits_now(record, 0.05) == "50ms"


def test_what_is_waited_inside_of_a_deed_goes_with_it(record: ShopRecord) -> None:
    def work(deed: Deed) -> None:
        dialect.wait_at_most(deed.connection, 9)
        failing(deed)

    with pytest.raises(RuntimeError):
        record.do("Long", work)
    assert waits_now(record, None) == "2s"
