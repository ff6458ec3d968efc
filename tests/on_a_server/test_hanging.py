"""A server that hangs while its computer still answers for it: the window goes on in seconds."""

from __future__ import annotations

import os
import signal
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path

import pytest
from PySide6.QtWidgets import QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import open_place
from desktop_app.shop_record import others
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server import server_patience
from desktop_app.shop_record.server.server_folder import ServerPlace
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_record.server.server_trouble import NotKnown, ServerLost
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.unsent import UNSENT
from tests.on_a_server.shops import address_of, database_of
from tests.on_a_server.test_others import until
from tests.servers import Server, running
from tests.shop_record.backed_up import named
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.test_two_counters import NOW, kept, open_the_job, other_counter

AWAY = "The shop's server can't be reached since 09:00."
BACK = "The server is back"
AT_ITS_END = """
CREATE FUNCTION dawdle() RETURNS trigger LANGUAGE plpgsql AS
    'BEGIN PERFORM pg_sleep(3); RETURN NULL; END';
CREATE CONSTRAINT TRIGGER dawdle AFTER INSERT ON person DEFERRABLE INITIALLY DEFERRED
    FOR EACH ROW EXECUTE FUNCTION dawdle()
"""


@pytest.fixture(scope="module")
def own_server() -> Iterator[Server]:
    """A server that can be halted without halting other tests."""
    with running() as started:
        yield started


@pytest.fixture
def folder(own_server: Server, tmp_path: Path) -> Iterator[Path]:
    """The folder of a shop on it, with one job."""
    address = address_of(own_server, own_server.new_name())
    create_on_server(tmp_path / "shop", ServerPlace(address), lambda: NOW).close()
    other_counter(tmp_path / "shop").close()
    yield tmp_path / "shop"
    own_server.drop(address.database)


@pytest.fixture
def in_the_window(folder: Path) -> Iterator[ShopRecord]:
    """The shop as a window has it open, which waits for nothing long."""
    record = open_place(folder, lambda: NOW)
    record.hurry()
    yield record
    record.close()


@contextmanager
def halted(server: Server, *, whole: bool = True) -> Iterator[None]:
    """Halt the server, or all of its processes but the one that lets people in, for a while."""
    said = "SELECT pid FROM pg_stat_activity WHERE pid <> pg_backend_pid()"
    pids = [int(row[0]) for row in server.sql(said)]
    if whole:
        pids.append(int((server.folder / "data" / "postmaster.pid").read_text().split()[0]))
    for pid in pids:
        os.kill(pid, signal.SIGSTOP)
    try:
        yield
    finally:
        for pid in reversed(pids):
            os.kill(pid, signal.SIGCONT)


@contextmanager
def at_the_job(qtbot: QtBot, folder: Path) -> Iterator[Counter]:
    """Sit at the counter before the shop's one job, listening to the server."""
    with sitting(qtbot, folder, NOW, backup_after_ms=None) as at:
        at.program._hear_others()
        open_the_job(at)
        at.quiet()
        yield at


def test_what_is_kept_of_a_lost_server_holds_no_page(
    own_server: Server, in_the_window: ShopRecord
) -> None:
    in_the_window.is_watched = True
    with halted(own_server):
        for _ in range(2):
            with pytest.raises(ServerLost) as lost:
                named(in_the_window, "Tuuli")
            assert lost.value.__traceback__ is not None
            assert in_the_window.away is not None
            assert in_the_window.away.__traceback__ is None
            assert in_the_window.away.__context__ is None
    in_the_window.away = None


def test_after_a_long_hang_the_window_is_back_by_itself(
    qtbot: QtBot, own_server: Server, folder: Path
) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            qtbot.wait(8000)  # who listens has tried again by then, and given up again
        at.wait_for(BACK)
        at.type_into(QPlainTextEdit, "Cause", "Wet coil.")
        at.leave()
    record = open_place(folder, lambda: NOW)
    assert kept(record).cause == "Wet coil."
    record.close()


@pytest.mark.parametrize("whole", [True, False], ids=["whole", "all but who lets people in"])
def test_what_is_typed_meanwhile_is_sent_when_it_goes_on(
    qtbot: QtBot, own_server: Server, folder: Path, whole: bool
) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server, whole=whole):
            at.type_into(QPlainTextEdit, "Cause", "Carbon track inside the cap.")
            at.leave()
            assert at.find(QPlainTextEdit, "Cause").toPlainText().startswith("Carbon track")
            if whole:
                at.wait_for(AWAY)
                assert "Carbon track" in (folder / "drafts.json").read_text("utf-8")
            else:  # new connections are let in: it is back by itself
                at.wait_for(BACK)
        at.wait_for(BACK)
    record = open_place(folder, lambda: NOW)
    assert kept(record).cause == "Carbon track inside the cap."
    record.close()
    assert Drafts(folder).read(UNSENT) == {}


def test_whoever_types_nothing_is_told_too(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
        at.wait_for(BACK)


def test_a_question_of_the_window_ends(own_server: Server, in_the_window: ShopRecord) -> None:
    with halted(own_server):
        with pytest.raises(ServerLost):
            in_the_window.can_undo()
        with pytest.raises(ServerLost):
            named(in_the_window, "Ben")
    named(in_the_window, "Ben")


def test_a_commit_that_nobody_confirms_is_not_known(
    own_server: Server, in_the_window: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(server_patience, "SHORT_S", 1.0)
    own_server.sql(AT_ITS_END, database_of(in_the_window.folder))
    with pytest.raises(NotKnown):
        named(in_the_window, "Ben")
    asked = "SELECT count(*) FROM person WHERE name = 'Ben'"
    until(lambda: own_server.sql(asked, database_of(in_the_window.folder)) == [(1,)])


def test_a_server_that_is_slow_is_not_away(
    in_the_window: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module, name, seconds in (
        (others, "ASKED_S", 0.1),
        (others, "BEAT_S", 0.2),
        (server_patience, "SHORT_S", 1.0),
        (server_patience, "SLOW_S", 3.0),
    ):
        monkeypatch.setattr(module, name, seconds)
    listener = others.Others(in_the_window, lambda _last: None, lambda _there: None)
    listener.start()
    until(lambda: in_the_window.is_watched)
    with in_the_window.reading() as connection:
        connection.exec_driver_sql("SELECT pg_sleep(2)")
    with pytest.raises(ShopTrouble) as trouble, in_the_window.reading() as connection:
        connection.exec_driver_sql("SELECT pg_sleep(60)")
    assert not isinstance(trouble.value, ServerLost)
    assert trouble.value.what == "The server broke this off."
    listener.stop()
    listener.join()


def test_long_work_beside_the_window_is_let_go_on(
    in_the_window: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(server_patience, "SHORT_S", 1.0)
    with ThreadPoolExecutor(1) as beside:
        assert beside.submit(asked_slowly, in_the_window, 2).result() == "done"
        late = beside.submit(asked_slowly, in_the_window, 60)
        until(lambda: late.running())
        in_the_window.hurry(everybody=True)  # the window is closed
        with pytest.raises(ServerLost):
            late.result()


def asked_slowly(record: ShopRecord, seconds: int) -> str:
    """Ask something whose answer takes long."""
    with record.reading() as connection:
        found = connection.exec_driver_sql(f"SELECT 'done' FROM pg_sleep({seconds})")
        return str(found.scalar())
