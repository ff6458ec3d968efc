"""The picture of a measured length: one axis, the allowed band hatched, both values on it."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPalette, QPen

from desktop_app.figures_shown import figure
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.screen.drawn_values import DrawnValues
from desktop_app.parts_compared.screen.scale_axis import Axis, axis_for
from desktop_app.parts_compared.screen.side_marks import draw_interval, draw_mark
from desktop_app.parts_compared.shown_sum import Figure
from desktop_app.parts_compared.shown_value import amount

MARK = 13.0  # pixels across


def draw_scale(painter: QPainter, area: QRectF, values: DrawnValues, palette: QPalette) -> None:
    """Draw the two values of a dimension to scale into `area`."""
    axis = axis_for(values.edges())
    if axis is None:
        return
    letters = painter.fontMetrics().height()
    foot = area.bottom() - letters - 5
    plot = QRectF(area.left() + MARK, area.top() + 2, area.width() - 2 * MARK, foot - area.top())
    _draw_band(painter, plot, axis, values, palette)
    _draw_axis(painter, plot, axis, values.unit, palette)
    sides: list[tuple[Side, float, Figure | None, float | None]] = [
        ("removed", 0.30, values.removed, None),
        ("replacement", 0.72, values.replacement, values.difference_doubt),
    ]
    for side, lane, one, difference in sides:
        if one is not None:
            y = plot.top() + plot.height() * lane
            _draw_value(painter, plot, axis, side, y, one, difference, palette)


def _draw_band(
    painter: QPainter, plot: QRectF, axis: Axis, values: DrawnValues, palette: QPalette
) -> None:
    if values.band is None:
        return
    low, high = values.band
    left = plot.left() if low is None else _x(plot, axis, low)
    right = plot.right() if high is None else _x(plot, axis, high)
    box = QRectF(left, plot.top(), max(right - left, 1.0), plot.height() - 2)
    faint = palette.color(QPalette.ColorRole.Text)
    faint.setAlpha(110)
    painter.fillRect(box, QBrush(faint, Qt.BrushStyle.BDiagPattern))
    painter.setPen(QPen(palette.color(QPalette.ColorRole.Text), 1.2, Qt.PenStyle.DashLine))
    for end, x in ((low, left), (high, right)):
        if end is not None:
            painter.drawLine(QPointF(x, box.top()), QPointF(x, plot.bottom()))


def _draw_axis(painter: QPainter, plot: QRectF, axis: Axis, unit: str, palette: QPalette) -> None:
    ink = palette.color(QPalette.ColorRole.Text)
    painter.setPen(QPen(ink, 1.0))
    painter.drawLine(plot.bottomLeft(), plot.bottomRight())
    metrics = painter.fontMetrics()
    base = plot.bottom() + 4 + metrics.ascent()
    words = [figure(tick, f".{axis.decimals}f") for tick in axis.ticks]
    words[0] += amount(0.0, unit).removeprefix("0")
    widest = max(metrics.horizontalAdvance(one) for one in words)
    apart = _x(plot, axis, axis.ticks[-1]) - _x(plot, axis, axis.ticks[0])
    room = apart / max(1, len(words) - 1)
    every = max(1, math.ceil((widest + 6) / room)) if room > 0 else 1
    for number, (tick, said) in enumerate(zip(axis.ticks, words, strict=True)):
        x = _x(plot, axis, tick)
        painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4))
        wide = metrics.horizontalAdvance(said)
        left = min(max(x - wide / 2, plot.left() - MARK), plot.right() + MARK - wide)
        if number % every == 0:
            painter.drawText(QPointF(left, base), said)


def _draw_value(
    painter: QPainter,
    plot: QRectF,
    axis: Axis,
    side: Side,
    y: float,
    one: Figure,
    difference: float | None,
    palette: QPalette,
) -> None:
    ink = palette.color(QPalette.ColorRole.Text)
    start, end = (_x(plot, axis, one.value + way * one.expanded) for way in (-1, 1))
    if difference is not None:
        _draw_bar(painter, plot, axis, y, one.value, difference, ink)
    if one.expanded > 0:
        draw_interval(painter, y, start, end, ink, 5)
    draw_mark(painter, side, QPointF(_x(plot, axis, one.value), y), MARK, ink)


def _draw_bar(
    painter: QPainter, plot: QRectF, axis: Axis, y: float, value: float, doubt: float, ink: QColor
) -> None:
    """Draw, thick, how well the replacement is known against the removed part."""
    start, end = (_x(plot, axis, value + way * doubt) for way in (-1, 1))
    painter.fillRect(QRectF(start, y - 2, max(end - start, 1.0), 4), ink)


def _x(plot: QRectF, axis: Axis, value: float) -> float:
    return plot.left() + axis.at(value) * plot.width()
