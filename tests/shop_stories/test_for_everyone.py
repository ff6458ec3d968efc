"""Every control has a name for a screen reader, and what is typed is shown as it is."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QLabel, QLineEdit, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
PLACES = (
    "Ask the Old Jobs",
    "Heard",
    "Under Watch",
    "It's Back",
    "Monday Book",
    "Tool Drawer",
    "House Rules",
)
HOSTILE = (
    '<img src="file:///etc/hostname">',
    "<b>" + "<table><tr><td>" * 16 + "deep",
    "x" * 5000,
    "\u202egnitset \u0000 NUL",
    "'; DROP TABLE job; --",
    "=cmd|' /C calc'!A0",
)


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as counter:
        desk = counter.program.desk
        assert desk is not None
        desk.do(actions.add_person, "Tuuli")
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        desk.do(lay_side_by_side, 1, "distributor-rotor")
        yield counter


def open_job(at: Counter) -> None:
    at.go("Ask the Old Jobs")
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def nameless(window: QWidget) -> list[str]:
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or not widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            continue
        accessible = QAccessible.queryAccessibleInterface(widget)
        if accessible is None or not accessible.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found


@pytest.mark.parametrize("place", PLACES)
def test_every_control_of_a_place_has_a_name(at: Counter, place: str) -> None:
    at.go(place)
    assert nameless(at.window) == []


def test_every_control_of_a_job_has_a_name(at: Counter) -> None:
    open_job(at)
    assert nameless(at.window) == []


def test_no_label_takes_words_for_markup(at: Counter) -> None:
    for place in PLACES:
        at.go(place)
    open_job(at)
    rich = [
        label.text()
        for label in at.window.findChildren(QLabel)
        if label.textFormat() != Qt.TextFormat.PlainText and label.text()
    ]
    assert rich == []


@pytest.mark.parametrize("words", HOSTILE, ids=range(len(HOSTILE)))
def test_hostile_words_are_kept_and_shown_as_they_are(
    at: Counter, words: str, tmp_path: Path
) -> None:
    open_job(at)
    concern = at.find(QPlainTextEdit, "Concern, in the customer's own words")
    concern.setFocus()
    concern.selectAll()
    concern.insertPlainText(words)
    at.leave()
    desk = at.program.desk
    assert desk is not None
    kept = desk.ask(read_job, 1).concern
    assert kept.replace("\u0000", "") == words.replace("\u0000", "")
    for place in ("Ask the Old Jobs", "It's Back", "Under Watch"):
        at.go(place)
    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.parts_compared.sheet import write_sheet

    write_sheet(desk.record, 1, kinds_of(), tmp_path / "sheet.pdf")
    assert (tmp_path / "sheet.pdf").stat().st_size > 1000
