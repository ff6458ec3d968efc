"""The watch as a plane: days to the right, distance upwards, each job a mark inside its window."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.returns_watched.watch_words import state_of
from desktop_app.returns_watched.watching import WatchedJob

NEAR = 24  # pixels; a gloved finger's reach around a mark
_LEFT, _TOP, _RIGHT, _BOTTOM = 78, 30, 18, 92  # room for the words around the square
_LANE = 26  # height of the strip for jobs whose distance nobody knows
_STEPS = (0.0, 1 / 3, 2 / 3, 1.0)


class WatchPlane(QWidget):
    """Draws each job at the shares of days and distance that its window has used.

    Every job's own window is the same square, so that all can be compared; the scales name the
    shop's window. A line runs from the day of the last reading to today. Arrow keys walk.
    """

    walked = Signal(int)  # place in the list of jobs
    chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName("The watch as a plane of days and distance")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(360, 340)
        self._jobs: tuple[WatchedJob, ...] = ()
        self._at = -1
        self._days: tuple[str, ...] = ("",) * len(_STEPS)
        self._far: tuple[str, ...] = ("",) * len(_STEPS)
        self._unit = ""

    def sizeHint(self) -> QSize:
        return QSize(500, 500)

    def show_jobs(self, jobs: Sequence[WatchedJob]) -> None:
        """Show other jobs, in the order in which the arrow keys walk."""
        self._jobs = tuple(jobs)
        self._at = min(self._at, len(self._jobs) - 1)
        self.update()

    def show_scales(self, days: int, far: float, unit: str) -> None:
        """Name the scales by the shop's window: so many days and so far in the unit's word."""
        self._days = tuple(f"{days * step:.0f}" for step in _STEPS)
        self._far = tuple(f"{far * step:,.0f}" for step in _STEPS)
        self._unit = unit
        self.update()

    def look_at(self, place: int) -> None:
        """Mark one job without saying so; -1 marks none."""
        self._at = place if 0 <= place < len(self._jobs) else -1
        if self._at >= 0:
            job = self._jobs[self._at]
            self.setAccessibleDescription(f"{job.job}, {job.vehicle}, {state_of(job)}")
        self.update()

    def where(self, place: int) -> QPointF:
        """Return where a job's mark is, in the widget's pixels."""
        job = self._jobs[place]
        square = self._square()
        x = square.left() + square.width() * job.share_of_days(job.days_gone)
        if job.miles_gone is None:
            return QPointF(x, square.bottom() + _LANE / 2 + 4)
        share = job.share_of_miles(job.miles_gone)
        return QPointF(x, square.bottom() - square.height() * share)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        last = len(self._jobs) - 1
        steps = {
            Qt.Key.Key_Right: min(self._at + 1, last),
            Qt.Key.Key_Down: min(self._at + 1, last),
            Qt.Key.Key_Left: max(self._at - 1, 0),
            Qt.Key.Key_Up: max(self._at - 1, 0),
            Qt.Key.Key_Home: 0,
            Qt.Key.Key_End: last,
        }
        key = Qt.Key(event.key())
        if key in steps and last >= 0:
            self._walk(steps[key])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._at >= 0:
            self.chosen.emit(self._at)
        else:
            super().keyPressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        place = self._nearest(event.position())
        if place >= 0 and place != self._at:
            self._walk(place)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        place = self._nearest(event.position())
        if place >= 0:
            self._walk(place)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        place = self._nearest(event.position())
        if place >= 0:
            self.chosen.emit(place)

    def changeEvent(self, event: QEvent) -> None:
        self.update()
        super().changeEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_square(painter)
        for place in range(len(self._jobs)):
            if place != self._at:
                self._paint_job(painter, place)
        if self._at >= 0:
            self._paint_job(painter, self._at)
        painter.end()

    def _walk(self, place: int) -> None:
        self.look_at(place)
        self.walked.emit(place)

    def _nearest(self, point: QPointF) -> int:
        def far(place: int) -> float:
            way = self.where(place) - point
            return float(QPointF.dotProduct(way, way))

        place = min(range(len(self._jobs)), key=far, default=-1)
        return place if place >= 0 and far(place) <= NEAR * NEAR else -1

    def _square(self) -> QRectF:
        return QRectF(
            _LEFT,
            _TOP,
            max(1, self.width() - _LEFT - _RIGHT),
            max(1, self.height() - _TOP - _BOTTOM),
        )

    def _paint_square(self, painter: QPainter) -> None:
        square, palette = self._square(), self.palette()
        painter.fillRect(square, palette.base())
        painter.setPen(QPen(palette.mid().color(), 1, Qt.PenStyle.DotLine))
        for step in _STEPS[1:-1]:
            x, y = square.left() + square.width() * step, square.bottom() - square.height() * step
            painter.drawLine(QPointF(x, square.top()), QPointF(x, square.bottom() + _LANE))
            painter.drawLine(QPointF(square.left(), y), QPointF(square.right(), y))
        painter.setPen(QPen(palette.text().color(), 2))
        painter.drawRect(square)
        self._paint_scales(painter, square)

    def _paint_scales(self, painter: QPainter, square: QRectF) -> None:
        painter.setPen(self.palette().text().color())
        centre, right = Qt.AlignmentFlag.AlignHCenter, Qt.AlignmentFlag.AlignRight
        middle = Qt.AlignmentFlag.AlignVCenter
        below = square.bottom() + _LANE + 4
        for step, days, far in zip(_STEPS, self._days, self._far, strict=True):
            x, y = square.left() + square.width() * step, square.bottom() - square.height() * step
            painter.drawText(QRectF(x - 40, below, 80, 20), centre, days)
            painter.drawText(QRectF(0, y - 10, _LEFT - 8, 20), right | middle, far)
        left = Qt.AlignmentFlag.AlignLeft
        painter.drawText(
            QRectF(8, 2, self.width(), 24), left | middle, f"{self._unit} by the last reading"
        )
        painter.drawText(
            QRectF(square.left(), below + 22, square.width(), 24),
            centre | middle,
            "days since hand-over",
        )
        painter.drawText(
            QRectF(0, square.bottom() + 4, _LEFT - 8, _LANE - 4), right | middle, "not read"
        )

    def _paint_job(self, painter: QPainter, place: int) -> None:
        job, at, palette = self._jobs[place], self.where(place), self.palette()
        marked = place == self._at
        colour = palette.highlight().color() if marked else palette.text().color()
        painter.setPen(QPen(colour, 2 if marked else 1))
        if job.miles_gone is not None and job.read_on is not None:
            square = self._square()
            share = job.share_of_days((job.read_on - job.left_on).days)
            from_x = square.left() + square.width() * share
            painter.drawLine(QPointF(from_x, at.y()), at)
        painter.setPen(QPen(colour, 2))
        painter.setBrush(palette.base() if job.waits or job.came_back else colour)
        size = 8 if marked else 5
        paint_mark(painter, at, size, state_of(job))
        if marked:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(at, size + 6, size + 6)
            on_left = at.x() > self.width() - 110
            box = QRectF(at.x() - 104 if on_left else at.x() + 18, at.y() - 24, 86, 20)
            side = Qt.AlignmentFlag.AlignRight if on_left else Qt.AlignmentFlag.AlignLeft
            painter.drawText(box, side | Qt.AlignmentFlag.AlignVCenter, job.job)


def paint_mark(painter: QPainter, at: QPointF, size: float, state: str) -> None:
    """Paint the mark of a state: a dot where it is quiet, else a diamond or a square."""
    if state == "to be judged":
        ways = ((0, -1), (1, 0), (0, 1), (-1, 0))
        painter.drawPolygon(QPolygonF([at + QPointF(x, y) * (size + 2) for x, y in ways]))
    elif state == "came back":
        painter.drawRect(QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size))
    else:
        painter.drawEllipse(at, size, size)
