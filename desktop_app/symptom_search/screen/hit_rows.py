"""The rows of the list of found jobs: headings and jobs, one under the other."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.language import tr
from desktop_app.shop_window.texts import tooltip
from desktop_app.symptom_search.find import Hit

Index = QModelIndex | QPersistentModelIndex
Row = Hit | str  # a heading is its words


class HitRows(QAbstractListModel):
    """An unchanging tuple of rows; each answer brings a new one."""

    HIT = Qt.ItemDataRole.UserRole

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[Row, ...] = ()

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Put other rows in place of all."""
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def first_hit(self) -> QModelIndex:
        """Return where the first job stands; an invalid index where there is none."""
        for place, row in enumerate(self._rows):
            if isinstance(row, Hit):
                return self.index(place)
        return QModelIndex()

    def count_hits(self) -> int:
        """Return the number of jobs, headings not among them."""
        return sum(isinstance(row, Hit) for row in self._rows)

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row = self._rows[index.row()]
        if role == self.HIT:
            return row
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return row if isinstance(row, str) else spoken(row)
        if role == Qt.ItemDataRole.ToolTipRole and isinstance(row, Hit):
            return "<br>".join(map(tooltip, (row.concern, outcome(row), *row.why)))
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        if isinstance(self._rows[index.row()], str):
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable


def title(hit: Hit) -> str:
    """Return the first line of a job: its number, day, plate and car."""
    return "   ".join(part for part in (hit.number, hit.day, hit.plate, hit.vehicle) if part)


def outcome(hit: Hit) -> str:
    """Return the line about what was wrong and what was done."""
    said = [part for part in (hit.cause, hit.correction) if part]
    if not said:
        return (
            tr("Not handed over yet.")
            if not hit.left
            else tr("No cause and no correction written.")
        )
    return "  →  ".join(said)


def spoken(hit: Hit) -> str:
    """Return the whole row as text, for a screen reader."""
    return ". ".join(part for part in (title(hit), hit.concern, outcome(hit), *hit.why) if part)
