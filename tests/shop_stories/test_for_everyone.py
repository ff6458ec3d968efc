"""Every control has a name for a screen reader, and what is typed is shown as it is."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.program import WELCOME, Program
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.place_names import ASK, BACK, FIRST_RULES, ON_RAIL, WATCH
from tests.conftest import NOON
from tests.shop_stories.counter import Counter
from tests.shop_stories.names_told import nameless
from tests.shop_stories.one_job import one_job, open_job

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
    with one_job(qtbot, tmp_path / "shop") as counter:
        yield counter


@pytest.mark.parametrize("place", ON_RAIL)
def test_every_control_of_a_place_has_a_name(at: Counter, place: str) -> None:
    at.go(place)
    assert nameless(at.window) == []


def test_every_control_of_a_job_has_a_name(at: Counter) -> None:
    open_job(at)
    assert nameless(at.window) == []


@pytest.mark.parametrize("words", ["History…", "Comparison sheet…"])
def test_every_control_of_what_a_job_opens_has_a_name(at: Counter, words: str) -> None:
    open_job(at)
    at.press(words)
    at.quiet()
    (over,) = (one for one in at.window.findChildren(QWidget) if one.isWindow() and one.isVisible())
    assert nameless(over) == []
    at.close_what_lies_over()


@pytest.mark.parametrize("words", ["All keys", "From a phone…"])
def test_every_control_of_what_lies_beside_the_places_has_a_name(at: Counter, words: str) -> None:
    open_job(at)
    at.press(words)
    at.quiet()
    assert nameless(at.window) == []


@pytest.mark.parametrize("words", ["", "Open a shop on a server…", "Bring a backup back…"])
def test_every_control_before_a_shop_is_open_has_a_name(qtbot: QtBot, words: str) -> None:
    program = Program(None, lambda: NOON)
    qtbot.addWidget(program.window)
    program.start()
    at = Counter(qtbot, program)
    qtbot.waitUntil(lambda: at.window.here() == WELCOME)
    if words:
        at.press(words)
    assert nameless(at.window) == []
    program.close()


def test_the_wheel_changes_no_answer(at: Counter) -> None:
    for place in (*ON_RAIL, FIRST_RULES):
        at.window.go_to(place)
    open_job(at)
    lists = at.window.findChildren(QComboBox)
    assert len(lists) > 20
    assert {one.accessibleName() for one in lists if not isinstance(one, ChoiceList)} == set()
    who = ChoiceList()
    at.bot.addWidget(who)
    who.addItems(["Ana", "Tuuli"])
    who.show()
    down = QWheelEvent(
        QPointF(5, 5),
        QPointF(5, 5),
        QPoint(),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(who, down)
    assert who.currentText() == "Ana"
    assert not down.isAccepted()  # it goes on to the page


def test_no_label_takes_words_for_markup(at: Counter) -> None:
    for place in ON_RAIL:
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
    for place in (ASK, BACK, WATCH):
        at.go(place)
    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.parts_compared.sheet import write_sheet

    write_sheet(desk.record, 1, kinds_of(), tmp_path / "sheet.pdf")
    assert (tmp_path / "sheet.pdf").stat().st_size > 1000
