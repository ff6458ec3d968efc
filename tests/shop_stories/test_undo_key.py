"""Ctrl+Z with the cursor in a field: its own typing, or the last deed, and never both at once."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
FINDING, CONCERN = "What was seen or tried", "Concern, in the customer's own words"


def control(at: Counter, field: QWidget, key: Qt.Key) -> None:
    """Press Ctrl and a key with the cursor in a field."""
    field.setFocus()
    at.bot.keyClick(field, key, Qt.KeyboardModifier.ControlModifier)


def findings(at: Counter) -> list[str]:
    """Return what was found on the job, as it is kept."""
    desk = at.program.desk
    assert desk is not None
    return [one.words for one in desk.ask(read_job, 1).checks]


def on_a_job(at: Counter) -> None:
    """Take a car in, write two findings on its job and open it."""
    desk = at.program.desk
    assert desk is not None
    desk.do(actions.write_up, WriteUp("misses", plate="TH 1", odometer=1000))
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")
    for words in ("cap crusted", "rotor worn"):
        at.type_into(QLineEdit, FINDING, words, enter=True)
    assert findings(at) == ["cap crusted", "rotor worn"]


def test_in_a_field_nobody_typed_into_it_takes_the_last_deed_back(
    qtbot: QtBot, tmp_path: Path
) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        on_a_job(at)
        control(at, at.find(QLineEdit, FINDING), Qt.Key.Key_Z)
        assert findings(at) == ["cap crusted"]
        assert at.find(QLineEdit, FINDING).text() == ""
        at.wait_for("Undone: ")
        control(at, at.find(QPlainTextEdit, CONCERN), Qt.Key.Key_Z)
        assert findings(at) == []
        control(at, at.find(QLineEdit, "Plate"), Qt.Key.Key_Y)
        assert findings(at) == ["cap crusted"]
        assert at.find(QLineEdit, "Plate").text() == "TH 1"


def test_in_a_field_typed_into_it_takes_only_the_typing_back(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        on_a_job(at)
        for sort, name in ((QLineEdit, FINDING), (QPlainTextEdit, CONCERN)):
            field = at.find(sort, name)
            field.setFocus()
            qtbot.keyClicks(field, "xyz")
            for _ in range(4):  # more often than there is something to take back
                control(at, field, Qt.Key.Key_Z)
            assert findings(at) == ["cap crusted", "rotor worn"]
        assert at.find(QLineEdit, FINDING).text() == ""
        assert at.find(QPlainTextEdit, CONCERN).toPlainText() == "misses"


def test_half_a_finding_is_not_entered_by_taking_something_else_back(
    qtbot: QtBot, tmp_path: Path
) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        on_a_job(at)
        at.type_into(QLineEdit, FINDING, "leads lo")
        control(at, at.find(QLineEdit, "Plate"), Qt.Key.Key_Z)
        assert findings(at) == ["cap crusted"]
        assert at.find(QLineEdit, FINDING).text() == "leads lo"
        at.find(QLineEdit, FINDING).clear()


def test_where_there_is_nothing_to_take_back_the_key_says_so(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        control(at, at.find(QLineEdit, "Ask the old jobs"), Qt.Key.Key_Z)
        at.wait_for("Nothing to undo.")
        control(at, at.find(QLineEdit, "Ask the old jobs"), Qt.Key.Key_Y)
        at.wait_for("Nothing to redo.")
