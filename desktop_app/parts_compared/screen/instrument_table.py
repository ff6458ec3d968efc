"""The table of the tool drawer: the shop's instruments, one a row."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.instruments.instrument import Instrument, tool_words
from desktop_app.parts_compared.instruments.instrument_check import check_words
from desktop_app.parts_compared.shown_value import amount

HEADS = (
    tr("Instrument"),
    tr("Unit"),
    tr("Reads in steps of"),
    tr("Permitted error"),
    tr("Last checked"),
    tr("Repeats to"),
)
IN_ONE = tr("What is known of it")
_Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class ToolShown:
    """One instrument; its figures in its unit, the last check as an ISO day.

    `repeatability` is the shop's own, from a gauge study; None: the usual one counts.
    """

    id: int
    name: str
    unit: str
    resolution: float
    max_error: float
    checked_on: str | None
    repeatability: float | None = None

    def instrument(self) -> Instrument:
        """Return it with the figures that are usual before any gauge study."""
        return Instrument(self.name, self.unit, self.resolution, self.max_error)


class InstrumentTable(QAbstractTableModel):
    """An immutable tuple of instruments as a table to read.

    Folded, its figures stand below each other in one column, each with its head.
    """

    def __init__(self) -> None:
        super().__init__()
        self._tools: tuple[ToolShown, ...] = ()
        self._words: tuple[tuple[str, ...], ...] = ()
        self._folded = False

    def show_tools(self, tools: tuple[ToolShown, ...], length_unit: str, today: date) -> None:
        """Show these instruments in the shop's unit of length."""
        self.beginResetModel()
        self._tools = tools
        self._words = tuple(_words(one, length_unit, today) for one in tools)
        self.endResetModel()

    def fold(self, folded: bool) -> None:
        """Put the figures into one column, or each into its own."""
        if folded != self._folded:
            self.beginResetModel()
            self._folded = folded
            self.endResetModel()

    def tool(self, row: int) -> ToolShown | None:
        """Return the instrument of a row."""
        return self._tools[row] if 0 <= row < len(self._tools) else None

    def row_of(self, name: str) -> int | None:
        """Return the row of an instrument by its name."""
        return next((i for i, one in enumerate(self._tools) if one.name == name), None)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._tools)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._heads())

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            words = self._words[index.row()]
            return _in_one(words) if self._folded and index.column() else words[index.column()]
        return None

    def headerData(
        self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role == Qt.ItemDataRole.DisplayRole and way == Qt.Orientation.Horizontal:
            return self._heads()[section]
        return None

    def _heads(self) -> tuple[str, ...]:
        return (HEADS[0], IN_ONE) if self._folded else HEADS


def _words(one: ToolShown, length_unit: str, today: date) -> tuple[str, ...]:
    unit, factor = shop_unit(one.unit, length_unit)
    return (
        tool_words(one.name),
        unit,
        amount(round(one.resolution * factor, 6), unit),
        f"± {amount(round(one.max_error * factor, 6), unit)}",
        check_words(one.checked_on, today),
        _repeats(one, unit, factor),
    )


def _in_one(words: tuple[str, ...]) -> str:
    """Return the figures below each other; their unit stands in each."""
    return "\n".join(
        tr("{head}: {figure}", head=head, figure=figure)
        for head, figure in zip(HEADS[2:], words[2:], strict=True)
    )


def _repeats(one: ToolShown, unit: str, factor: float) -> str:
    own = one.repeatability
    spread = one.instrument().usual_spread if own is None else own
    whose = tr("usual") if own is None else tr("our own")
    return f"{amount(float(f'{spread * factor:.2g}'), unit)}, {whose}"
