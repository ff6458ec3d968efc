"""The jobs on watch as rows of a table, what ends first at the top."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.watch_words import (
    STATE_SIGNS,
    ends_in_words,
    left_in_words,
    state_of,
)
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_window.texts import tooltip

Index = QModelIndex | QPersistentModelIndex
HEADERS = ("Job", "Vehicle", "Probably ends", "Left", "State")
WIDTHS = (92, 150, 206, 170, 120)
VEHICLE, LEFT, STATE = 1, 3, 4


class WatchRows(QAbstractTableModel):
    """An unchanging tuple of watched jobs; each reading of the record brings a new one."""

    def __init__(self) -> None:
        super().__init__()
        self._jobs: tuple[WatchedJob, ...] = ()
        self._unit: DistanceUnit = "mi"

    def show_jobs(self, jobs: Sequence[WatchedJob], unit: DistanceUnit) -> None:
        """Put other rows in place of all; distances are shown in the unit."""
        self.beginResetModel()
        self._jobs = tuple(jobs)
        self._unit = unit
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._jobs)

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
        job = self._jobs[index.row()]
        state = state_of(job)
        words = (
            f"{STATE_SIGNS[state]}  {job.job}",
            job.vehicle,
            ends_in_words(job.ends),
            left_in_words(job, self._unit),
            state,
        )[index.column()]
        return tooltip(words) if role == Qt.ItemDataRole.ToolTipRole else words
