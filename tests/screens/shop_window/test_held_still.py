"""On any page a button stays under the mouse, however often it is pressed."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.page import ReadingPage

LEFT = Qt.MouseButton.LeftButton
ABOVE = 20  # lines between the top and what unfolds


@pytest.fixture
def short_while(qapp: QApplication) -> Iterator[int]:
    """How long presses count as quick here, in ms."""
    before = qapp.doubleClickInterval()
    qapp.setDoubleClickInterval(100)
    yield 100
    qapp.setDoubleClickInterval(before)


def test_a_button_pressed_again_after_a_while_stays_under_the_mouse(
    qtbot: QtBot, short_while: int
) -> None:
    page, button = ReadingPage(), QPushButton("Unfold")
    lines, unfolds = QLabel("\n".join("a line" for _ in range(ABOVE))), QLabel("more\nand more\n")
    below = QLabel(lines.text() * 3)
    unfolds.hide()
    button.clicked.connect(lambda: unfolds.setVisible(unfolds.isHidden()))
    for widget in (lines, unfolds, button, below):
        page.column.addWidget(widget)
    page.resize(600, 400)
    qtbot.addWidget(page)
    page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    page.bring_up(unfolds if unfolds.isVisible() else button)
    QTest.qWait(50)
    seen = button.mapTo(page, QPoint())
    for folded in (False, True, False):
        qtbot.mouseClick(button, LEFT)
        assert unfolds.isHidden() is folded
        qtbot.waitUntil(lambda: button.mapTo(page, QPoint()) == seen)
        QTest.qWait(2 * short_while)  # the next press is no quick one
