"""A button of many words takes the room that there is, and is read whole under the mouse."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QApplication, QPushButton, QToolTip, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.short_button import ShortButton

pytestmark = pytest.mark.qt_log_ignore("plugin does not support", extend=True)
LONG = "P0011 stored: Intake camshaft timing, bank 1: too far advanced, or performance"


def row(qtbot: QtBot, wide: int) -> tuple[QWidget, ShortButton, QPushButton]:
    page = QWidget()
    flow = FlowRow(page)
    long, short = ShortButton(LONG, "✕"), QPushButton("P0300")
    long.setToolTip("Press to take it out")
    flow.addWidget(long)
    flow.addWidget(short)
    qtbot.addWidget(page)
    page.resize(wide, 200)
    page.show()
    QApplication.processEvents()
    return page, long, short  # a page that nobody keeps goes


def told(button: ShortButton) -> str:
    place = QPoint(5, 5)
    QApplication.sendEvent(
        button, QHelpEvent(QHelpEvent.Type.ToolTip, place, button.mapToGlobal(place))
    )
    said = QToolTip.text()
    QToolTip.hideText()
    return said


@pytest.mark.parametrize("wide", [250, 400])
def test_it_is_no_wider_than_its_line(qtbot: QtBot, wide: int) -> None:
    _page, long, short = row(qtbot, wide)
    assert long.width() == wide
    assert short.y() > long.y()
    assert LONG in told(long)
    assert "Press to take it out" in told(long)


def test_where_there_is_room_all_of_it_is_read(qtbot: QtBot) -> None:
    _page, long, short = row(qtbot, 1500)
    assert long.width() == long.sizeHint().width()
    assert short.y() == long.y()
    assert told(long) == "Press to take it out"


def test_its_sign_is_never_cut_off(qtbot: QtBot) -> None:
    page, long, short = row(qtbot, 250)
    other = ShortButton(LONG, "=")
    page.layout().addWidget(other)
    more = ShortButton(LONG, "+")  # equally wide
    page.layout().addWidget(more)
    page.resize(250, 400)
    QApplication.processEvents()
    short.setFocus()
    one, two = (button.grab().toImage() for button in (other, more))
    assert one.size() == two.size() == long.grab().toImage().size()
    differs = [
        x
        for x in range(one.width())
        if any(one.pixel(x, y) != two.pixel(x, y) for y in range(one.height()))
    ]
    assert differs
    assert min(differs) > one.width() // 2


def test_it_is_pressed_as_any_button(qtbot: QtBot) -> None:
    _page, long, _ = row(qtbot, 250)
    with qtbot.waitSignal(long.clicked):
        qtbot.mouseClick(long, Qt.MouseButton.LeftButton)
