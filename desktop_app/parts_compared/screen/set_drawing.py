"""The drawing of parts that meet: the room before and after to scale, with what may be lost."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.screen.drawn_set import DrawnRoom, DrawnSet
from desktop_app.parts_compared.screen.scale_axis import Axis, axis_for
from desktop_app.parts_compared.screen.side_marks import COLOURS, draw_interval, draw_mark
from desktop_app.parts_compared.shown_value import amount

MARK = 18.0  # pixels across
LANES: dict[Side, float] = {"removed": 0.28, "replacement": 0.72}


class SetDrawing(QWidget):
    """A bar for each side from the end that must not be reached to the room that is left."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self._drawn: DrawnSet | None = None
        self.setAccessibleName(tr("drawing of {name}", name=name))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(420, self._height())

    def minimumSizeHint(self) -> QSize:
        return QSize(200, self._height())

    def show_rooms(self, drawn: DrawnSet | None) -> None:
        """Draw these rooms; None draws nothing."""
        if drawn == self._drawn:
            return
        self._drawn = drawn
        self.setAccessibleDescription("" if drawn is None else drawn.said)
        self.updateGeometry()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._drawn is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ink = self.palette().color(QPalette.ColorRole.WindowText)
        _draw(painter, QRectF(self.rect()).adjusted(4, 4, -4, -4), self._drawn, ink)
        painter.end()

    def _height(self) -> int:
        return self.fontMetrics().height() * 2 + 100 if self._drawn is not None else 1


def _draw(painter: QPainter, area: QRectF, drawn: DrawnSet, ink: QColor) -> None:
    axis = axis_for(drawn.edges())
    if axis is None:
        return
    letters = painter.fontMetrics().height()
    plot = QRectF(
        area.left() + MARK, area.top(), area.width() - 2 * MARK, area.height() - letters - 6
    )
    _draw_end(painter, plot, axis, drawn.low, ink, below=True)
    if drawn.high is not None:
        _draw_end(painter, plot, axis, drawn.high, ink, below=False)
    _draw_axis(painter, plot, axis, drawn.unit, ink)
    for room in drawn.rooms:
        _draw_room(painter, plot, axis, drawn.low, room, ink)


def _draw_end(
    painter: QPainter, plot: QRectF, axis: Axis, at: float, ink: QColor, *, below: bool
) -> None:
    """Hatch what lies beyond an end that the room must keep off."""
    x = _x(plot, axis, at)
    left, right = (plot.left() - MARK, x) if below else (x, plot.right() + MARK)
    faint = QColor(ink)
    faint.setAlpha(130)
    box = QRectF(left, plot.top(), max(right - left, 1.0), plot.height())
    painter.fillRect(box, QBrush(faint, Qt.BrushStyle.BDiagPattern))
    painter.setPen(QPen(ink, 2.0))
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))


def _draw_axis(painter: QPainter, plot: QRectF, axis: Axis, unit: str, ink: QColor) -> None:
    painter.setPen(QPen(ink, 1.0))
    painter.drawLine(plot.bottomLeft(), plot.bottomRight())
    metrics = painter.fontMetrics()
    base = plot.bottom() + 5 + metrics.ascent()
    end = -1e9
    for tick in axis.ticks:
        x = _x(plot, axis, tick)
        painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4))
        said = figure(tick, f".{axis.decimals}f")
        said += amount(0.0, unit).removeprefix("0") if tick == axis.ticks[0] else ""
        left = x - metrics.horizontalAdvance(said) / 2
        if left > end + 6:
            painter.drawText(QPointF(left, base), said)
            end = left + metrics.horizontalAdvance(said)


def _draw_room(
    painter: QPainter, plot: QRectF, axis: Axis, low: float, room: DrawnRoom, ink: QColor
) -> None:
    """Draw the room as a bar, its usual case thick on it, its worst case as a capped line."""
    y = plot.top() + plot.height() * LANES[room.side]
    start, end = _x(plot, axis, low), _x(plot, axis, room.value)
    bar = QColor(COLOURS[room.side])
    bar.setAlpha(90)
    painter.fillRect(QRectF(min(start, end), y - 9, abs(end - start), 18), bar)
    left, right = (_x(plot, axis, room.value + way * room.usual) for way in (-1, 1))
    painter.fillRect(QRectF(left, y - 2.5, max(right - left, 1.0), 5), ink)
    worst = [_x(plot, axis, room.value + way * room.worst) for way in (-1, 1)]
    draw_interval(painter, y, worst[0], worst[1], ink, 7)
    draw_mark(painter, room.side, QPointF(end, y), MARK, ink)
    _write(painter, plot, QPointF(worst[1], y), room.words, ink)


def _write(painter: QPainter, plot: QRectF, after: QPointF, words: str, ink: QColor) -> None:
    """Write a value in bold beside its interval, or above it where there is no place beside it."""
    kept = painter.font()
    bold = painter.font()
    bold.setBold(True)
    bold.setPointSizeF(kept.pointSizeF() * 1.2)
    painter.setFont(bold)
    painter.setPen(QPen(ink))
    metrics = painter.fontMetrics()
    wide = metrics.horizontalAdvance(words)
    room = plot.right() + MARK - after.x() - 10
    y = after.y() + metrics.ascent() / 2 - 1
    if room >= wide:
        painter.drawText(QPointF(after.x() + 10, y), words)
    else:
        left = min(after.x(), plot.right() + MARK) - wide
        painter.drawText(QPointF(left, after.y() - 12), words)
    painter.setFont(kept)


def _x(plot: QRectF, axis: Axis, value: float) -> float:
    return plot.left() + axis.at(value) * plot.width()
