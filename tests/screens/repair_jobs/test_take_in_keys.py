"""Taking a car in by the keyboard: no key presses what the eyes are not on."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPlainTextEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.fields import QuestionLine
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting

ODD_VIN = "1HGZZ82633A004352"  # seventeen signs, and the ninth is not the check digit
VIN, ABOUT, PLATE = "VIN, if it is at hand", "What kind of car", "Plate, or the shop's own tag"


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", NOON) as counter:
        assert counter.program.desk is not None
        counter.program.desk.do(change_rule, "shop_name", "Cobble Lane")  # something to undo
        counter.press("A car is here")
        yield counter
        counter.press("Empty the form")


def asked(at: Counter) -> QPushButton:
    """Return the button of the question that is shown."""
    (line,) = (one for one in at.page.findChildren(QuestionLine) if one.isVisible())
    (button,) = line.findChildren(QPushButton)
    return button


def typed(at: Counter, words: str) -> None:
    """Type to whatever has the cursor."""
    at.bot.keyClicks(QApplication.focusWidget(), words)


def test_enter_goes_past_a_question_to_the_next_field(at: Counter) -> None:
    at.type_into(QLineEdit, VIN, ODD_VIN, enter=True)
    assert asked(at).text() == "Right as typed"
    typed(at, "4-cyl pickup, 1990s")
    assert at.find(QLineEdit, ABOUT).text() == "4-cyl pickup, 1990s"
    assert asked(at).isVisible()  # it still asks


@pytest.mark.parametrize("by", ["mouse", "key"])
def test_after_an_answer_the_keys_go_to_what_follows_and_undo_nothing(at: Counter, by: str) -> None:
    at.type_into(QLineEdit, VIN, ODD_VIN, enter=True)
    button = asked(at)
    if by == "mouse":
        at.bot.mouseClick(button, Qt.MouseButton.LeftButton)
    else:
        button.setFocus()
        at.bot.keyClick(button, Qt.Key.Key_Space)
    assert not button.isVisible()
    typed(at, "4-cyl pickup, 1990s")
    assert at.find(QLineEdit, ABOUT).text() == "4-cyl pickup, 1990s"
    assert at.program.desk is not None
    assert at.program.desk.rules.shop_name == "Cobble Lane"
    assert not at.reads("Undone")


def test_enter_walks_through_the_form_and_what_it_comes_to_is_seen(at: Counter) -> None:
    at.window.resize(1100, 620)
    at.type_into(QLineEdit, PLATE, "TH 1042", enter=True)
    for words in ("", "4-cyl pickup", "118,420"):
        typed(at, words)
        at.bot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    said = at.find(QPlainTextEdit, "What the customer says")
    assert said.hasFocus()
    assert not said.visibleRegion().isEmpty()


def test_a_form_that_is_half_filled_is_gone_on_with_where_it_is_empty(at: Counter) -> None:
    at.type_into(QLineEdit, PLATE, "TH 1042")
    at.go("Monday Book")
    at.press("A car is here")
    typed(at, "118,420")
    assert at.find(QLineEdit, PLATE).text() == "TH 1042"
    assert at.find(QLineEdit, "Odometer").text() == "118,420"


def test_after_the_form_is_emptied_the_next_car_is_typed_at_once(at: Counter) -> None:
    at.type_into(QLineEdit, ABOUT, "4-cyl pickup")
    at.press("Empty the form")
    typed(at, "TH 7")
    assert at.find(QLineEdit, "Plate, or the shop's own tag").text() == "TH 7"
