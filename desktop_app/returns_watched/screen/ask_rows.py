"""Whom to ask, as rows of a table."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, Qt

from desktop_app.returns_watched.ask_list import ToAsk
from desktop_app.returns_watched.screen.watch_rows import Index
from desktop_app.shop_window.texts import tooltip

HEADERS = ("Job", "Vehicle", "Customer", "Phone", "Why")
WIDTHS = (72, 150, 140, 130, 100)


class AskRows(QAbstractTableModel):
    """An unchanging tuple of jobs to ask about; each reading of the record brings a new one."""

    def __init__(self) -> None:
        super().__init__()
        self._asks: tuple[ToAsk, ...] = ()

    def show_asks(self, asks: Sequence[ToAsk]) -> None:
        """Put other rows in place of all."""
        self.beginResetModel()
        self._asks = tuple(asks)
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._asks)

    def columnCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(HEADERS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return HEADERS[section]
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        ask = self._asks[index.row()]
        words = (
            ask.job.job,
            ask.job.vehicle,
            ask.beside.customer or "no name written down",
            ask.phone,
            " ".join(part for part in (ask.tried, ask.why) if part),
        )[index.column()]
        return tooltip(words) if role == Qt.ItemDataRole.ToolTipRole else words
