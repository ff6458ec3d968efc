"""A table of the workbook as rows on the screen, with the same columns and words."""

from __future__ import annotations

from datetime import date
from textwrap import wrap
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from desktop_app.figures_shown import figure
from desktop_app.returns_watched.share_words import share_words
from desktop_app.shop_window.texts import tooltip
from desktop_app.weekly_report.sheet_form import Cell, Kind, Table

Index = QModelIndex | QPersistentModelIndex
_NUMBERS = ("count", "number", "hours", "share", "money")


class SheetRows(QAbstractTableModel):
    """The rows of one table of the workbook, as they are written there."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self._currency = ""

    def show_table(self, table: Table, currency: str) -> None:
        """Put another table in place of the one that is shown."""
        self.beginResetModel()
        self._table, self._currency = table, currency
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        inside = parent is not None and parent.isValid()
        return 0 if inside or self._table is None else len(self._table.rows)

    def columnCount(self, parent: Index | None = None) -> int:
        inside = parent is not None and parent.isValid()
        return 0 if inside or self._table is None else len(self._table.columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if self._table is None or orientation != Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return _in_lines(self._table.columns[section].header)
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if self._table is None:
            return None
        kind = self._table.columns[index.column()].kind
        if role == Qt.ItemDataRole.TextAlignmentRole and kind in _NUMBERS:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        if role == Qt.ItemDataRole.UserRole:  # what it is sorted by
            return self._table.rows[index.row()][index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            cell = self._table.rows[index.row()][index.column()]
            words = as_read(cell, kind, self._currency)
            return words if role == Qt.ItemDataRole.DisplayRole else tooltip(words)
        return None


def _in_lines(header: str) -> str:
    """Return a header broken between its words, so that its column can be narrow."""
    longest = max(map(len, header.split()))
    return "\n".join(wrap(header, max(longest, 8)))


def as_read(cell: Cell, kind: Kind, currency: str) -> str:
    """Return a cell as the workbook's number format shows it."""
    if cell is None:
        return ""
    if isinstance(cell, date):
        return cell.isoformat()
    if isinstance(cell, str):
        return " ".join(cell.split())
    # The joiner keeps the sign and the amount on one line.
    below = "−\u2060" if cell < 0 else ""
    forms = {
        "money": f"{below}{currency}{figure(abs(cell), ',.2f')}",
        "hours": figure(cell, ".2f"),
        "share": share_words(cell),
        "number": figure(cell, ",.2f"),
    }
    return forms.get(kind, figure(cell, ",.0f"))
