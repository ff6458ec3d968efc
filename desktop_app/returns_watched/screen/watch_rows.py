"""The jobs on watch as rows of a table, what ends first at the top."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.watch_words import miles_in_words, state_of
from desktop_app.returns_watched.watching import WatchedJob

Index = QModelIndex | QPersistentModelIndex
HEADERS = ("Job", "Vehicle", "Days", "Left", "Ends about", "State")
WIDTHS = (72, 160, 62, 104, 118, 134)
STATE_SIGNS = {"quiet": "●", "to be judged": "◇", "came back": "□"}


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
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() in (2, 3):
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        job = self._jobs[index.row()]
        state = state_of(job)
        return (
            job.job,
            job.vehicle,
            "no limit" if job.days_left is None else str(max(job.days_left, 0)),
            miles_in_words(job.miles_left, self._unit),
            "not known" if job.expected_close is None else job.expected_close.isoformat(),
            f"{STATE_SIGNS[state]}  {state}",
        )[index.column()]
