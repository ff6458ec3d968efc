"""A line that comes or goes above what somebody points at does not move it under the mouse."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window import look
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.place_names import RULES
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
LEFT = Qt.MouseButton.LeftButton
RADIUS, HEIGHT = "tip radius from the shaft axis, removed", "tip height above the seat, removed"


@pytest.fixture(autouse=True)
def at_once(qapp: QApplication) -> Iterator[None]:
    """However busy the machine is, what follows a press follows it soon."""
    before = qapp.doubleClickInterval()
    qapp.setDoubleClickInterval(60_000)
    yield
    qapp.setDoubleClickInterval(before)


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    """A job with a rotor laid out, and its page."""
    with sitting(qtbot, tmp_path / "shop", MONDAY) as counter:
        desk = counter.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        desk.do(lay_side_by_side, 1, "distributor-rotor")
        counter.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: counter.window.here() == "Job")
        yield counter


def place_of(at: Counter, widget: QWidget) -> QPoint:
    """Where a widget is seen in the window, once everything lies still."""
    QTest.qWait(50)
    return widget.mapTo(at.window, widget.rect().center())


def press(at: Counter, widget: QWidget) -> None:
    """Press into it with the mouse, as slowly as a finger does."""
    QTest.mousePress(widget, LEFT)
    QTest.qWait(30)
    QTest.mouseRelease(widget, LEFT)
    QTest.qWait(50)


def shown(at: Counter, words: str) -> bool:
    """Whether a line that has these words is on the screen."""
    lines = at.window.findChildren(QLabel)
    return any(words in one.text() for one in lines if not one.visibleRegion().isEmpty())


def test_a_field_stays_when_the_line_about_the_one_that_is_left_goes(at: Counter) -> None:
    left, entered = at.find(QLineEdit, RADIUS), at.find(QLineEdit, HEIGHT)
    bring_up(left)
    press(at, left)  # how to measure it is said beneath
    at.bot.keyClicks(left, "33.6")
    bring_up(entered)
    before = place_of(at, entered)
    press(at, entered)
    assert entered.hasFocus()
    assert place_of(at, entered) == before


def test_a_field_stays_when_the_verdict_comes_into_view_above_the_page(at: Counter) -> None:
    reading = at.find(QLineEdit, RADIUS)
    bring_up(reading)
    before = place_of(at, reading)
    assert not shown(at, "Distributor rotor: ")
    press(at, reading)
    assert shown(at, "Distributor rotor: ")
    assert place_of(at, reading) == before


def test_the_size_of_all_text_is_changed_and_its_field_stays_in_sight(at: Counter) -> None:
    at.go(RULES)
    try:
        field = at.find(QLineEdit, "Text size")
        bring_up(field)
        field.setFocus()
        before = place_of(at, field).y()
        field.selectAll()
        at.bot.keyClicks(field, "24")
        at.bot.keyClick(field, Qt.Key.Key_Return)
        at.bot.waitUntil(lambda: QApplication.font().pointSize() == 24)
        focus = at.window.focusWidget()
        assert focus is not None
        seen = place_of(at, focus).y()
        assert not focus.visibleRegion().isEmpty()
        assert abs(seen - before) < 200  # itself, or the next one, which Enter led to
    finally:
        look.dress(QApplication.instance(), "light")
