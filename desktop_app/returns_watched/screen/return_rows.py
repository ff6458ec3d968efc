"""The returns as rows of a list: what waits first, then what is judged."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.judgement import counts_against
from desktop_app.returns_watched.returns_list import ReturnKey, ReturnRow
from desktop_app.returns_watched.waiting import (
    LONG_WAIT_DAYS,
    days_waiting,
    still_waiting_beside,
    waits_too_long,
)

Index = QModelIndex | QPersistentModelIndex
AT_ONCE = 100  # rows; more than are seen in any window


class ReturnRows(QAbstractListModel):
    """An unchanging tuple of returns; each reading of the record brings a new one.

    The list lays out every row that it is told of, so it is told of more only when it is scrolled
    that far, or led there by `reached`.
    """

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[ReturnRow, ...] = ()
        self._told = 0  # how many of them the list knows
        self._beside: Mapping[ReturnKey, tuple[str, ...]] = {}
        self._unit: DistanceUnit = "mi"
        self._today = date.min

    def show_rows(self, rows: Sequence[ReturnRow], unit: DistanceUnit, today: date) -> None:
        """Put other rows in place of all; distances are shown in the unit."""
        self.beginResetModel()
        self._today = today
        self._rows = tuple(rows)
        self._told = min(AT_ONCE, len(self._rows))
        self._beside = still_waiting_beside(self._rows)
        self._unit = unit
        self.endResetModel()

    def row(self, place: int) -> ReturnRow | None:
        """Return the return at a place, or None."""
        return self._rows[place] if 0 <= place < len(self._rows) else None

    def place_of(self, key: ReturnKey) -> int:
        """Return where the return with this key stands, or -1."""
        return next((i for i, row in enumerate(self._rows) if row.key == key), -1)

    def next_waiting(self, but: ReturnKey | None = None) -> int:
        """Return the place of the first return that waits, rather another than `but`; else -1.

        What waits of the same visit comes before what others wait for.
        """
        waiting = [i for i, row in enumerate(self._rows) if row.waits]
        others = [i for i in waiting if self._rows[i].key != but]
        here = next((row.visit for row in self._rows if row.key == but), None)
        same = [i for i in others if self._rows[i].visit == here]
        return (same or others or waiting or [-1])[0]

    def reached(self, place: int) -> QModelIndex:
        """Return the index of a place, of which the list is told now if it was not before."""
        self._tell(place + 1)
        return self.index(place)

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else self._told

    def canFetchMore(self, parent: Index) -> bool:
        return not parent.isValid() and self._told < len(self._rows)

    def fetchMore(self, parent: Index) -> None:
        if not parent.isValid():
            self._tell(self._told + AT_ONCE)

    def _tell(self, rows: int) -> None:
        rows = min(rows, len(self._rows))
        if rows > self._told:
            self.beginInsertRows(QModelIndex(), self._told, rows - 1)
            self._told = rows
            self.endInsertRows()

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        row = self._rows[index.row()]
        head = tr(
            "{later} after {earlier}, {came_on}",
            later=row.later,
            earlier=row.earlier,
            came_on=row.came_on.isoformat(),
        )
        if row.heard_by is not None:
            head = _heard(row, row.heard_by)
        said = state(row, self._today)
        beside = self._beside[row.key]
        if beside:
            others = ", ".join(beside)
            said += "\n" + tr("the visit waits for {others} too", others=others)
        return f"{head}\n{row.vehicle}\n{row.apart(self._unit)}\n{said}"


def state(row: ReturnRow, today: date) -> str:
    """Return the sign and the words for how far the judging of a return is."""
    if row.judgement is None:
        if not row.is_open:
            return f"○ {row.state_words}"
        if not row.in_window:
            return tr("◇ beyond the window, not judged")
        days = days_waiting(row, today)
        if waits_too_long(row, today):
            return tr("◇ waits {days} days, more than {limit}", days=days, limit=LONG_WAIT_DAYS)
        return tr("◇ waits 1 day") if days == 1 else tr("◇ waits {days} days", days=days)
    counts = counts_against(row.judgement, row.cause_class)
    return f"{'□' if counts else '○'} {tr(row.judgement.value)}"


def _heard(row: ReturnRow, by: HeardBy) -> str:
    job, day = row.earlier, day_in_words(row.came_on)
    if by is HeardBy.TOLD:
        return tr("{job}: told on {day}", job=job, day=day)
    return tr("{job}: seen on another shop's bill, {day}", job=job, day=day)
