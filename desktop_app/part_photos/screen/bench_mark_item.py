"""A mark drawn over its photo: lines of one width on the screen, at every enlargement."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetrics,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
    QTransform,
)
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from desktop_app.part_photos.mark_lines import MarkLines, mark_lines
from desktop_app.part_photos.marks.mark import Mark, Pixel
from desktop_app.shop_window import look

INK, HALO = QColor("#14181C"), QColor(255, 255, 255, 225)
TICK = 7.0  # screen pixels to each side
HANDLE = 5.0
_HEAD = 14.0
_AROUND = 24.0  # screen pixels around a mark for its ticks, heads and handles
_LONGEST = 380  # screen pixels; longer words are cut


@dataclass(frozen=True, slots=True)
class MarkShown:
    """A mark as the stage shows it now; `point` is the one that the keys move."""

    mark: Mark
    label: str = ""
    clicks: tuple[Pixel, ...] = ()
    chosen: bool = False
    point: int | None = None
    draft: bool = False


class MarkItem(QGraphicsItem):
    """Its coordinates are pixels of the photo, pixel centres at whole numbers."""

    def __init__(self) -> None:
        super().__init__()
        self.setPos(0.5, 0.5)  # the scene's first pixel covers 0 to 1
        self._scale = 1.0
        self.shown = MarkShown(Mark("note", ()))
        self.lines = MarkLines((), (), (), (0.0, 0.0))

    def show_mark(self, shown: MarkShown, lines: MarkLines | None = None) -> None:
        """Draw this; `lines` are worked out from the mark where they are not given."""
        self.prepareGeometryChange()
        self.shown = shown
        self.lines = lines if lines is not None else mark_lines(shown.mark)
        self.setZValue(2 if shown.chosen or shown.draft else 1)
        self.update()

    def fit_to(self, scale: float) -> None:
        """Say how many screen pixels one pixel of the photo takes."""
        if scale != self._scale:
            self.prepareGeometryChange()
            self._scale = scale

    def boundingRect(self) -> QRectF:
        every = [*self.shown.mark.points_px, *self.shown.clicks, self.lines.label_at]
        for line in (*self.lines.lines, *self.lines.sizes, *self.lines.arrows):
            every.extend(line)
        box = QPolygonF([QPointF(*point) for point in every]).boundingRect()
        room = _AROUND / max(self._scale, 1e-6)
        return box.adjusted(-room, -room, room, room)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        to_screen = painter.worldTransform()
        painter.save()
        painter.resetTransform()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        path = self._path(to_screen)
        style = Qt.PenStyle.DashLine if self.shown.draft else Qt.PenStyle.SolidLine
        halo = look.REMOVED if self.shown.chosen else HALO
        painter.strokePath(path, QPen(halo, 6.0 if self.shown.chosen else 4.5))
        painter.strokePath(path, QPen(INK, 1.6, style))
        self._draw_points(painter, to_screen)
        painter.restore()

    def _path(self, to_screen: QTransform) -> QPainterPath:
        path = QPainterPath()
        for line in (*self.lines.lines, *self.lines.sizes, *self.lines.arrows):
            path.addPolygon(QPolygonF([to_screen.map(QPointF(*point)) for point in line]))
        for one, other in self.lines.sizes:
            _add_ticks(path, to_screen.map(QPointF(*one)), to_screen.map(QPointF(*other)))
        for start, tip in self.lines.arrows:
            _add_head(path, to_screen.map(QPointF(*start)), to_screen.map(QPointF(*tip)))
        return path

    def _draw_points(self, painter: QPainter, to_screen: QTransform) -> None:
        shown = self.shown
        for click in shown.clicks:
            draw_cross(painter, to_screen.map(QPointF(*click)), 6, QColor(20, 24, 28, 130))
        snapped = shown.mark.snapped or (False,) * len(shown.mark.points_px)
        for number, point in enumerate(shown.mark.points_px):
            at = to_screen.map(QPointF(*point))
            on_edge = number < len(snapped) and snapped[number]
            if number == shown.point:
                _draw_handle(
                    painter, at, HANDLE + 3, INK if on_edge else Qt.GlobalColor.transparent
                )
                draw_cross(painter, at, HANDLE + 3, INK)
            elif shown.chosen or shown.draft:
                _draw_handle(painter, at, HANDLE, INK if on_edge else Qt.GlobalColor.transparent)
            elif on_edge:
                _draw_handle(painter, at, 2.5, INK)


def words_size(painter: QPainter, words: str) -> tuple[float, float]:
    """Return the width and height that words take in their box."""
    size = QFontMetrics(_small(painter)).size(0, words)
    return min(size.width(), _LONGEST) + 12.0, size.height() + 4.0


def label_box(painter: QPainter, at: QPointF, words: str, stage: int | None = None) -> QRectF:
    """Return the room that words take beside a point of the screen; `stage` is how wide that is."""
    width, high = words_size(painter, words)
    box = QRectF(at.x() + 12, at.y() - 10 - high, width, high)
    edge = (stage or painter.viewport().width()) - 4.0
    if box.right() > edge:
        box.moveRight(edge)
    if box.left() < 4:
        box.moveLeft(4)
    if box.top() < 0:
        box.moveTop(at.y() + 14)
    return box


def draw_words(painter: QPainter, box: QRectF, words: str) -> None:
    """Write words into a room of the screen."""
    painter.save()
    painter.setFont(_small(painter))
    painter.setPen(QPen(INK, 0.8))
    painter.setBrush(QColor(255, 255, 255, 232))
    painter.drawRoundedRect(box, 3, 3)
    painter.setPen(INK)
    room = int(box.width()) - 10
    way = Qt.TextElideMode.ElideLeft  # the value stands last
    shown = painter.fontMetrics().elidedText(words, way, room)
    painter.drawText(box.adjusted(6, 0, -4, 0), Qt.AlignmentFlag.AlignVCenter, shown)
    painter.restore()


def _small(painter: QPainter) -> QFont:
    font = QFont(painter.font())
    font.setPointSizeF(max(9.0, font.pointSizeF() * 0.9))
    return font


def draw_cross(
    painter: QPainter, at: QPointF, reach: float, colour: QColor, gap: float = 0.0
) -> None:
    """Draw an upright cross, dark with a light halo, open in its middle by `gap`."""
    for pen in (QPen(HALO, 3.5), QPen(colour, 1.2)):
        painter.setPen(pen)
        for x, y in ((1, 0), (-1, 0), (0, 1), (0, -1)):
            way = QPointF(x, y)
            painter.drawLine(at + way * gap, at + way * reach)


def _draw_handle(
    painter: QPainter, at: QPointF, reach: float, fill: QColor | Qt.GlobalColor
) -> None:
    box = QRectF(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(HALO, 4))
    painter.drawRect(box)
    painter.setBrush(fill)
    painter.setPen(QPen(INK, 1.4))
    painter.drawRect(box)


def _add_ticks(path: QPainterPath, one: QPointF, other: QPointF) -> None:
    along = other - one
    length = math.hypot(along.x(), along.y()) or 1.0
    across = QPointF(-along.y() / length * TICK, along.x() / length * TICK)
    for end in (one, other):
        path.moveTo(end - across)
        path.lineTo(end + across)


def _add_head(path: QPainterPath, start: QPointF, tip: QPointF) -> None:
    along = tip - start
    turn = math.atan2(along.y(), along.x())
    for side in (-0.45, 0.45):
        path.moveTo(tip)
        back = QPointF(math.cos(turn + side), math.sin(turn + side)) * _HEAD
        path.lineTo(tip - back)
