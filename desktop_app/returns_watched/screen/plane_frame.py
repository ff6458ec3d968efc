"""The plane's square with its scales, its two side strips, and the border of the window."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPalette, QPen

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles
from desktop_app.returns_watched.plane_path import Spot
from desktop_app.returns_watched.screen.plane_letters import USUAL, PlaneLetters, least_covering
from desktop_app.returns_watched.watching import WatchedJob

LANE = 26.0  # pixels; the strips for jobs that one of the two limits says nothing of, at least
AWAY = 18.0  # pixels from the middle of the marked mark to its name
SEEN = 1.15  # shares of the window that the square shows, so that its end is seen as an end
_RING, _RIGHT, _GAP = 20, 16, 6  # pixels; the ring of the marked mark has room above
_LINES = 9.5  # lines of words below each other, for the scale at the side to be read
_STEPS = (0.0, 1 / 3, 2 / 3, 1.0)


@dataclass(frozen=True, slots=True)
class PlaneFrame:
    """Turns shares of a window into pixels of a widget of this size, and draws what stays."""

    width: float
    height: float
    letters: PlaneLetters = USUAL

    @property
    def lane(self) -> float:
        """How wide the side strips are; a line of words stands in one."""
        return max(LANE, self.letters.line)

    @property
    def square(self) -> QRectF:
        """Where both shares are known."""
        line, aside = self.letters
        left, top, below = aside + _GAP + self.lane, line + _RING, 2 * line + 2 * _GAP + self.lane
        return QRectF(
            left,
            top,
            max(1.0, self.width - left - _RIGHT),
            max(1.0, self.height - top - below),
        )

    def point(self, spot: Spot) -> QPointF:
        """Return the pixel of a place; what is not known lies in its strip."""
        square, (days, far) = self.square, spot
        if days is None:
            x = square.left() - self.lane / 2
        else:
            x = square.left() + square.width() * min(days, SEEN) / SEEN
        if far is None:
            return QPointF(x, square.bottom() + self.lane / 2)
        return QPointF(x, square.bottom() - square.height() * min(far, SEEN) / SEEN)

    def straight(self, days: float, far: float) -> QPointF:
        """Return the pixel of a place that may lie outside, for lines that are cut off there."""
        square = self.square
        return QPointF(
            square.left() + square.width() * days / SEEN,
            square.bottom() - square.height() * far / SEEN,
        )

    def beside(
        self, at: QPointF, wide: float, high: float, others: Sequence[QPointF] = ()
    ) -> QRectF:
        """Return where a mark's name stands: beside it, and never over what is written around.

        Of the places beside it, it is the one that hides the fewest of the other marks.
        """
        right, left = at.x() + AWAY, at.x() - AWAY - wide
        sides = [x for x in (right, left) if x >= 0 and x + wide <= self.width] or [max(0.0, left)]
        highest, lowest = self.square.top() + 1, self.square.bottom() + self.lane - high
        heights = [at.y() - 26, at.y() - AWAY - high, at.y() + AWAY, at.y() - AWAY - 2 * high]
        places = [
            QRectF(x, min(max(y, highest), lowest), wide, high) for y in heights for x in sides
        ]
        return least_covering(places, others)

    def paint_ground(self, painter: QPainter, palette: QPalette) -> None:
        """Paint the square and the strips; the shared border of all windows is a thin line."""
        square = self.square
        whole = square.adjusted(-self.lane, 0, 0, self.lane)
        painter.fillRect(whole, palette.alternateBase())
        painter.fillRect(square, palette.base())
        painter.setPen(QPen(palette.mid().color(), 1, Qt.PenStyle.DotLine))
        for step in _STEPS[1:-1]:
            at = self.straight(step, step)
            painter.drawLine(QPointF(at.x(), square.top()), QPointF(at.x(), whole.bottom()))
            painter.drawLine(QPointF(whole.left(), at.y()), QPointF(square.right(), at.y()))
        painter.setPen(QPen(palette.mid().color(), 1))
        painter.drawRect(whole)
        painter.drawRect(square)
        painter.setPen(QPen(palette.text().color(), 1))
        end = self.straight(1, 1)
        painter.drawLine(QPointF(end.x(), end.y()), QPointF(end.x(), whole.bottom()))
        painter.drawLine(QPointF(whole.left(), end.y()), end)

    def paint_border(self, painter: QPainter, palette: QPalette, job: WatchedJob) -> None:
        """Paint thickly where this job's own window ends."""
        square, end = self.square, self.straight(1, 1)
        days, far = bool(job.window.days), job.counts_by_distance
        both = job.window.rule == "both" and days and far
        painter.setPen(QPen(palette.text().color(), 3))
        if days:
            foot = square.top() if both else square.bottom() + self.lane
            head = end.y() if far else square.top()
            painter.drawLine(QPointF(end.x(), head), QPointF(end.x(), foot))
        if far:
            start = square.right() if both else square.left() - self.lane
            stop = end.x() if days else square.right()
            painter.drawLine(QPointF(start, end.y()), QPointF(stop, end.y()))

    def paint_scales(
        self, painter: QPainter, palette: QPalette, job: WatchedJob | None, unit: DistanceUnit
    ) -> None:
        """Write the parts of its window along the sides, and what they are of the marked job's.

        Each mark stands by its own job's window: the scales hold for all, the marked job's days and
        distance stand behind them where it has such a limit.
        """
        square = self.square
        painter.setPen(palette.text().color())
        centre, right = Qt.AlignmentFlag.AlignHCenter, Qt.AlignmentFlag.AlignRight
        middle, left = Qt.AlignmentFlag.AlignVCenter, Qt.AlignmentFlag.AlignLeft
        metrics, (line, aside) = painter.fontMetrics(), self.letters
        below, widest = square.bottom() + self.lane + 2, float(metrics.horizontalAdvance("100%"))
        for step in _STEPS:
            at = self.straight(step, step)
            part = figure(step, ".0%")
            if step in (0.0, 1.0) or square.width() / 3 / SEEN > widest + _GAP:
                along_it = QRectF(at.x() - widest / 2, below, widest, line)
                painter.drawText(along_it, centre | middle, part)
            high = at.y() - line / 2 if step else at.y() - line  # what stands below has its line
            painter.drawText(QRectF(0, high, aside, line), right | middle, part)
        up, along = (
            next((one for one in ways if metrics.horizontalAdvance(one) < self.width - 8), ways[-1])
            for ways in scale_words(job, unit)
        )
        painter.drawText(QRectF(6, 2, self.width, line), left | middle, up)
        under = QRectF(0, below + line + 2, self.width - 4, line)
        painter.drawText(under, right | middle, along)
        by_time = QRectF(0, square.bottom(), aside, self.lane)
        painter.drawText(by_time, right | middle, tr("by time"))


def least_height(letters: PlaneLetters) -> int:
    """Return the least height in which no words of the scale at the side touch each other."""
    return round(_LINES * letters.line + 3 * _RING)


def scale_words(
    job: WatchedJob | None, unit: DistanceUnit
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return what the upright and the level scale say, with the marked job's own limits.

    Each is said in several ways, the longest first: the first that has room is written.
    """
    words = "km" if unit == "km" else tr("miles")
    far = days = ""
    if job is not None and job.counts_by_distance:
        far = f" ({job.job}: {figure(from_miles(job.window.miles, unit), ',.0f')} {words})"
    if job is not None and job.window.days:
        days = tr(" ({job}: {days:,} days)", job=job.job, days=job.window.days)
    return _ways(tr("{units} driven", units=words), far), _ways(tr("days gone"), days)


def _ways(said: str, own: str) -> tuple[str, ...]:
    return tr("{scale}, of its window{limit}", scale=said, limit=own), f"{said}{own}", said
