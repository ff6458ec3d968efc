"""Somebody asks what was done to a job: the main window leads to its history and back."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.job_history.screen.history_window import HistoryWindow
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def test_a_wrong_cause_is_undone_from_the_jobs_history(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        at.bot.waitUntil(lambda: at.window.here() == "Job")
        at.type_into(QPlainTextEdit, "Cause", "cap cracked")
        at.leave()
        at.press("History…")
        at.wait_for("What was done to job J-101")
        at.wait_for("Cause: nothing → “cap cracked”")
        at.press("Undo this entry")
        at.quiet()
        assert desk.ask(read_job, 1).cause == ""
        history = at.window.findChild(HistoryWindow)
        qtbot.keyClick(history, Qt.Key.Key_Escape)
        qtbot.waitUntil(lambda: at.window.findChild(HistoryWindow) is None)


def test_the_keys_open_it_too(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        at.bot.waitUntil(lambda: at.window.here() == "Job")
        at.quiet()
        qtbot.keyClick(at.page, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
        at.wait_for("What was done to job J-101")
        at.quiet()
