"""A stage with marks: one is chosen by a click, its points are moved by mouse and keys."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent

from desktop_app.language import tr
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.mark_lines import distance_to, mark_lines
from desktop_app.part_photos.mark_words import MarkTool
from desktop_app.part_photos.marks.mark import OUTLINES, Mark, Pixel
from desktop_app.part_photos.outline_hit import innermost
from desktop_app.part_photos.screen.bench_drawing_stage import ARROWS, CTRL, SHIFT, DrawingStage
from desktop_app.part_photos.screen.bench_mark_item import MarkItem, MarkShown
from desktop_app.shop_window.desk import Desk

NEAR = 9.0  # screen pixels within which a click means a point or a line
MOVES = tr("Arrow keys move the chosen point by 0.1 pixel, with Shift by 1, with Ctrl by 10.")


class BenchStage(DrawingStage):
    """Says what a person did with the marks; it keeps nothing: the bench does the deeds."""

    chose = Signal(object)  # id of a mark, or None
    edited = Signal(int, object)  # id, all its points: a point was moved
    unwanted = Signal(int)  # id: Delete was pressed on it

    def __init__(
        self, desk: Desk, name: str = tr("Photo"), empty: str = tr("No photo chosen")
    ) -> None:
        self._items: dict[int, MarkItem] = {}
        self._chosen: int | None = None
        self._point: int | None = None
        self._dragging = False
        super().__init__(desk, name, empty)

    def show_marks(
        self, marks: Mapping[int, tuple[Mark, str, tuple[Pixel, ...]]], plane: PlaneScale | None
    ) -> None:
        """Show marks by id, each with its words and the clicks it came from."""
        self._plane = plane
        for gone in [one for one in self._items if one not in marks]:
            self._scene.removeItem(self._items.pop(gone))
        if self._chosen not in marks:
            self._chosen = self._point = None
            self.magnifier.hide()
        for mark_id, (mark, label, clicks) in marks.items():
            if mark_id not in self._items:
                self._items[mark_id] = MarkItem()
                self._items[mark_id].fit_to(self.transform().m11())
                self._scene.addItem(self._items[mark_id])
            self._show(mark_id, MarkShown(mark, label, clicks))

    def label_mark(self, mark_id: int, label: str) -> None:
        """Change the words beside a mark, and nothing else."""
        item = self._items[mark_id]
        item.show_mark(replace(item.shown, label=label), item.lines)

    def choose_mark(self, mark_id: int | None, point: int | None = None) -> None:
        """Choose a mark from outside; nothing is said about it."""
        before = self._chosen
        self._chosen = mark_id if mark_id in self._items else None
        self._point = None if self._chosen is None else (point or 0)
        for one in (before, self._chosen):
            if one in self._items:
                self._show(one, self._items[one].shown)
        if self._chosen is None:
            self.magnifier.hide()

    def chosen_point(self) -> tuple[int, int] | None:
        """Return (mark, number of the point) that the arrow keys move, or None."""
        if self._chosen is None or self._point is None:
            return None
        return self._chosen, self._point

    def take_tool(self, tool: MarkTool | None) -> None:
        super().take_tool(tool)
        if tool is not None:
            self.choose_mark(None)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        handle = None
        if event.button() == Qt.MouseButton.LeftButton and self._draft.tool is None:
            handle = self._handle_at(event.position())
        if handle is None:
            super().mousePressEvent(event)
        else:
            self._point, self._dragging = handle, True
            self._show_point()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._dragging:
            self._put_point(self.pixel_at(event.position()))
        else:
            super().mouseMoveEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._dragging = False
        super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self._near_mark(event.position()) is None:
            super().mouseDoubleClickEvent(event)
        else:
            self.mousePressEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, tool = Qt.Key(event.key()), self._draft.tool
        if tool is not None and key == Qt.Key.Key_Delete and not self._draft.points:
            tool = None  # the mark drawn last, while the tool is still in hand
        chosen = tool is None and self._chosen is not None
        if not (chosen and self._move_by_key(key, event.modifiers())):
            super().keyPressEvent(event)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab go through the points of the chosen mark, then on."""
        if self._chosen is not None and self._point is not None and self._draft.tool is None:
            there = self._point + (1 if onward else -1)
            if 0 <= there < len(self._points()):
                self._point = there
                self._show_point()
                return True
        return super().focusNextPrevChild(onward)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() != Qt.FocusReason.MouseFocusReason:
            self._show_point()

    def _own_items(self) -> list[MarkItem]:
        return [*super()._own_items(), *self._items.values()]

    def _clicked(self, spot: QPointF) -> None:
        if self._draft.tool is not None:
            super()._clicked(spot)
            return
        found = self._mark_at(spot)
        point = 0
        if found is not None:
            points = self._items[found].shown.mark.points_px
            ways = [self._way(self.seen_at(one), spot) for one in points]
            point = ways.index(min(ways))
        self.choose_mark(found, point)
        self.chose.emit(found)
        self.went_on.emit()

    def _move_by_key(self, key: Qt.Key, held: Qt.KeyboardModifier) -> bool:
        if self._chosen is None or self._point is None:
            return False
        if key in ARROWS:
            right, down = ARROWS[key]
            step = 1.0 if held & SHIFT else 10.0 if held & CTRL else 0.1
            x, y = self._points()[self._point]
            self._put_point((round(x + right * step, 6), round(y + down * step, 6)))
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.unwanted.emit(self._chosen)
        else:
            return False
        return True

    def _put_point(self, pixel: Pixel) -> None:
        """Move the chosen point; it lies on no found edge any more."""
        if self._chosen is None or self._point is None:
            return
        item, points = self._items[self._chosen], list(self._points())
        points[self._point] = self._inside(pixel)
        held = item.shown.mark.snapped or (False,) * len(points)
        snapped = tuple(one and i != self._point for i, one in enumerate(held))
        mark = replace(item.shown.mark, points_px=tuple(points), snapped=snapped)
        item.shown = replace(item.shown, mark=mark)
        self._show_point()
        self.edited.emit(self._chosen, tuple(points))

    def _inside(self, pixel: Pixel) -> Pixel:
        """The nearest place on the photo: outside of it nothing can be seen, so nothing marked."""
        photo = self.photo()
        if photo is None:
            return pixel
        x, y = pixel
        return min(max(x, -0.5), photo.width - 0.5), min(max(y, -0.5), photo.height - 0.5)

    def _show_point(self) -> None:
        """Draw the chosen mark with its chosen point, which is brought into sight."""
        if self._chosen is None or self._point is None:
            return
        self._show(self._chosen, self._items[self._chosen].shown)
        pixel = self._points()[self._point]
        if not self._dragging:
            self._keep_in_sight(pixel)
        self.magnifier.look_at(pixel, self.seen_at(pixel))
        self.went_on.emit()

    def _show(self, mark_id: int, shown: MarkShown) -> None:
        chosen = mark_id == self._chosen
        now = replace(shown, chosen=chosen, point=self._point if chosen else None)
        self._items[mark_id].show_mark(now, mark_lines(now.mark, self._plane))

    def _points(self) -> tuple[Pixel, ...]:
        return () if self._chosen is None else self._items[self._chosen].shown.mark.points_px

    def _mark_at(self, spot: QPointF) -> int | None:
        """Return the mark that a click means: the nearest one, else the surface clicked into."""
        near = self._near_mark(spot)
        if near is not None:
            return near
        marks = {one: item.shown.mark for one, item in self._items.items()}
        outlines = {one: m.points_px for one, m in marks.items() if m.type in OUTLINES}
        return innermost(outlines, self.pixel_at(spot))

    def _near_mark(self, spot: QPointF) -> int | None:
        pixel, scale = self.pixel_at(spot), self.transform().m11()
        ways = {
            mark_id: distance_to(item.shown.mark, item.lines, pixel) * scale
            for mark_id, item in self._items.items()
        }
        nearest = min(ways, key=lambda one: ways[one], default=None)
        return nearest if nearest is not None and ways[nearest] <= NEAR else None

    def _handle_at(self, spot: QPointF) -> int | None:
        ways = [self._way(self.seen_at(point), spot) for point in self._points()]
        nearest = min(range(len(ways)), key=lambda i: ways[i], default=None)
        return nearest if nearest is not None and ways[nearest] <= NEAR else None
