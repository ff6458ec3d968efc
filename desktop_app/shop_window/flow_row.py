"""A row of widgets that goes on in the next line when it is full."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget
from shiboken6 import delete


class FlowRow(QLayout):
    """Lays widgets from left to right and starts a new line where the width ends.

    What is lower than its line stands in the middle of it.

    With `at_end` each line stands at the right.
    """

    def __init__(
        self, parent: QWidget | None = None, spacing: int = 6, *, at_end: bool = False
    ) -> None:
        super().__init__(parent)
        self._at_end = at_end
        self._items: list[QLayoutItem] = []
        self.destroyed.connect(partial(_end, self._items))
        self._heights: dict[int, int] = {}  # by width; a page asks for them very often
        self.setSpacing(spacing)
        self.setContentsMargins(0, 0, 0, 0)

    def insert_from_end(self, places: int, widget: QWidget) -> None:
        """Put a widget before so many at the end, or first where there are fewer."""
        self.addWidget(widget)
        item = self._items.pop()
        self._items.insert(max(0, len(self._items) - places), item)
        self.invalidate()

    def clear(self) -> None:
        """Take all widgets out and let them go."""
        empty(self)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if width not in self._heights:
            self._heights[width] = self._lay(QRect(0, 0, width, 0), move=False)
        return self._heights[width]

    def invalidate(self) -> None:
        self._heights.clear()
        super().invalidate()

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._lay(rect, move=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        return size

    def _lay(self, rect: QRect, *, move: bool) -> int:
        y = rect.y()
        for line in self._lines(rect.width()):
            x = rect.x()
            if self._at_end:
                x = rect.right() + 1 - sum(hint.width() + self.spacing() for _, hint in line)
                x += self.spacing()
            high = max(hint.height() for _, hint in line)
            for item, hint in line if move else ():
                item.setGeometry(QRect(QPoint(x, y + (high - hint.height()) // 2), hint))
                x += hint.width() + self.spacing()
            y += high + self.spacing()
        return max(0, y - self.spacing() - rect.y())

    def _lines(self, width: int) -> list[list[tuple[QLayoutItem, QSize]]]:
        """Return what stands in each line, and how large."""
        lines: list[list[tuple[QLayoutItem, QSize]]] = []
        left = -1
        for item in self._items:
            widget = item.widget()
            if widget is not None and widget.isHidden():
                continue
            hint = item.sizeHint()
            if hint.width() > width:  # what can do with less than it likes gets the line
                hint.setWidth(max(width, item.minimumSize().width()))
            if hint.width() > left:
                lines.append([])
                left = width
            lines[-1].append((item, hint))
            left -= hint.width() + self.spacing()
        return lines


def _end(items: list[QLayoutItem]) -> None:
    """End what a layout of one's own held; Qt does so for its own layouts alone."""
    while items:
        delete(items.pop())


def empty(layout: QLayout) -> None:
    """Take all widgets out of a layout and let them go."""
    while layout.count() and (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        delete(item)  # who takes one out has to end it, which Python does not do by itself
        if widget is not None:
            widget.hide()
            widget.deleteLater()
