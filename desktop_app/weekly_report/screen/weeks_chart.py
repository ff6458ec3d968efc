"""The 26 weeks as columns: handed over, comebacks, waiting, each with its own hatching."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.weekly_report.figures import WeekCount

_LEFT, _TOP, _BOTTOM = 44, 12, 54
KINDS = (
    ("Handed over", Qt.BrushStyle.NoBrush),
    ("Comebacks", Qt.BrushStyle.SolidPattern),
    ("Waiting", Qt.BrushStyle.BDiagPattern),
)


class WeeksChart(QWidget):
    """Columns of whole jobs over the weeks; the same figures stand in the workbook."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._weeks: tuple[WeekCount, ...] = ()

    def sizeHint(self) -> QSize:
        return QSize(900, 260)

    def show_weeks(self, weeks: Sequence[WeekCount]) -> None:
        """Show the counts of the weeks, oldest first."""
        self._weeks = tuple(weeks)
        last = self._weeks[-1]
        self.setAccessibleName(
            f"{len(self._weeks)} weeks to {last.week}: in the last one {last.left} handed over, "
            f"{last.comebacks} comebacks, {last.waiting} waiting"
        )
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if not self._weeks:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        most = max(max(w.left, w.comebacks, w.waiting) for w in self._weeks)
        top = most + (-most) % 4 or 4
        area = QRectF(
            _LEFT, _TOP, max(1, self.width() - _LEFT - 8), max(1, self.height() - _TOP - _BOTTOM)
        )
        self._paint_scale(painter, area, top)
        for place, week in enumerate(self._weeks):
            self._paint_week(painter, area, top, place, week)
        self._paint_legend(painter, area)
        painter.end()

    def _paint_scale(self, painter: QPainter, area: QRectF, top: int) -> None:
        palette = self.palette()
        for quarter in range(5):
            y = area.bottom() - area.height() * quarter / 4
            painter.setPen(QPen(palette.mid().color(), 1))
            painter.drawLine(int(area.left()), int(y), int(area.right()), int(y))
            painter.setPen(palette.text().color())
            box = QRectF(0, y - 10, _LEFT - 8, 20)
            side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(box, side, f"{top * quarter // 4}")

    def _paint_week(
        self, painter: QPainter, area: QRectF, top: int, place: int, week: WeekCount
    ) -> None:
        step = area.width() / len(self._weeks)
        wide = step * 0.26
        left = area.left() + step * place + step * 0.1
        colour = self.palette().text().color()
        counts = (week.left, week.comebacks, week.waiting)
        for number, (count, (_, style)) in enumerate(zip(counts, KINDS, strict=True)):
            high = area.height() * count / top
            if high:
                painter.setPen(QPen(colour, 1.4))
                painter.setBrush(QBrush(colour, style))
                painter.drawRect(QRectF(left + wide * number, area.bottom() - high, wide, high))
        if (len(self._weeks) - 1 - place) % 5 == 0:
            painter.setPen(colour)
            middle = area.left() + step * (place + 0.5)
            box = QRectF(min(middle - 45, self.width() - 92), area.bottom() + 4, 90, 20)
            painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, str(week.week))

    def _paint_legend(self, painter: QPainter, area: QRectF) -> None:
        colour, x, y = self.palette().text().color(), area.left(), area.bottom() + 30
        for words, style in KINDS:
            painter.setPen(QPen(colour, 1.4))
            painter.setBrush(QBrush(colour, style))
            painter.drawRect(QRectF(x, y + 3, 14, 14))
            wide = painter.fontMetrics().horizontalAdvance(words)
            painter.drawText(QRectF(x + 22, y, wide + 4, 20), Qt.AlignmentFlag.AlignLeft, words)
            x += wide + 52
