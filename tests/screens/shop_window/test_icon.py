"""The icon: the picture that systems show is the drawing that is kept."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.own_program.resource_folder import resource_path

MOST = 8  # of 255; another release of Qt may smooth an edge otherwise


def test_the_picture_is_the_drawing(qtbot: QtBot) -> None:
    kept = QImage(str(resource_path("icon", "benchwitness.png")))
    drawn = QImage(kept.size(), QImage.Format.Format_ARGB32)
    drawn.fill(Qt.GlobalColor.transparent)
    painter = QPainter(drawn)
    QSvgRenderer(str(resource_path("icon", "benchwitness.svg"))).render(painter)
    painter.end()
    assert (kept.width(), kept.height()) == (256, 256)
    places = [(x, y) for x in range(4, 256, 8) for y in range(4, 256, 8)]
    apart = [
        (x, y)
        for x, y in places
        for one, other in zip(
            drawn.pixelColor(x, y).getRgb(), kept.pixelColor(x, y).getRgb(), strict=True
        )
        if abs(int(one) - int(other)) > MOST  # type: ignore[call-overload]
    ]
    assert apart == []
