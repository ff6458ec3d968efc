"""A list that opens shows its rows whole, and the chosen one so that it can be read."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QColor, QImage, QPalette
from PySide6.QtWidgets import QApplication
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
