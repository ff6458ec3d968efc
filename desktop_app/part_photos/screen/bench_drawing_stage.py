"""A stage on which points are placed: by clicks, or by a cross that the arrow keys move."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QGraphicsScene, QGraphicsView

from desktop_app.language import tr
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.half_drawn import HalfDrawn
from desktop_app.part_photos.mark_lines import mark_lines
from desktop_app.part_photos.mark_words import MarkTool
from desktop_app.part_photos.marks.mark import Mark, Pixel
from desktop_app.part_photos.screen.bench_labels import draw_labels
from desktop_app.part_photos.screen.bench_magnifier import Magnifier
from desktop_app.part_photos.screen.bench_mark_item import INK, MarkItem, MarkShown, draw_cross
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.shop_window.desk import Desk

_LEAST = (190, 140)  # screen pixels: two of them fit on a small screen
_STILL = 4.0  # screen pixels that a click may wander without being a drag
_DOUBLE = 2.0  # screen pixels within which a second click is the other half of a double click
ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


class DrawingStage(PhotoStage):
    """Turns clicks and keys into the points of a mark; a drag still moves the photo."""

    drawn = Signal(object, object)  # MarkTool, tuple of points: a mark is whole
    went_on = Signal()  # a point more or less of a half-drawn mark, or another chosen point
    left = Signal()  # the keys go elsewhere

    def __init__(
        self, desk: Desk, name: str = tr("Photo"), empty: str = tr("No photo chosen")
    ) -> None:
        super().__init__(desk, name, empty)
        self._plane: PlaneScale | None = None
        self._draft = HalfDrawn()
        self._draft_item, self._known_item = MarkItem(), MarkItem()
        self._pressed: QPointF | None = None
        self._scene.setItemIndexMethod(QGraphicsScene.ItemIndexMethod.NoIndex)
        # The words of a mark stand far from it: what changes there is painted too.
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
        self.setMinimumSize(*_LEAST)
        for item in self._own_items():
            item.hide()
            self._scene.addItem(item)
        self.magnifier = Magnifier(self, self._scene)
        self.viewport().setMouseTracking(True)

    def show_known(self, points: tuple[Pixel, ...], words: str) -> None:
        """Show two points that are no mark, such as those of the scale; none hides them."""
        self._known_item.setVisible(len(points) == 2)
        self._known_item.show_mark(MarkShown(Mark("length", points), words, draft=True))
        self._known_item.fit_to(self.transform().m11())

    def take_tool(self, tool: MarkTool | None) -> None:
        """Draw with this tool from now on; a half-drawn mark of another one is dropped."""
        self._draft.take(tool)
        self._show_draft()
        self.magnifier.hide()
        self._show_cursor()

    def tool(self) -> MarkTool | None:
        """Return what is drawn with here."""
        return self._draft.tool

    def give_up(self) -> bool:
        """Drop a half-drawn mark, and the cross; False where there is none."""
        if not self._draft.points and self._draft.cross is None:
            return False
        self._draft.drop()
        self.magnifier.hide()
        self._show_draft()
        return True

    def half_drawn(self) -> int:
        """Return how many points of a mark are placed that isn't whole yet."""
        return len(self._draft.points)

    def pixel_at(self, spot: QPointF) -> Pixel:
        """Return the point of the photo at a point of the stage; pixel centres are whole."""
        there = self.viewportTransform().inverted()[0].map(spot)
        return there.x() - 0.5, there.y() - 0.5

    def seen_at(self, pixel: Pixel) -> QPointF:
        """Return where on the stage a point of the photo is seen."""
        return self.viewportTransform().map(QPointF(pixel[0] + 0.5, pixel[1] + 0.5))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self.photo() is not None:
            self._pressed = event.position()
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = event.position()
        if self._pressed is None:
            if self._draft.tool is not None:
                self._draft.cross = None
                self.magnifier.look_at(self.pixel_at(spot), spot)
        elif self._held != self._pressed or self._way(self._pressed, spot) > _STILL:
            super().mouseMoveEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pressed, self._pressed = self._pressed, None
        super().mouseReleaseEvent(event)
        self._show_cursor()
        if pressed is not None and self._way(pressed, event.position()) <= _STILL:
            self._clicked(event.position())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self._draft.tool is None:
            super().mouseDoubleClickEvent(event)
        else:
            self.mousePressEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        drawing = self._draft.tool is not None and self.photo() is not None
        if not (drawing and self._draw_by_key(Qt.Key(event.key()), event.modifiers())):
            super().keyPressEvent(event)

    def viewportEvent(self, event: QEvent) -> bool:
        """Say nothing about the stage over the magnifier, while a point is placed."""
        if event.type() == QEvent.Type.ToolTip and (
            self._draft.tool is not None or self.magnifier.isVisible()
        ):
            event.accept()
            return True
        return super().viewportEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.magnifier.hide()
        self.left.emit()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        if self._draft.tool is not None and self._draft.cross is None:
            self.magnifier.hide()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self.viewport())
        drawn = [item for item in self._own_items() if item.isVisible()]
        draw_labels(painter, drawn, self.viewport().size(), self.seen_at)
        if self._draft.cross is not None:
            draw_cross(painter, self.seen_at(self._draft.cross), 14, INK)
        painter.end()

    def _own_items(self) -> list[MarkItem]:
        return [self._draft_item, self._known_item]

    def _place(self) -> None:
        super()._place()
        for item in self._own_items():
            item.fit_to(self.transform().m11())

    def _clicked(self, spot: QPointF) -> None:
        """Place a point where somebody clicked with a tool."""
        if self._draft.tool is not None:
            self._place_point(self.pixel_at(spot), _DOUBLE / self.transform().m11())

    def _draw_by_key(self, key: Qt.Key, held: Qt.KeyboardModifier) -> bool:
        draft = self._draft
        enter = key in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if key in ARROWS:
            self._move_cross(ARROWS[key], held)
        elif enter and draft.tool is not None and draft.tool.open_ended and draft.is_enough():
            self._finish()
        elif enter or key == Qt.Key.Key_Space:
            draft.cross = draft.cross or self._middle()
            self._place_point(draft.cross, 1e-6)
        elif key == Qt.Key.Key_Backspace and draft.points:
            draft.points.pop()
            self._show_draft()
        else:
            return False
        return True

    def _place_point(self, pixel: Pixel, least_way: float) -> None:
        photo = self.photo()
        if photo is None:
            return
        if self._draft.place(pixel, (photo.width, photo.height), least_way):
            self._finish()
        else:
            self._show_draft()

    def _finish(self) -> None:
        tool, points = self._draft.tool, self._draft.drop()
        self.magnifier.hide()
        self._show_draft()
        self.drawn.emit(tool, points)

    def _show_draft(self) -> None:
        mark = self._draft.mark()
        self._draft_item.setVisible(bool(mark.points_px))
        self._draft_item.show_mark(MarkShown(mark, draft=True), mark_lines(mark, self._plane))
        self._draft_item.fit_to(self.transform().m11())
        self.viewport().update()
        self.went_on.emit()

    def _move_cross(self, way: tuple[int, int], held: Qt.KeyboardModifier) -> None:
        """Move the cross by what is seen: by a step of the screen, with Shift by one pixel."""
        scale, draft = self.transform().m11(), self._draft
        step = 1.0 if held & SHIFT else (80.0 if held & CTRL else 16.0) / scale
        x, y = draft.cross or (draft.points[-1] if draft.points else self._middle())
        draft.cross = (x + way[0] * step, y + way[1] * step)
        self._keep_in_sight(draft.cross)
        self.magnifier.look_at(draft.cross, self.seen_at(draft.cross))
        self.viewport().update()

    def _middle(self) -> Pixel:
        x, y = self.pixel_at(QPointF(self.viewport().rect().center()))
        return float(round(x)), float(round(y))

    def _keep_in_sight(self, pixel: Pixel) -> None:
        at, room = self.seen_at(pixel), self.viewport().rect().adjusted(30, 30, -30, -30)
        right = max(0.0, room.left() - at.x()) - max(0.0, at.x() - room.right())
        down = max(0.0, room.top() - at.y()) - max(0.0, at.y() - room.bottom())
        if right or down:
            self._push(right, down)

    def _show_cursor(self) -> None:
        tool = self._draft.tool is not None
        shape = Qt.CursorShape.CrossCursor if tool else Qt.CursorShape.ArrowCursor
        self.viewport().setCursor(shape)

    @staticmethod
    def _way(one: QPointF, other: QPointF) -> float:
        return math.hypot(other.x() - one.x(), other.y() - one.y())
