"""How the text was read: a row of words, each of which is taken out of the text by a press."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QRect, QSize, Qt, Signal, Slot
from PySide6.QtWidgets import QLayout, QLayoutItem, QPushButton, QWidget

from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.symptom_search.question import Piece


class ReadAsRow(QWidget):
    """Shows the pieces of a question; `taken_out` carries the piece that was pressed."""

    taken_out = Signal(object)  # Piece

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pieces: tuple[Piece, ...] = ()
        self._line = WrappingLine(self)
        self._buttons: list[QPushButton] = []
        self._label = plain_label("Read as", "quiet")
        self._label.setMinimumHeight(TOUCH)
        self._line.addWidget(self._label)
        self.hide()

    def show_pieces(self, pieces: Sequence[Piece]) -> None:
        """Show what was read, in the order given."""
        if tuple(pieces) == self._pieces:
            return
        self._pieces = tuple(pieces)
        for button in self._buttons:
            self._line.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._buttons = [self._button(place, one) for place, one in enumerate(self._pieces)]
        for button in self._buttons:
            self._line.addWidget(button)
        self.setVisible(bool(self._buttons))
        self.updateGeometry()

    def _button(self, place: int, piece: Piece) -> QPushButton:
        shown = piece.shown if piece.kind == "word" else f"{piece.kind}: {piece.shown}"
        button = QPushButton(f"{shown}  ✕".replace("&", "&&"))
        button.setAccessibleName(f"Take out {shown}")
        button.setToolTip(tooltip(f"Take “{piece.shown}” out of the question"))
        button.setMinimumHeight(TOUCH)
        button.setProperty("place", place)
        button.clicked.connect(self._pressed)
        return button

    @Slot()
    def _pressed(self) -> None:
        button = self.sender()
        assert isinstance(button, QPushButton)
        self.taken_out.emit(self._pieces[int(button.property("place"))])


class WrappingLine(QLayout):
    """A layout that puts its widgets in a line and begins a new one where the width ends."""

    GAP = 6

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._arrange(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._arrange(rect, move=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        return size

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def _arrange(self, rect: QRect, *, move: bool) -> int:
        """Place the items (or only measure) and return the height that they need."""
        x, y, tallest = rect.x(), rect.y(), 0
        for item in self._items:
            hint = item.sizeHint()
            if x > rect.x() and x + hint.width() > rect.right() + 1:
                x, y, tallest = rect.x(), y + tallest + self.GAP, 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), hint))
            x += hint.width() + self.GAP
            tallest = max(tallest, hint.height())
        return y + tallest - rect.y()
