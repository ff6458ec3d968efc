"""What is said beside a control: on a ground of its own, and never over the notice."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.beside import NAME, say_beside
from desktop_app.shop_window.look import PALETTES, dress
from desktop_app.shop_window.main_window import MainWindow

WORDS = "This was not saved, and is put back. The line at the foot of the window says why."
# Qt documentation, "Qt Style Sheets Reference", Palette Role; any other name paints nothing.
ROLES = [
    "accent",
    "alternate-base",
    "base",
    "bright-text",
    "button",
    "button-text",
    "dark",
    "highlight",
    "highlighted-text",
    "light",
    "link",
    "link-visited",
    "mid",
    "midlight",
    "placeholder-text",
    "shadow",
    "text",
    "tooltip-base",
    "tooltip-text",
    "window",
    "window-text",
]


def beside(window: MainWindow) -> QLabel:
    (label,) = (one for one in window.findChildren(QLabel, NAME) if one.isVisible())
    return label


def place(widget: QWidget) -> QRect:
    return QRect(widget.mapToGlobal(QPoint(0, 0)), widget.size())


def test_every_colour_of_the_style_is_one_that_the_style_knows(qapp: QApplication) -> None:
    dress(qapp, "light")
    named = set(re.findall(r"palette\(([\w-]+)\)", qapp.styleSheet()))
    assert named
    assert named <= set(ROLES)


@pytest.mark.parametrize("look", ["light", "dark"])
def test_it_has_a_ground_of_its_own(qapp: QApplication, window: MainWindow, look: str) -> None:
    try:
        dress(qapp, look)
        window.go_to("House Rules")
        say_beside(window.page("House Rules"), WORDS)
        window.strip.tell("J-104 is handed over.")
        QApplication.processEvents()
        ground = QColor(PALETTES[look == "dark", False][QPalette.ColorRole.ToolTipBase]).name()
        for seen in (beside(window), window.strip):
            picture = seen.grab().toImage()
            assert picture.pixelColor(6, picture.height() // 2).name() == ground
    finally:
        dress(qapp, "light")


def test_it_never_lies_over_the_notice_that_it_leads_to(qtbot: QtBot, window: MainWindow) -> None:
    low = QPushButton("Same system", window)
    low.show()
    window.strip.tell(ShopTrouble("The disk is full.", "Nothing was saved.", "Free some space."))
    QApplication.processEvents()
    low.move(40, window.strip.mapTo(window, QPoint(0, 0)).y() - low.height())
    say_beside(low, WORDS)
    assert not place(beside(window)).intersects(place(window.strip))
    assert not place(beside(window)).intersects(place(low))
