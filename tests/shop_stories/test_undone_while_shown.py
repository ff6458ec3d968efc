"""What is undone goes from the page that shows it, and comes back with "redo"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.place_names import ASK, BACK, JOB
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import MONDAY, one_job, open_job

SAME = WriteUp("misses when damp", plate="TH 1", symptoms=("misfire",), odometer=1100)


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop") as counter:
        yield counter


def desk_of(at: Counter) -> Desk:
    assert at.program.desk is not None
    return at.program.desk


def offers(at: Counter, words: str) -> bool:
    return any(words in one.text() for one in at.page.findChildren(QPushButton) if one.isVisible())


def test_a_return_goes_with_its_job_and_comes_back_with_it(qtbot: QtBot, tmp_path: Path) -> None:
    now = [MONDAY]
    with sitting(qtbot, tmp_path / "shop", MONDAY, clock=lambda: now[0]) as at:
        desk = desk_of(at)
        desk.do(actions.write_up, replace(SAME, odometer=1000))
        desk.do(actions.hand_over, 1, 1000)
        now[0] += timedelta(days=9)
        desk.do(actions.write_up, SAME)
        at.go(BACK)
        at.wait_for("inside the window")
        assert offers(at, "Same system")
        at.press("Undo")
        at.bot.waitUntil(lambda: not offers(at, "Same system"))
        assert not at.reads("inside the window")
        assert not at.reads("no longer there")
        at.press("Redo")
        at.wait_for("inside the window")
        assert offers(at, "Same system")


def test_nothing_of_a_job_that_was_undone_stays_in_its_head(at: Counter) -> None:
    desk = desk_of(at)
    desk.do(actions.write_up, SAME)
    at.program.desk.do(actions.add_job, 2, "sweet smell")  # type: ignore[union-attr]
    at.go(ASK)
    at.type_into(QLineEdit, "Ask the old jobs", "J-103", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == JOB)
    assert offers(at, "J-102")
    desk.undo()
    at.wait_for("J-103   was undone or taken out")
    assert not offers(at, "J-102")
    assert not offers(at, "Comparison sheet…")
    desk.redo()
    at.bot.waitUntil(lambda: offers(at, "J-102"))


def test_that_a_job_is_gone_is_not_said_for_ever(
    at: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_job(at)
    desk = desk_of(at)
    for _ in range(2):  # the pair and the taking-in
        desk.undo()
    said = "That job is not in the record any more. It may have been undone."
    at.bot.waitUntil(lambda: at.window.strip.words() == said)
    monkeypatch.setattr("desktop_app.shop_window.notice_strip.monotonic", lambda: 1e9)
    at.go(ASK)
    assert at.window.strip.words() == ""


def test_nobody_is_led_to_the_claim_that_another_job_makes(at: Counter) -> None:
    desk = desk_of(at)
    desk.do(actions.write_up, SAME)
    open_job(at)
    at.press("Proved: bay")
    at.go(ASK)
    at.type_into(QLineEdit, "Ask the old jobs", "J-102", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == JOB)
    at.press("→  How far it was proved")
    focus = QApplication.focusWidget()
    assert focus is not None
    assert focus.accessibleName() == "Proved: unproven"
    assert at.tab_to("Proved: unproven") is focus
