"""Numbers on a picture of the window: on the part of a class, and none where it is not in sight."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from demo_shop.pictures_marked import MARKS, Part, marked_picture

BUTTON, LABEL = Part("QPushButton", "button.py"), Part("QLabel", "label.py")


@pytest.fixture
def window(qtbot: QtBot) -> QWidget:
    """A window with a button above a label far down in what is scrolled."""
    shown, inside, scrolled = QWidget(), QWidget(), QScrollArea()
    inside.setFixedSize(100, 3000)
    QLabel("far down", inside).move(0, 2900)
    scrolled.setWidget(inside)
    column = QVBoxLayout(shown)
    column.addWidget(QPushButton("Fit"))
    column.addWidget(scrolled)
    shown.resize(300, 300)
    qtbot.addWidget(shown)
    shown.show()
    qtbot.waitExposed(shown)
    return shown


def coloured(window: QWidget, *parts: Part) -> set[tuple[int, int]]:
    """Where the picture has the marks' own colour."""
    image = marked_picture(window, parts).toImage()
    every = ((x, y) for x in range(image.width()) for y in range(image.height()))
    return {at for at in every if image.pixelColor(*at) == QColor(MARKS)}


def test_a_number_goes_with_its_part(window: QWidget, qtbot: QtBot) -> None:
    assert coloured(window) == set()
    button = window.findChild(QPushButton)
    assert isinstance(button, QPushButton)
    before = coloured(window, BUTTON)
    assert max(y for _, y in before) < button.geometry().bottom() + 5
    window.resize(500, 300)
    qtbot.waitUntil(lambda: button.width() > 400)
    assert max(x for x, _ in coloured(window, BUTTON)) > max(x for x, _ in before) + 150


def test_a_part_that_is_not_there_stops_the_drawing(window: QWidget) -> None:
    with pytest.raises(LookupError, match=r"shows no QSlider, which slider\.py"):
        marked_picture(window, (BUTTON, Part("QSlider", "slider.py")))


def test_one_that_is_hidden_or_scrolled_away_does_so_too(window: QWidget) -> None:
    with pytest.raises(LookupError, match=r"QLabel of label\.py is scrolled out of sight"):
        marked_picture(window, (LABEL,))
    next(iter(window.findChildren(QPushButton))).hide()
    with pytest.raises(LookupError, match="shows no QPushButton"):
        marked_picture(window, (BUTTON,))
