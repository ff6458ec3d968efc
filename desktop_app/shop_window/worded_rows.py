"""A table whose rows are things put into words: one tuple of words for each, made when seen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Generic, TypeVar

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView

from desktop_app.shop_window.look import larger
from desktop_app.shop_window.shop_table import ShopTable
from desktop_app.shop_window.texts import tooltip

Index = QModelIndex | QPersistentModelIndex
Thing = TypeVar("Thing")
ROW_HEIGHT = 40


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
    """A table whose chosen row is opened by Enter, and whose columns grow with the text."""

    entered_on = Signal()
    _widths: Sequence[int] = ()  # as they are said for text of the usual size
    _larger = 1.0

    def set_widths(self, widths: Sequence[int]) -> None:
        """Give the columns these widths, in the proportion of the text's size."""
        self._widths, self._larger = widths, larger(self)
        for column, width in enumerate(widths):
            self.setColumnWidth(column, round(width * self._larger))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and self._widths:
            before, self._larger = self._larger, larger(self)
            for column, width in enumerate(self._widths):
                now = self.columnWidth(column)
                if self.isColumnHidden(column) or now == round(width * before):
                    self.setColumnWidth(column, round(width * self._larger))
                else:  # somebody drew it to another width
                    self.setColumnWidth(column, round(now * self._larger / before))

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
    table.set_widths(widths)
