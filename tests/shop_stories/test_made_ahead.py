"""The places are made before anybody goes there, and work as ones that were made when wanted."""

from __future__ import annotations

import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget
from pytestqt.qtbot import QtBot
from sqlalchemy import Dialect
from sqlalchemy.sql.compiler import SQLCompiler

from desktop_app.commands.shop_place import kinds_of, new_place
from desktop_app.parts_compared.kind_actions import copy_kind
from desktop_app.places import Places
from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.place_names import (
    BACK,
    CARD,
    FIRST_RULES,
    HEARD,
    JOB,
    MONDAY,
    ON_RAIL,
    RULES,
)
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting
from tests.watched_shop import a_week_of_returns


def made(at: Counter) -> dict[str, QWidget]:
    return {name.split(" (")[0]: page for name, page in at.window.pages().items()}


def all_made(at: Counter) -> bool:
    return {JOB, *ON_RAIL} <= made(at).keys()


def test_every_place_is_there_before_anybody_goes_to_it(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.window.here() == ON_RAIL[0]  # nobody was led anywhere
        before = made(at)
        for place in ON_RAIL[1:]:
            at.go(place)
        assert made(at) == before
        at.picture(tmp_path, "made-ahead")


def test_one_that_is_wanted_while_it_is_made(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: HEARD in made(at), timeout=20_000)
        qtbot.waitUntil(lambda: bool(at.window.parts_to_come().children()), timeout=20_000)
        assert JOB not in made(at)
        at.window.page(JOB)
        assert not at.window.parts_to_come().children()
        at.go(RULES)
        at.go(HEARD)
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.window.here() == HEARD


def test_a_rule_that_is_changed_holds_for_pages_that_were_made(
    qtbot: QtBot, tmp_path: Path
) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.program.desk is not None
        paper = "Letter" if at.program.desk.rules.paper == "A4" else "A4"
        at.program.desk.do(change_rule, "paper", paper)
        at.go(CARD)
        assert paper in [one.currentText() for one in made(at)[CARD].findChildren(QComboBox)]
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)


def test_a_window_left_open_over_the_weekend_opens_the_week_that_ended(
    qtbot: QtBot, tmp_path: Path
) -> None:
    now = [datetime(2026, 11, 15, 18, tzinfo=UTC)]
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True, clock=lambda: now[0]) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        now[0] += timedelta(hours=14)
        at.go(MONDAY)
        assert "2026-W46" in [one.text() for one in made(at)[MONDAY].findChildren(QLineEdit)]


def test_a_job_is_opened_in_the_kinds_of_now(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.program.desk is not None
        shelf = kinds_of()
        at.program.desk.do(copy_kind, shelf["distributor-rotor"], "Our rotor", shelf.keys())
        assert JOB not in made(at)
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)


def test_the_first_job_and_return_ask_nothing_that_was_not_asked_before(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    record = new_place(tmp_path / "shop", lambda: NOON)
    a_week_of_returns(record)
    said = WriteUp("misses in the rain", plate="TIN 07", odometer=84210)
    job = write_up(record, said).made  # as in a shop, the newest job has no part yet
    record.close()
    new: list[Any] = []
    compiles = SQLCompiler.__init__

    def noted(self: SQLCompiler, dialect: Dialect, statement: Any, *more: Any, **said: Any) -> None:
        if threading.current_thread() is threading.main_thread():
            new.append(statement)
        compiles(self, dialect, statement, *more, **said)

    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        at.quiet()
        monkeypatch.setattr(SQLCompiler, "__init__", noted)
        places = at.program.desk.parent() if at.program.desk is not None else None
        assert isinstance(places, Places)
        places.open_job(job)
        assert at.reads("misses in the rain")
        at.go(BACK)
        at.wait_for("Why it is here")
        at.quiet()
        monkeypatch.undo()
    assert not [str(one) for one in new], "it is asked while somebody waits: see places_ahead.py"


def test_a_window_that_is_closed_meanwhile(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, ahead=True) as at:
        qtbot.waitUntil(lambda: HEARD in made(at), timeout=20_000)
        assert at.window.close()
        there = made(at)
        qtbot.wait(600)
        assert made(at) == there


def test_a_window_that_nobody_works_at_makes_none(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        qtbot.wait(1500)
        at.quiet()
        assert made(at).keys() == {FIRST_RULES, ON_RAIL[0]}  # a new shop began with the first
