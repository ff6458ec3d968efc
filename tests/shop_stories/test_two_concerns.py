"""One visit with two concerns, and a window that is closed in the middle of a word."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
CONCERN = "Concern, in the customer's own words"


def open_first_job(at: Counter) -> None:
    desk = at.program.desk
    assert desk is not None
    desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def test_a_visit_takes_another_concern_as_a_job_of_its_own(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        open_first_job(at)
        at.press("Another concern…")
        qtbot.waitUntil(lambda: at.reads("J-102"))
        at.type_into(QPlainTextEdit, CONCERN, "squeals when braking")
        at.press("J-101")
        qtbot.waitUntil(lambda: at.reads("misses when damp"))
        desk = at.program.desk
        assert desk is not None
        first, second = desk.ask(read_job, 1), desk.ask(read_job, 2)
        assert first.visit_id == second.visit_id
        assert first.concern == "misses when damp"
        assert second.concern == "squeals when braking"


def test_half_a_sentence_outlives_the_window(qtbot: QtBot, tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    with sitting(qtbot, shop, MONDAY) as at:
        open_first_job(at)
        at.type_into(QPlainTextEdit, "Cause", "tip burned ba")
        at.type_into(QLineEdit, "Trouble codes, found", "P0300")
        at.type_into(QLineEdit, "What was seen or tried", "cap cru")
    with sitting(qtbot, shop, MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        job = desk.ask(read_job, 1)
        assert job.cause == "tip burned ba"
        assert [code.code for code in job.codes] == ["P0300"]
        assert [check.words for check in job.checks] == ["cap cru"]
