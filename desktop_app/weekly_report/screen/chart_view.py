"""A chart of a table on the screen: it can be hovered, pressed for the jobs behind, copied."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QGuiApplication,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.texts import tooltip
from desktop_app.weekly_report.chart_scale import round_ticks, tick_words
from desktop_app.weekly_report.screen.sheet_rows import as_read
from desktop_app.weekly_report.sheet_form import Chart, Table

_LEFT, _RIGHT, _TOP, _BOTTOM = 64, 16, 14, 66
_HIGH = 300
_HEAD = 48  # of a copied picture: its title and whose figures these are
_COLOUR = QColor("#0072B2")  # of the Okabe-Ito palette


class ChartView(QWidget):
    """Paints one chart; `pressed` says the row of the table that was pressed."""

    keys_said = ((tr("Arrows"), tr("walk along a chart; Enter shows the jobs there")),)

    pressed = Signal(int)

    def __init__(self, chart: Chart, table: Table, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chart, self._table = chart, table
        self._names = [str(cell) for cell in table.column(chart.over)]
        self._values = {header: table.column(header) for header in chart.headers}
        self._at: int | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        last = self.words_of(len(self._names) - 1) if self._names else tr("nothing")
        self.setAccessibleName(tr("{title}. Last: {last}", title=chart.title, last=last))
        self.setAccessibleDescription(
            tr("Left and Right walk along it; Return opens the jobs behind.")
        )
        self._ticks = round_ticks(self._numbers())

    def table_name(self) -> str:
        """Return the name of the table that is drawn."""
        return self._table.name

    def copy_picture(self, about: str) -> None:
        """Put the picture on the clipboard."""
        QGuiApplication.clipboard().setPixmap(self.picture(about))

    def picture(self, about: str) -> QPixmap:
        """Return the chart with its title and a line that says whose figures these are, and when.

        A picture is carried away from its sheet, and would else say neither.
        """
        chart = self.grab()
        ratio = chart.devicePixelRatio()
        whole = QPixmap(chart.width(), chart.height() + round(_HEAD * ratio))
        whole.setDevicePixelRatio(ratio)
        whole.fill(self.palette().window().color())
        painter = QPainter(whole)
        painter.drawPixmap(QPointF(0, _HEAD), chart)
        painter.setPen(self.palette().text().color())
        wide = self.width() - 16
        painter.drawText(
            QRectF(8, 26, wide, 20),
            painter.fontMetrics().elidedText(about, Qt.TextElideMode.ElideRight, wide),
        )
        bold = painter.font()
        bold.setBold(True)
        painter.setFont(bold)
        painter.drawText(QRectF(8, 6, wide, 20), self._chart.title)
        painter.end()
        return whole

    def sizeHint(self) -> QSize:
        bars = len(self._names) if self._chart.style == "bars" else 0
        return QSize(860, max(_HIGH, bars * 30 + _TOP + _BOTTOM))

    def words_of(self, row: int) -> str:
        """Return what one place of the chart says."""
        kinds = {column.header: column.kind for column in self._table.columns}
        said = [
            f"{header} {as_read(cells[row], kinds[header], self._chart.currency)}"
            for header, cells in self._values.items()
            if cells[row] is not None
        ]
        nothing = tr("nothing known")
        return f"{self._chart.over} {self._names[row]}: {', '.join(said) or nothing}"

    def row_at(self, point: QPointF) -> int | None:
        """Return the row of the table under a point; None beside the chart."""
        area = self._area()
        if not self._names or not area.contains(point):
            return None
        if self._chart.style == "bars":
            part = (point.y() - area.top()) / area.height()
            return min(int(part * len(self._names)), len(self._names) - 1)
        part = (point.x() - area.left()) / area.width()
        if self._chart.style == "steps":
            return self._nearest(part * self._far())
        return min(int(part * len(self._names)), len(self._names) - 1)

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            row = self.row_at(QPointF(event.pos()))
            if row is None:
                QToolTip.hideText()
            else:
                QToolTip.showText(event.globalPos(), tooltip(self.words_of(row)), self)
            return True
        return super().event(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._go_to(self.row_at(event.position()))

    def leaveEvent(self, event: QEvent) -> None:
        if not self.hasFocus():
            self._go_to(None)
        super().leaveEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        row = self.row_at(event.position())
        if row is not None:
            self._go_to(row)
            self.pressed.emit(row)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        last = len(self._names) - 1
        if event.key() in steps and last >= 0:
            now = last if self._at is None else self._at + steps[Qt.Key(event.key())]
            self._go_to(max(0, min(last, now)))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._at is not None:
            self.pressed.emit(self._at)
        else:
            super().keyPressEvent(event)

    def _go_to(self, row: int | None) -> None:
        if row != self._at:
            self._at = row
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = self._area()
        self._paint_scale(painter, area)
        if self._chart.style == "bars":
            self._paint_bars(painter, area)
        else:
            for header in self._chart.headers:
                self._paint_line(painter, area, header)
        self._paint_words(painter, area)
        painter.end()

    def _area(self) -> QRectF:
        left, right = _LEFT, _RIGHT
        if self._chart.style == "bars":  # room for the names, and for the last figure beneath
            metrics = self.fontMetrics()
            longest = max(map(metrics.horizontalAdvance, self._names), default=0)
            left = min(longest + 24, self.width() // 2)
            right = max(
                _RIGHT, metrics.horizontalAdvance(self._tick_words(self._ticks[-1])) // 2 + 4
            )
        wide, high = self.width() - left - right, self.height() - _TOP - _BOTTOM
        return QRectF(left, _TOP, max(1, wide), max(1, high))

    def _tick_words(self, tick: float) -> str:
        return self._chart.currency + tick_words(tick, share=self._chart.share)

    def _numbers(self) -> list[float]:
        cells = (cell for column in self._values.values() for cell in column)
        return [float(cell) for cell in cells if isinstance(cell, (int, float))]

    def _far(self) -> float:
        return max((float(name) for name in self._names), default=1.0) or 1.0

    def _nearest(self, wanted: float) -> int:
        return min(range(len(self._names)), key=lambda i: abs(float(self._names[i]) - wanted))

    def _x(self, area: QRectF, row: int) -> float:
        if self._chart.style == "steps":
            return area.left() + area.width() * float(self._names[row]) / self._far()
        return area.left() + area.width() * (row + 0.5) / len(self._names)

    def _y(self, area: QRectF, value: float) -> float:
        return area.bottom() - area.height() * max(value, 0.0) / self._ticks[-1]

    def _paint_scale(self, painter: QPainter, area: QRectF) -> None:
        grid, text = self.palette().mid().color(), self.palette().text().color()
        for tick in self._ticks:
            painter.setPen(QPen(grid, 1))
            words = self._tick_words(tick)
            if self._chart.style == "bars":
                x = area.left() + area.width() * tick / self._ticks[-1]
                painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()))
                box = QRectF(x - 40, area.bottom() + 4, 80, 18)
                painter.setPen(text)
                painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, words)
                continue
            y = self._y(area, tick)
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
            painter.setPen(text)
            box = QRectF(0, y - 10, area.left() - 8, 20)
            side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(box, side, words)

    def _paint_bars(self, painter: QPainter, area: QRectF) -> None:
        step = area.height() / max(1, len(self._names))
        text = self.palette().text().color()
        [header] = self._chart.headers
        for row, name in enumerate(self._names):
            value = self._values[header][row]
            wide = area.width() * max(0.0, float(value or 0)) / self._ticks[-1]  # type: ignore[arg-type]
            top = area.top() + step * row
            painter.setPen(QPen(text if row == self._at else _COLOUR, 2))
            painter.setBrush(QBrush(_COLOUR, Qt.BrushStyle.BDiagPattern))
            painter.drawRect(QRectF(area.left(), top + step * 0.2, wide, step * 0.6))
            painter.setPen(text)
            box = QRectF(4, top, area.left() - 12, step)
            side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            shown = painter.fontMetrics().elidedText(
                name, Qt.TextElideMode.ElideRight, int(box.width())
            )
            painter.drawText(box, side, shown)

    def _paint_line(self, painter: QPainter, area: QRectF, header: str) -> None:
        limit = header in self._chart.limits
        colour = self.palette().text().color() if limit else _COLOUR
        style = Qt.PenStyle.DashLine if limit else Qt.PenStyle.SolidLine
        pen = QPen(colour, 1.2 if limit else 2.2, style)
        runs: list[QPolygonF] = [QPolygonF()]
        before: QPointF | None = None
        for row, cell in enumerate(self._values[header]):
            if not isinstance(cell, (int, float)):
                runs.append(QPolygonF())
                before = None
                continue
            point = QPointF(self._x(area, row), self._y(area, cell))
            if self._chart.style == "steps" and before is not None:
                runs[-1].append(QPointF(point.x(), before.y()))
            runs[-1].append(point)
            before = point
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for run in runs:
            painter.drawPolyline(run)
        if limit or self._chart.style == "steps":
            return
        painter.setBrush(QBrush(colour))
        for run in runs:
            for place in range(run.size()):
                painter.drawEllipse(run.at(place), 3.0, 3.0)

    def _paint_words(self, painter: QPainter, area: QRectF) -> None:
        text = self.palette().text().color()
        painter.setPen(text)
        if self._chart.style != "bars":
            self._paint_names(painter, area)
        if self._at is not None and self._chart.style != "bars":
            x = self._x(area, self._at)
            painter.setPen(QPen(text, 1, Qt.PenStyle.DotLine))
            painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()))
        painter.setPen(text)
        said = self._legend() if self._at is None else self.words_of(self._at)
        foot = QRectF(8, self.height() - 22, self.width() - 16, 20)
        shown = painter.fontMetrics().elidedText(
            said, Qt.TextElideMode.ElideRight, int(foot.width())
        )
        painter.drawText(foot, Qt.AlignmentFlag.AlignHCenter, shown)

    def _paint_names(self, painter: QPainter, area: QRectF) -> None:
        wide = painter.fontMetrics().horizontalAdvance(max(self._names, key=len, default="")) + 18
        room = max(1, int(area.width() / wide))
        every = max(1, -(-len(self._names) // room))
        for row in range(len(self._names) - 1, -1, -every):
            middle = self._x(area, row)
            left = min(max(middle - wide / 2, 0), self.width() - wide)
            box = QRectF(left, area.bottom() + 4, wide, 18)
            painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, self._names[row])

    def _legend(self) -> str:
        chart = self._chart
        plain = [header for header in chart.headers if header not in chart.limits]
        if chart.style == "bars":
            return chart.upwards
        said = f"— {', '.join(plain)}"
        if chart.limits:
            said += f"     - - {', '.join(chart.limits)}"
        return tr("{lines}     across: {across}", lines=said, across=chart.across)
