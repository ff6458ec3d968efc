"""Quick presses at one place mean one thing: what moves up under the mouse is not pressed."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_window.in_sight import bring_up
from tests.shop_stories.counter import Counter
from tests.shop_stories.one_job import one_job, open_job

LEFT = Qt.MouseButton.LeftButton
FIRST = "Ignition off, key out, nobody with a pacemaker near the open engine."


@pytest.fixture(autouse=True)
def quick(qapp: QApplication) -> Iterator[None]:
    """However busy the machine is, the presses of these tests count as quick."""
    before = qapp.doubleClickInterval()
    qapp.setDoubleClickInterval(60_000)
    yield
    qapp.setDoubleClickInterval(before)


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    """A job with a rotor laid out, three findings, and its page."""
    with one_job(qtbot, tmp_path / "shop") as counter:
        desk = counter.program.desk
        assert desk is not None
        for words in ("cap crusted", "rotor worn", "leads loose"):
            desk.do(actions.write_finding, 1, words)
        open_job(counter)
        yield counter


def press_at(at: Counter, place: QPoint, times: int) -> None:
    """Press at one place of the window, quickly, whatever lies there by then."""
    for _ in range(times):
        under = at.window.childAt(place)
        assert under is not None
        QTest.mousePress(under, LEFT, pos=under.mapFrom(at.window, place))
        QTest.qWait(30)  # a finger stays down for a while, and the page is laid out meanwhile
        QTest.mouseRelease(under, LEFT, pos=under.mapFrom(at.window, place))
        QTest.qWait(30)


def middle(at: Counter, widget: QWidget) -> QPoint:
    """Return the place of a widget in the window, once it is in sight and lies still."""
    bring_up(widget)
    QTest.qWait(50)
    assert not widget.visibleRegion().isEmpty()
    return widget.mapTo(at.window, widget.rect().center())


def kept(at: Counter, kind: str) -> dict[str, str]:
    """Return what is answered, or found, by its words."""
    desk = at.program.desk
    assert desk is not None
    return {one.words: one.outcome for one in desk.ask(read_job, 1).checks if one.kind == kind}


def test_a_row_stays_under_the_mouse_when_what_is_above_it_gets_lower(at: Counter) -> None:
    reading = at.find(QLineEdit, "tip radius from the shaft axis, removed")
    reading.setFocus()  # how to measure it is said beneath, until it is left
    at.bot.keyClicks(reading, "33.6")
    place = middle(at, at.button(f"{FIRST}: not needed"))
    assert reading.hasFocus()
    press_at(at, place, 3)
    assert kept(at, "refit") == {FIRST: "not needed"}
    assert at.window.childAt(place) is at.button(f"{FIRST}: not needed")


def test_of_rows_that_move_up_only_the_pressed_one_goes(at: Counter) -> None:
    press_at(at, middle(at, at.button("Take out the finding cap crusted")), 3)
    assert list(kept(at, "inspection")) == ["rotor worn", "leads loose"]


def test_the_cursor_of_a_row_that_goes_is_put_where_the_list_goes_on(at: Counter) -> None:
    press_at(at, middle(at, at.button("Take out the finding cap crusted")), 1)
    focus = at.window.focusWidget()
    assert focus is at.find(QLineEdit, "What was seen or tried")  # what follows and stays
