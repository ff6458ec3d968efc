"""The old photo with the new one over it, warped as it is drawn: nothing is kept of that."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
    QPolygonF,
    QTransform,
)
from PySide6.QtWidgets import QGraphicsView

from desktop_app.language import tr
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.overlay.difference import Difference
from desktop_app.part_photos.overlay.stretches import stretches
from desktop_app.part_photos.screen.bench_mark_item import HALO, INK, draw_words, label_box
from desktop_app.part_photos.screen.bench_overlay_legend import COLOURS, OverlayMode, draw_sign
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.shop_window.desk import Desk

MOST_SAID = 4  # differences with words; the others are smaller, and only drawn
Matrix = Sequence[Sequence[float]]
_GRASP = 12.0  # screen pixels beside the wipe's line
_FILLS = 0.55  # of the stage, the part when it is looked at
_SIGNS_APART = 110.0  # screen pixels along an outline


class OverlayStage(PhotoStage):
    """Zooms and moves as every stage; what lies over it follows."""

    keys_said = (
        (tr("Space"), tr("turns from the old part to the new one")),
        (tr("Left, Right"), tr("move the wipe; with Shift by little")),
    )

    share_moved = Signal(float)  # the wipe's line or the blend was moved here, 0 to 1
    turned = Signal()  # Space: the other photo, please

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, tr("Both photos"), tr("No photo of the removed part here yet"))
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
        self._mode: OverlayMode = "wipe"
        self._share = 0.5
        self._new_on_top = True
        self._over: list[QImage] = []
        self._size = (1, 1)
        self._warp: QTransform | None = None
        self._differences: tuple[Difference, ...] = ()
        self._length_unit = "mm"
        self._outlines: tuple[QPolygonF, QPolygonF] | None = None
        self._dotted: tuple[Sequence[bool], Sequence[bool]] = ((), ())
        self._clicked = QPolygonF()
        self._grasped = False

    def lay_over(self, copies: list[QImage], size: tuple[int, int], transform: Matrix) -> None:
        """Lay the new photo over: its copies, its full size, and new pixels to old pixels."""
        self._over, self._size = copies, size
        to_old = QTransform(
            *(float(transform[row][column]) for column in range(3) for row in range(3))
        )
        half = QTransform.fromTranslate(0.5, 0.5)  # pixel centres are whole numbers in the 3 x 3
        self._warp = QTransform.fromTranslate(-0.5, -0.5) * to_old * half
        self.viewport().update()

    def take_off(self) -> None:
        """Show the old photo alone."""
        self._warp = None
        self.show_differences((), None)

    def is_laid(self) -> bool:
        """Tell whether the new photo lies over the old one."""
        return self._warp is not None

    def show_differences(
        self,
        found: tuple[Difference, ...],
        outlines: tuple[Sequence[Pixel], Sequence[Pixel]] | None,
        length_unit: str = "mm",
        dotted: tuple[Sequence[bool], Sequence[bool]] | None = None,
    ) -> None:
        """Draw where the parts differ, and both outlines, in the old photo's pixels.

        `dotted` tells for each point of both whether the outline is only dotted there.
        """
        self._differences = found
        self._length_unit = length_unit
        self._outlines = None
        self._dotted = dotted or ((), ())
        if outlines is not None:
            self._outlines = (_polygon(outlines[0]), _polygon(outlines[1]))
        self.viewport().update()

    def show_clicked(self, points: Iterable[Pixel]) -> None:
        """Say where the common points lie: around them is the part where no outline is known."""
        self._clicked = _polygon(list(points))

    def look_at_part(self) -> None:
        """Enlarge to the part with room around it, unless somebody enlarged something already."""
        box = self._part()
        if not box.isEmpty():
            self.open_on(box, _FILLS)

    def show_as(self, mode: OverlayMode, share: float, *, new_on_top: bool = True) -> None:
        """Show it in this way; `share` is the wipe's line from the left, or how much of the new."""
        self._mode, self._share, self._new_on_top = mode, share, new_on_top
        self.viewport().update()

    def new_is_seen(self) -> bool:
        """Tell whether the alternation shows the new photo now."""
        return self._new_on_top

    def drawForeground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        if self._warp is None:
            return
        if self._mode == "differences":
            self._draw_differences(painter)
            return
        if self._mode != "alternate" or self._new_on_top:
            painter.save()
            if self._mode == "wipe":
                painter.setClipRect(self._right_of_line())
            elif self._mode == "blend":
                painter.setOpacity(self._share)
            self._draw_new(painter)
            painter.restore()
        if self._mode == "wipe":
            self._draw_line(painter)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        side = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key))
        if self._mode == "alternate" and key == Qt.Key.Key_Space:
            self.turned.emit()
        elif self._mode in ("wipe", "blend") and side is not None:
            fine = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            self._move_share(self._share + side * (0.002 if fine else 0.02))
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        line = self._share * self.viewport().width()
        near = abs(event.position().x() - line) <= _GRASP
        self._grasped = self._mode == "wipe" and near and self._warp is not None
        if not self._grasped:
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._grasped:
            self._move_share(event.position().x() / max(1, self.viewport().width()))
        else:
            super().mouseMoveEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grasped = False
        super().mouseReleaseEvent(event)

    def _move_share(self, share: float) -> None:
        self._share = min(max(share, 0.0), 1.0)
        self.share_moved.emit(self._share)
        self.viewport().update()

    def _draw_new(self, painter: QPainter) -> None:
        assert self._warp is not None
        wanted = self._size[0] * painter.transform().m11()
        enough = [copy for copy in self._over if copy.width() >= wanted]
        copy = enough[-1] if enough else (self._over[0] if self._over else None)
        if copy is None:
            return
        up = QTransform.fromScale(self._size[0] / copy.width(), self._size[1] / copy.height())
        painter.setTransform(up * self._warp * painter.transform())
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(0, 0, copy)

    def _right_of_line(self) -> QRectF:
        seen = self.mapToScene(self.viewport().rect()).boundingRect()
        left = seen.left() + self._share * seen.width()
        return QRectF(left, seen.top(), seen.right() - left, seen.height())

    def _draw_line(self, painter: QPainter) -> None:
        painter.save()
        painter.resetTransform()
        x, down = self._share * self.viewport().width(), self.viewport().height()
        for pen in (QPen(HALO, 4), QPen(INK, 1.6)):
            painter.setPen(pen)
            painter.drawLine(QPointF(x, 0), QPointF(x, down))
            painter.drawEllipse(QPointF(x, down / 2), 9, 9)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for side, way in (("removed", -1), ("replacement", 1)):
            draw_sign(painter, side, QPointF(x + 16 * way, 16), HALO)
        painter.restore()

    def _draw_differences(self, painter: QPainter) -> None:
        to_screen = painter.transform()
        painter.save()
        painter.resetTransform()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        styles = {"removed": Qt.PenStyle.SolidLine, "replacement": Qt.PenStyle.DashLine}
        outlines = [
            (side, to_screen.map(polygon))
            for side, polygon in zip(styles, self._outlines or (), strict=False)
        ]
        for (side, drawn), dotted in zip(outlines, self._dotted, strict=False):
            painter.setPen(QPen(HALO, 4.5))
            painter.drawPolygon(drawn)
            for is_dotted, numbers in stretches(dotted or [False] * drawn.count()):
                style = Qt.PenStyle.DotLine if is_dotted else styles[side]
                painter.setPen(QPen(COLOURS[side], 1.4 if is_dotted else 2.2, style))
                painter.drawPolyline(QPolygonF([drawn.at(number) for number in numbers]))
        for side, drawn in outlines:
            for at in _along(drawn, _SIGNS_APART / (3 if side == "removed" else 1.2)):
                draw_sign(painter, side, at, HALO)
        middle = to_screen.map(self._part().center())
        taken: list[QRectF] = []
        for number, one in enumerate(self._differences):
            drawn = to_screen.map(_polygon(one.polygon_px))
            painter.setPen(QPen(INK, 1.6))
            painter.setBrush(QBrush(QColor(20, 24, 28, 170), Qt.BrushStyle.BDiagPattern))
            painter.drawPolygon(drawn)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            if number < MOST_SAID:
                at = drawn.boundingRect().center()
                taken.append(self._label(painter, at, middle, one.label(self._length_unit), taken))
        painter.restore()

    def _label(
        self, painter: QPainter, at: QPointF, middle: QPointF, words: str, taken: Sequence[QRectF]
    ) -> QRectF:
        """Write a size off the part, away from its middle and off other words; return where."""
        away = at - middle
        length = math.hypot(away.x(), away.y()) or 1.0
        stage = self.viewport().rect()
        box = label_box(painter, at + away * (70.0 / length), words, stage.width())
        room = QRectF(stage).adjusted(2, 2, -2, -2)
        if away.x() < 0:
            box.moveLeft(max(room.left(), box.left() - box.width() - 24))
        box.moveTop(min(max(box.top(), room.top()), room.bottom() - box.height()))
        down = box.height() + 3
        ways = (-1, 1) if away.y() < 0 else (1, -1)
        places = [box.translated(0, way * n * down) for n in range(20) for way in ways]
        free = (one for one in places if room.contains(one) and not any(map(one.intersects, taken)))
        box = next(free, box)
        for pen in (QPen(HALO, 3.5), QPen(INK, 1.2)):
            painter.setPen(pen)
            painter.drawLine(at, box.center())
        draw_words(painter, box, words)
        return box

    def _part(self) -> QRectF:
        boxes = [polygon.boundingRect() for polygon in self._outlines or ()]
        return boxes[0].united(boxes[1]) if boxes else self._clicked.boundingRect()


def _polygon(points: Sequence[Pixel]) -> QPolygonF:
    return QPolygonF([QPointF(float(x) + 0.5, float(y) + 0.5) for x, y in points])


def _along(line: QPolygonF, start: float) -> list[QPointF]:
    """Return points of a closed line, a sign's distance from each other, the first at `start`."""
    points = [line.at(index) for index in range(line.count())]
    found, ahead = [], start
    for one, other in pairwise([*points, *points[:1]]):
        way = other - one
        length = math.hypot(way.x(), way.y())
        while ahead <= length and length:
            found.append(one + way * (ahead / length))
            ahead += _SIGNS_APART
        ahead -= length
    return found
