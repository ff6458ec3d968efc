"""A table whose rows are things put into words: one tuple of words for each, made when seen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView

from desktop_app.shop_window.shop_table import ShopTable
from desktop_app.shop_window.texts import tooltip

Index = QModelIndex | QPersistentModelIndex
Thing = TypeVar("Thing")
ROW_HEIGHT = 40
USUAL_SIZE = 12  # points of the text that the widths of columns are said for


class WordedRows(QAbstractTableModel, Generic[Thing]):
    """An unchanging tuple of things; each reading of the record brings a new one."""

    def __init__(self, headers: Sequence[str], words: Callable[[Thing], Sequence[str]]) -> None:
        super().__init__()
        self._headers, self._words = tuple(headers), words
        self._things: tuple[Thing, ...] = ()
        self._said: dict[int, Sequence[str]] = {}  # rows that were put into words

    def show_things(self, things: Sequence[Thing]) -> None:
        """Put other rows in place of all."""
        self.beginResetModel()
        self._things, self._said = tuple(things), {}
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._things)

    def columnCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._headers)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self._headers[section]
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        row = index.row()
        if row not in self._said:
            self._said[row] = self._words(self._things[row])
        words = self._said[row][index.column()]
        return tooltip(words) if role == Qt.ItemDataRole.ToolTipRole else words


class WordedTable(ShopTable):
    """A table whose chosen row is opened by Enter."""

    entered_on = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.entered_on.emit()
        else:
            super().keyPressEvent(event)


def lay_out_rows(table: WordedTable, model: WordedRows[Any], widths: Sequence[int]) -> None:
    """Give a table its rows and the look of all such tables: whole rows, one of them chosen."""
    table.show_rows_of(model)
    table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    table.setWordWrap(False)
    table.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
    larger = max(1.0, table.font().pointSizeF() / USUAL_SIZE)
    for column, width in enumerate(widths):
        table.setColumnWidth(column, round(width * larger))
