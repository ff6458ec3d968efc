"""Pictures of what is no length: a dial for angles, rows of marks for counts."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPalette, QPen

from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.screen.drawn_values import DrawnValues
from desktop_app.parts_compared.screen.side_marks import draw_mark
from desktop_app.parts_compared.shown_sum import Figure
from desktop_app.parts_compared.shown_value import number

MOST_MARKS = 16


def draw_dial(painter: QPainter, area: QRectF, values: DrawnValues, palette: QPalette) -> None:
    """Draw both angles clockwise from the key at twelve o'clock, the allowed wedge hatched."""
    ink = palette.color(QPalette.ColorRole.Text)
    radius = area.height() / 2 - 8
    centre = QPointF(area.left() + radius + 12, area.center().y())
    ring = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
    if values.band is not None and None not in values.band:
        low, high = (float(end or 0.0) for end in values.band)
        faint = palette.color(QPalette.ColorRole.Text)
        faint.setAlpha(140)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(faint, Qt.BrushStyle.Dense4Pattern))
        # Qt counts sixteenths of a degree, counter-clockwise from three o'clock.
        painter.drawPie(ring, round((90 - low) * 16), round((low - high) * 16))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ink, 1.0))
    painter.drawEllipse(ring)
    painter.drawLine(centre - QPointF(0, radius - 4), centre - QPointF(0, radius + 4))
    beside = area.adjusted(2 * radius + 30, 0, 0, 0)
    for side, one in _both(values):
        turn = math.radians(one.value)
        reach = radius if side == "removed" else radius * 0.62
        tip = centre + QPointF(math.sin(turn) * reach, -math.cos(turn) * reach)
        painter.setPen(QPen(ink, 1.4))
        painter.drawLine(centre, tip)
        draw_mark(painter, side, tip, 12, ink)
        _say(painter, beside, side, values.said(one), palette)


def draw_count(painter: QPainter, area: QRectF, values: DrawnValues, palette: QPalette) -> None:
    """Draw as many marks as were counted, or the number alone where there are many."""
    ink = palette.color(QPalette.ColorRole.Text)
    for side, one in _both(values):
        y = area.top() + area.height() * (0.3 if side == "removed" else 0.7)
        count = int(one.value)
        if count > MOST_MARKS:
            _say(painter, area, side, number(one.value), palette)
            continue
        for place in range(count):
            draw_mark(painter, side, QPointF(area.left() + 10 + place * 16, y), 12, ink)
        painter.setPen(ink)
        painter.drawText(QPointF(area.left() + 8 + count * 16, y + 5), number(one.value))


def _both(values: DrawnValues) -> list[tuple[Side, Figure]]:
    both = zip(SIDES, (values.removed, values.replacement), strict=True)
    return [(side, one) for side, one in both if one is not None]


def _say(painter: QPainter, area: QRectF, side: Side, words: str, palette: QPalette) -> None:
    y = area.top() + area.height() * (0.3 if side == "removed" else 0.7)
    ink = palette.color(QPalette.ColorRole.Text)
    draw_mark(painter, side, QPointF(area.left() + 8, y), 12, ink)
    painter.setPen(ink)
    painter.drawText(QPointF(area.left() + 22, y + 5), words)
