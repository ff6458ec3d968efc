"""A list that opens shows its rows whole, and the chosen one so that it can be read."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QRect
from PySide6.QtGui import QColor, QHelpEvent, QImage, QPalette, QTextDocumentFragment
from PySide6.QtWidgets import QApplication, QStyle, QStyleOptionComboBox, QToolTip
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.look import dress


@pytest.mark.qt_log_ignore("plugin does not support", extend=True)
@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("size", [12, 24])
def test_the_chosen_row_is_seen_among_whole_rows(
    app: QApplication, qtbot: QtBot, look: str, size: int
) -> None:
    dress(app, look, size)
    choice = ChoiceList()
    qtbot.addWidget(choice)
    choice.addItems(["rotor", "cap", "lead"])
    choice.setCurrentIndex(1)
    choice.show()
    QApplication.processEvents()
    choice.showPopup()
    rows = choice.view()
    qtbot.waitUntil(rows.isVisible)
    last = rows.visualRect(rows.model().index(2, 0))
    assert rows.viewport().rect().contains(last)
    assert last.height() >= rows.fontMetrics().height() + 4
    picture = rows.viewport().grab().toImage()
    palette = app.palette()
    for row, role in ((0, QPalette.ColorRole.Base), (1, QPalette.ColorRole.Highlight)):
        place = rows.visualRect(rows.model().index(row, 0))
        ground = picture.pixelColor(place.right() - 4, place.center().y())
        assert _near(ground, palette.color(role)), (row, ground.name())
        assert _furthest(picture, place, ground) > 300
    choice.hidePopup()


@pytest.mark.qt_log_ignore("plugin does not support", extend=True)
def test_words_that_find_no_room_end_in_dots_and_are_read_under_the_mouse(
    app: QApplication, qtbot: QtBot
) -> None:
    dress(app, "light", 12)
    choice = ChoiceList()
    qtbot.addWidget(choice)
    choice.addItems(["rod", "a rod to measure the depth of bores"])
    choice.setToolTip("For both parts.")
    choice.setFixedWidth(140)
    choice.show()
    cut = {}
    for row in (0, 1):
        choice.setCurrentIndex(row)
        cut[row] = choice.grab().toImage()
        middle = QPoint(20, choice.height() // 2)
        asks = QHelpEvent(QEvent.Type.ToolTip, middle, choice.mapToGlobal(middle))
        QApplication.sendEvent(choice, asks)
        words = QTextDocumentFragment.fromHtml(QToolTip.text()).toPlainText()
        assert words == ("For both parts.", f"{choice.itemText(1)}\nFor both parts.")[row]
    option = QStyleOptionComboBox()
    choice.initStyleOption(option)
    field = QStyle.SubControl.SC_ComboBoxEditField
    room = choice.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, field, choice)
    ground = cut[1].pixelColor(room.left() - 2, room.center().y())
    column = [cut[1].pixelColor(room.right(), y) for y in range(room.top(), room.bottom())]
    assert all(_near(one, ground) for one in column), "a letter is cut in the middle"
    assert cut[1] != cut[0]
    QToolTip.hideText()


def _near(one: QColor, other: QColor) -> bool:
    return _apart(one, other) < 40


def _apart(one: QColor, other: QColor) -> int:
    return sum(abs(a - b) for a, b in zip(one.getRgb()[:3], other.getRgb()[:3], strict=True))


def _furthest(picture: QImage, place: QRect, ground: QColor) -> int:
    """Return how far the colour of the letters is from the ground's."""
    points = (
        QPoint(x, y)
        for x in range(place.left() + 6, place.left() + 60)
        for y in range(place.top(), place.bottom())
    )
    return max(_apart(picture.pixelColor(point), ground) for point in points)
