"""The watch as a plane: days to the right, distance upwards, each job a mark inside its window."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.plane_path import PlanePath
from desktop_app.returns_watched.screen.plane_frame import PlaneFrame, least_height
from desktop_app.returns_watched.screen.plane_letters import letters_of
from desktop_app.returns_watched.watch_words import ends_in_words, state_of
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_window.texts import tooltip

NEAR = 24  # pixels; a gloved finger's reach around a mark
CROWD, THRONG = 60, 400  # jobs; of more, the ways ahead, and then all ways, would hide the marks


class WatchPlane(QWidget):
    """Draws each job at the shares of days and distance that its window has used by today.

    Every job's own window is the same square, so that all can be compared; the scales are parts of
    that window, and name the limits of the job that is looked at. A line runs from the last reading
    to where the job is expected today and on to where its distance ends, two thin ones hold that
    with 95 %. Arrow keys walk, Enter or a click opens.
    """

    keys_said = (
        (tr("Arrows, Home, End"), tr("walk from job to job in the plane; Enter opens it")),
    )

    walked = Signal(int)  # place in the list of jobs
    chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._jobs: tuple[WatchedJob, ...] = ()
        self._paths: tuple[PlanePath, ...] = ()
        self._spots: list[QPointF] = []
        self._ground: QPixmap | None = None
        self._at = -1
        self._unit: DistanceUnit = "mi"
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(tr("The watch as a plane of days and distance"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        return QSize(500, 500)

    def minimumSizeHint(self) -> QSize:
        return QSize(300, max(230, least_height(letters_of(self.fontMetrics()))))

    def show_jobs(
        self, jobs: Sequence[WatchedJob], paths: Sequence[PlanePath], unit: DistanceUnit
    ) -> None:
        """Show other jobs and their ways, in the order in which the arrow keys walk."""
        self._jobs, self._paths, self._unit = tuple(jobs), tuple(paths), unit
        self._at = min(self._at, len(self._jobs) - 1)
        self._lay_anew()

    def look_at(self, place: int) -> None:
        """Mark one job without saying so; -1 marks none."""
        self._at = place if 0 <= place < len(self._jobs) else -1
        if self._at >= 0:
            job = self._jobs[self._at]
            said = tr(
                "{job}, {vehicle}, {state}, ends {when}",
                job=job.job,
                vehicle=job.vehicle,
                state=tr(state_of(job)),
                when=ends_in_words(job.ends),
            )
            self.setAccessibleDescription(said)
        self.update()

    def where(self, place: int) -> QPointF:
        """Return where a job's mark is, in the widget's pixels."""
        return self._spots[place]

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
        self.setToolTip(tooltip(self.accessibleDescription()) if place >= 0 else "")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        place = self._nearest(event.position())
        if place >= 0:
            self._walk(place)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._at >= 0 and self._nearest(event.position()) == self._at:
            self.chosen.emit(self._at)

    def resizeEvent(self, _event: QResizeEvent) -> None:
        self._lay_anew()

    def changeEvent(self, event: QEvent) -> None:
        self._lay_anew()
        super().changeEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._ground is None:
            self._ground = self._painted_ground()
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._ground)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        job = self._jobs[self._at] if self._at >= 0 else None
        frame = self._frame()
        frame.paint_scales(painter, self.palette(), job, self._unit)
        if job is not None:
            frame.paint_border(painter, self.palette(), job)
            self._paint_marked(painter)
        painter.end()

    def _frame(self) -> PlaneFrame:
        return PlaneFrame(self.width(), self.height(), letters_of(self.fontMetrics()))

    def _lay_anew(self) -> None:
        frame = self._frame()
        self._spots = [frame.point(path.spot) for path in self._paths]
        self._ground = None
        self.update()

    def _walk(self, place: int) -> None:
        self.look_at(place)
        self.walked.emit(place)

    def _nearest(self, point: QPointF) -> int:
        x, y = point.x(), point.y()
        far = [(spot.x() - x) ** 2 + (spot.y() - y) ** 2 for spot in self._spots]
        place = min(range(len(far)), key=far.__getitem__, default=-1)
        return place if place >= 0 and far[place] <= NEAR * NEAR else -1

    def _painted_ground(self) -> QPixmap:
        """Paint once all that stays while another job is looked at."""
        ratio = self.devicePixelRatioF()
        ground = QPixmap(self.size() * ratio)
        ground.setDevicePixelRatio(ratio)
        ground.fill(Qt.GlobalColor.transparent)
        painter = QPainter(ground)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._frame().paint_ground(painter, self.palette())
        crowd, palette = len(self._jobs) > CROWD, self.palette()
        painter.setPen(QPen(palette.mid().color(), 1))
        for path in self._paths if len(self._jobs) <= THRONG else ():
            self._paint_way(painter, path, ahead=not crowd)
        size = 3 if crowd else 5
        painter.setPen(QPen(palette.text().color(), 1 if crowd else 2))
        for job, spot in zip(self._jobs, self._spots, strict=True):
            painter.setBrush(palette.base() if job.waits or job.came_back else palette.text())
            paint_mark(painter, spot, size, state_of(job))
        painter.end()
        return ground

    def _paint_way(self, painter: QPainter, path: PlanePath, *, ahead: bool) -> None:
        days, share = path.ahead[0] if ahead and path.ahead is not None else path.spot
        if path.read is None or days is None or share is None:
            return
        frame = self._frame()
        painter.save()
        painter.setClipRect(frame.square)
        painter.drawLine(frame.straight(*path.read), frame.straight(days, share))
        painter.restore()

    def _paint_marked(self, painter: QPainter) -> None:
        path, at, palette = self._paths[self._at], self._spots[self._at], self.palette()
        job, frame = self._jobs[self._at], self._frame()
        colour = palette.highlight().color()
        painter.setPen(QPen(colour, 2))
        self._paint_way(painter, path, ahead=True)
        if path.ahead is not None and path.read is not None:
            painter.save()
            painter.setClipRect(frame.square)
            painter.setPen(QPen(colour, 1, Qt.PenStyle.DashLine))
            for edge in path.ahead[1:]:
                painter.drawLine(frame.straight(*path.read), frame.straight(*edge))
            painter.restore()
        painter.setPen(QPen(colour, 2))
        painter.setBrush(palette.base() if job.waits or job.came_back else colour)
        paint_mark(painter, at, 8, state_of(job))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(at, 14, 14)
        self._name_it(painter, at, job.job)

    def _name_it(self, painter: QPainter, at: QPointF, name: str) -> None:
        metrics = painter.fontMetrics()
        others = [spot for place, spot in enumerate(self._spots) if place != self._at]
        wide, high = metrics.horizontalAdvance(name) + 8, metrics.height() + 2
        box = self._frame().beside(at, wide, high, others)
        painter.setPen(self.palette().text().color())
        painter.fillRect(box, self.palette().base())
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, name)


def paint_mark(painter: QPainter, at: QPointF, size: float, state: str) -> None:
    """Paint the mark of a state: a dot where it is quiet, else a diamond or a square."""
    if state == "to be judged":
        ways = ((0, -1), (1, 0), (0, 1), (-1, 0))
        painter.drawPolygon(QPolygonF([at + QPointF(x, y) * (size + 2) for x, y in ways]))
    elif state == "came back":
        painter.drawRect(QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size))
    else:
        painter.drawEllipse(at, size, size)
