"""Choices made while the server is away: sent when it is back, or put back at once, with words."""

# ruff: noqa: F811 - the fixtures of a server that can be halted
from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QAccessibleEvent
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import open_place
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_roles import roles_of
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.kept_choice import NOT_SAVED
from desktop_app.shop_window.unsent import UNSENT
from tests.on_a_server.shops import address_of, database_of, new_on_server
from tests.on_a_server.test_hanging import (  # noqa: F401
    AWAY,
    BACK,
    at_the_job,
    folder,
    halted,
    own_server,
)
from tests.servers import Server
from tests.shop_stories.counter import Counter
from tests.shop_stories.test_two_counters import NOW, kept, other_counter

SYSTEM = "System"
LOGIN = "at_the_desk"


def job_kept(folder: Path) -> JobView:
    """The one job, as the record has it."""
    record = open_place(folder, lambda: NOW)
    try:
        return kept(record)
    finally:
        record.close()


def shown(at: Counter, name: str) -> str:
    """What a choice says now."""
    return at.find(QComboBox, name).currentText()


def test_choices_are_sent_when_it_is_back(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.choose(SYSTEM, "Ignition")
            at.press("cold: not asked")
            at.press("The customer says it is the same trouble as before")
            assert shown(at, SYSTEM) == "Ignition"
            qtbot.waitUntil(lambda: "Ignition" in Drafts(folder).read(UNSENT).values())
        at.wait_for(BACK)
        qtbot.waitUntil(lambda: Drafts(folder).read(UNSENT) == {})
        assert shown(at, SYSTEM) == "Ignition"
    job = job_kept(folder)
    assert job.system == "ignition"
    assert job.says_same
    assert True in job.conditions.values()


def test_a_choice_chosen_back_is_not_sent(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    with at_the_job(qtbot, folder) as at:
        before = history(own_server, folder)
        with halted(own_server):
            at.wait_for(AWAY)
            at.choose(SYSTEM, "Ignition")
            assert "Ignition" in Drafts(folder).read(UNSENT).values()
            for _ in range(at.find(QComboBox, SYSTEM).count()):
                qtbot.keyClick(at.find(QComboBox, SYSTEM), Qt.Key.Key_Up)
            assert shown(at, SYSTEM) == "not said"
            assert Drafts(folder).read(UNSENT) == {}  # nothing is offered at the next start
        at.wait_for(BACK)
        at.quiet()
        assert history(own_server, folder) == before


def test_what_can_not_be_sent_later_is_put_back(
    qtbot: QtBot, own_server: Server, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    announced = heard_aloud(monkeypatch)
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.press("Not caught")
            at.wait_for(NOT_SAVED)
            assert announced == [NOT_SAVED]
            assert not at.button("Not caught").isChecked()
        at.wait_for(BACK)
        assert not at.button("Not caught").isChecked()
    assert job_kept(folder).cause_found is None


def heard_aloud(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What a screen reader is given to read out from now on."""
    said: list[str] = []

    def hear(event: QAccessibleEvent) -> None:
        if isinstance(event, QAccessibleAnnouncementEvent):
            said.append(event.message())

    monkeypatch.setattr(QAccessible, "updateAccessibility", hear)
    return said


@pytest.fixture
def someone(server: Server, tmp_path: Path) -> Iterator[Callable[[int], Path]]:
    """A way to get the folder of a shop for somebody who reads (0) or works (1) in it."""
    with new_on_server(server, tmp_path / "owner") as address:
        other_counter(tmp_path / "owner").close()

        def as_whom(role: int) -> Path:
            whole = f'CREATE ROLE {LOGIN} LOGIN IN ROLE "{roles_of(address.database)[role]}"'
            server.sql(whole)
            place = ServerPlace(address_of(server, address.database, LOGIN))
            write_place(tmp_path / "shop", place)
            return tmp_path / "shop"

        yield as_whom
        server.sql(f"DROP ROLE {LOGIN}")


def test_what_another_desk_chose_meanwhile_stands(
    qtbot: QtBot, server: Server, someone: Callable[[int], Path], tmp_path: Path
) -> None:
    with at_the_job(qtbot, someone(1)) as at:
        server.sql(f"ALTER ROLE {LOGIN} NOLOGIN")
        server.sql(
            f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = '{LOGIN}'"
        )
        at.wait_for("lets nobody in from here")
        at.choose(SYSTEM, "Ignition")
        record = open_place(tmp_path / "owner", lambda: NOW)
        actions.choose_system(record, 1, "fuel")
        record.close()
        server.sql(f"ALTER ROLE {LOGIN} LOGIN")
        at.wait_for("System: something else was chosen at another desk")
        assert shown(at, SYSTEM) == "Fuel"
    assert job_kept(tmp_path / "owner").system == "fuel"


def test_what_a_reader_chooses_is_put_back(
    qtbot: QtBot, someone: Callable[[int], Path], tmp_path: Path
) -> None:
    with at_the_job(qtbot, someone(0)) as at:
        for press in ("cold: not asked", "The customer says it is the same trouble", "Not caught"):
            at.press(press)
            at.wait_for(NOT_SAVED)
            assert at.button(press).isVisible()
            assert not at.button(press).isChecked()
        system = at.find(QComboBox, SYSTEM)
        system.setFocus()
        qtbot.keyClick(system, Qt.Key.Key_Down)
        assert shown(at, SYSTEM) == "not said"
        assert at.reads("You may look at this shop's record but not change it.")


def history(server: Server, folder: Path) -> list[object]:
    """The entries of a shop's history."""
    return server.sql("SELECT seq FROM history", database_of(folder))
