"""The returns as rows of a list: what waits first, then what is judged."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.returns_list import ReturnRow

Index = QModelIndex | QPersistentModelIndex


class ReturnRows(QAbstractListModel):
    """An unchanging tuple of returns; each reading of the record brings a new one."""

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[ReturnRow, ...] = ()
        self._unit: DistanceUnit = "mi"

    def show_rows(self, rows: Sequence[ReturnRow], unit: DistanceUnit) -> None:
        """Put other rows in place of all; distances are shown in the unit."""
        self.beginResetModel()
        self._rows = tuple(rows)
        self._unit = unit
        self.endResetModel()

    def row(self, place: int) -> ReturnRow | None:
        """Return the return at a place, or None."""
        return self._rows[place] if 0 <= place < len(self._rows) else None

    def place_of(self, earlier: int, later: int) -> int:
        """Return where the pair of job ids stands, or -1."""
        pairs = [(row.earlier_id, row.later_id) for row in self._rows]
        return pairs.index((earlier, later)) if (earlier, later) in pairs else -1

    def next_waiting(self) -> int:
        """Return the place of the first return that waits, or -1."""
        return next((i for i, row in enumerate(self._rows) if row.waits), -1)

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        row = self._rows[index.row()]
        head = f"{row.later} after {row.earlier}, {row.came_on.isoformat()}"
        return f"{head}\n{row.apart(self._unit)}: {state(row)}"


def state(row: ReturnRow) -> str:
    """Return the sign and the words for how far the judging of a return is."""
    if row.judgement is None:
        return "◇ to be judged" if row.in_window else "◇ beyond the window, not judged"
    return f"{'□' if row.judgement.is_comeback else '○'} {row.judgement.value}"
