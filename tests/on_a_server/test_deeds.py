"""Deeds on a server: one at a time, each with its entry, told to the others, never lost unsaid."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Connection, event, select, text

from desktop_app.commands.shop_place import open_place
from desktop_app.repair_jobs import actions
from desktop_app.shop_record.house_rules import change_rule, read_rules
from desktop_app.shop_record.past import history
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_trouble import ServerLost, server_lost
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.servers import Server


@pytest.fixture
def here(server_folder: Path) -> Iterator[ShopRecord]:
    """The shop as one workstation has it open."""
    record = open_place(server_folder, lambda: NOON)
    yield record
    record.close()


@pytest.fixture
def there(server_folder: Path) -> Iterator[ShopRecord]:
    """The same shop as another workstation has it open."""
    record = open_place(server_folder, lambda: NOON)
    yield record
    record.close()


def people(record: ShopRecord) -> set[str]:
    """Return who is in the shop."""
    with record.reading() as connection:
        return {row[0] for row in connection.execute(text("SELECT name FROM person"))}


def test_a_deed_is_there_for_the_others_with_its_entry(here: ShopRecord, there: ShopRecord) -> None:
    actions.add_person(here, "Tuuli")
    assert people(there) == {"Tuuli"}
    with there.reading() as connection:
        assert history.chain_problems(connection) == (1, [])
    here.undo()
    assert people(there) == set()
    here.redo()
    assert people(there) == {"Tuuli"}


def test_nobody_undoes_by_a_key_what_another_computer_did(
    here: ShopRecord, there: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    actions.add_person(here, "Tuuli")
    monkeypatch.setattr("platform.node", lambda: "bay-2")
    assert there.can_undo() is None
    with pytest.raises(ShopTrouble, match="nothing to undo"):
        there.undo()
    actions.add_person(there, "Ben")
    assert there.can_undo() is not None
    there.undo()
    assert people(here) == {"Tuuli"}


def test_what_somebody_else_has_changed_since_is_not_undone(
    here: ShopRecord, there: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    change_rule(here, "shop_name", "Corner")
    monkeypatch.setattr("platform.node", lambda: "bay-2")
    there.who = "Ben"
    change_rule(there, "shop_name", "Corner Garage")
    monkeypatch.undo()
    with pytest.raises(ShopTrouble, match="Ben has changed it since"):
        here.undo()
    with there.reading() as connection:
        assert read_rules(connection).shop_name == "Corner Garage"


def test_eight_desks_at_once_lose_nothing(server_folder: Path) -> None:
    desks = [open_place(server_folder, lambda: NOON) for _ in range(8)]
    troubles: list[Exception] = []

    def work(number: int, record: ShopRecord) -> None:
        try:
            for one in range(10):
                actions.add_person(record, f"desk {number} person {one}")
        except Exception as trouble:  # noqa: BLE001 - told at the end, not in the thread
            troubles.append(trouble)

    threads = [threading.Thread(target=work, args=one) for one in enumerate(desks)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert troubles == []
    assert len(people(desks[0])) == 80
    with desks[0].reading() as connection:
        assert history.chain_problems(connection) == (80, [])
    for record in desks:
        record.close()


def test_a_whole_reading_sees_one_state(here: ShopRecord, there: ShopRecord) -> None:
    with here.reading() as connection:
        before = connection.execute(select(HistoryEntry.seq)).all()
        actions.add_person(there, "Tuuli")
        assert connection.execute(select(HistoryEntry.seq)).all() == before
    assert people(here) == {"Tuuli"}


def test_who_only_reads_writes_nothing(here: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="not change it"), here.reading() as connection:
        connection.execute(text("INSERT INTO person (name, here) VALUES ('Nobody', 1)"))


def test_a_writer_that_holds_on_is_told_of_and_not_waited_for(
    here: ShopRecord, there: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.shop_record.databases.dialect_postgres.WAIT_MS", 100)
    with here.deed("Something long") as deed:
        actions_refused = pytest.raises(ShopTrouble, match="Somebody else is writing")
        with there.reading() as connection:
            connection.exec_driver_sql("SET SESSION lock_timeout = 100")
        with actions_refused:
            actions.add_person(there, "Ben")
        assert deed.entry is None
    actions.add_person(there, "Ben")


def test_a_lost_connection_is_made_anew_for_the_next_deed(server: Server, here: ShopRecord) -> None:
    actions.add_person(here, "Tuuli")
    _cut_off(server)
    actions.add_person(here, "Ben")
    assert people(here) == {"Tuuli", "Ben"}


@pytest.mark.parametrize("kept", [True, False])
def test_where_nobody_confirms_a_deed_it_is_asked_after(
    server: Server, here: ShopRecord, kept: bool
) -> None:
    actions.add_person(here, "Tuuli")

    def cut(connection: Connection) -> None:
        if kept:
            _commit_without_an_answer(connection)
        _cut_off(server)

    event.listen(here._engine, "commit", cut, once=True)
    if kept:
        actions.add_person(here, "Ben")
    else:
        with pytest.raises(ServerLost):
            actions.add_person(here, "Ben")
    assert people(here) == ({"Tuuli", "Ben"} if kept else {"Tuuli"})
    with here.reading() as connection:
        assert history.chain_problems(connection) == (2 if kept else 1, [])


def test_without_any_answer_it_is_said_that_nobody_knows(
    server: Server, here: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    engine = here._engine

    def cut(_connection: object) -> None:
        _cut_off(server)
        monkeypatch.setattr(engine.pool, "_creator", _nobody_there)

    event.listen(engine, "commit", cut, once=True)
    with pytest.raises(ServerLost, match="not known whether it was saved"):
        actions.add_person(here, "Ben")


def test_nobody_says_that_nothing_was_saved_where_the_deed_may_be_there(here: ShopRecord) -> None:
    def cut(connection: Connection) -> None:
        _commit_without_an_answer(connection)
        here.away = server_lost()  # whoever listens was told first

    event.listen(here._engine, "commit", cut, once=True)
    with pytest.raises(ServerLost, match="not known whether it was saved"):
        actions.add_person(here, "Ben")
    here.away = None
    assert people(here) == {"Ben"}


def test_a_server_that_is_found_while_somebody_asks_is_no_mistake_of_the_program(
    here: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    found = iter([server_lost()])
    away = property(lambda _: next(found, None), lambda *_: None)
    monkeypatch.setattr(ShopRecord, "away", away, raising=False)
    with pytest.raises(ServerLost):
        actions.add_person(here, "Ben")
    actions.add_person(here, "Ben")


def _commit_without_an_answer(connection: Connection) -> None:
    """Let the server keep the deed, and let nobody hear of it."""
    raw: Any = connection.connection.driver_connection
    raw.execute("COMMIT")
    raw.close()


def _nobody_there(*_: object) -> object:
    import psycopg

    raise psycopg.OperationalError("connection refused")


def _cut_off(server: Server) -> None:
    """End everybody's connection, as a server does that is started anew."""
    server.sql(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
        "WHERE application_name = 'benchwitness'"
    )
