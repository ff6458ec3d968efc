"""The two marks of the bench: a diamond for the removed part, a disc for the replacement."""

from __future__ import annotations

from PySide6.QtCore import QPointF
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from desktop_app.parts_compared.reading import Side
from desktop_app.shop_window import look

COLOURS: dict[Side, QColor] = {"removed": look.REMOVED, "replacement": look.REPLACEMENT}


def draw_mark(painter: QPainter, side: Side, at: QPointF, size: float, ink: QColor) -> None:
    """Draw the mark of a side, `size` pixels across, outlined in `ink` so that it reads grey."""
    painter.setPen(QPen(ink, 1.4))
    painter.setBrush(QBrush(COLOURS[side]))
    half = size / 2
    if side == "replacement":
        painter.drawEllipse(at, half * 0.85, half * 0.85)
        return
    painter.drawPolygon(
        QPolygonF(
            [
                at + QPointF(0, -half),
                at + QPointF(half, 0),
                at + QPointF(0, half),
                at + QPointF(-half, 0),
            ]
        )
    )


def draw_interval(
    painter: QPainter, y: float, start: float, end: float, ink: QColor, cap: float
) -> None:
    """Draw an interval as a line with a cap at each end."""
    painter.setPen(QPen(ink, 1.6))
    painter.drawLine(QPointF(start, y), QPointF(end, y))
    for x in (start, end):
        painter.drawLine(QPointF(x, y - cap), QPointF(x, y + cap))
