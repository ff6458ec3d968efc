"""A question within a page: what comes up under the mouse isn't answered by a double click."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.screen.asked_line import AskedLine

USUAL_MS = 400  # between the presses of a double click


@pytest.fixture
def line(qtbot: QtBot, qapp: QApplication) -> AskedLine:
    qapp.setDoubleClickInterval(USUAL_MS)
    line = AskedLine()
    qtbot.addWidget(line)
    line.resize(400, 120)
    return line


def asked(qtbot: QtBot, line: AskedLine, mouse: QPoint) -> tuple[QPushButton, list[str]]:
    """Ask while the mouse is there; return the button of the answer, and what it did."""
    did: list[str] = []
    QCursor.setPos(line.mapToGlobal(mouse))
    line.ask("Who judges it?", {"Odile": lambda: did.append("Odile")})
    qtbot.wait(1)  # it has its place
    (answer,) = line.findChildren(QPushButton)
    return answer, did


def test_under_the_mouse_a_second_press_answers_nothing(qtbot: QtBot, line: AskedLine) -> None:
    answer, did = asked(qtbot, line, QPoint(200, 60))
    qtbot.mouseClick(answer, Qt.MouseButton.LeftButton)
    assert did == []
    qtbot.waitUntil(answer.isEnabled)
    qtbot.mouseClick(answer, Qt.MouseButton.LeftButton)
    assert did == ["Odile"]


def test_anywhere_else_it_is_answered_at_once(qtbot: QtBot, line: AskedLine) -> None:
    answer, did = asked(qtbot, line, QPoint(200, 500))
    qtbot.mouseClick(answer, Qt.MouseButton.LeftButton)
    assert did == ["Odile"]
