"""The readings of a gauge study as a grid: a row for each person and part, a column a repeat."""

from __future__ import annotations

import math
from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.parts_compared.instruments.gauge_plan import GaugePlan, Place
from desktop_app.parts_compared.instruments.gauge_study import GaugeReading
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.look import TOUCH

NEXT = tr("▸ next")
ROW = Qt.ItemDataRole.UserRole
_MOST_ROWS = 12


class GaugeReadingsGrid(QTableWidget):
    """Shows what was read and where the next reading goes; Delete takes the chosen one out."""

    taken_out = Signal(int)  # the reading's row in the record

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Readings of the gauge study"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        head = self.horizontalHeader()
        head.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        head.setMinimumSectionSize(76)
        self.verticalHeader().setDefaultSectionSize(TOUCH)
        for key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            inside = Qt.ShortcutContext.WidgetShortcut
            words = tr("takes the chosen readings out, in the grid")
            on_key(self, key, words, self.take_chosen_out, inside)

    def show_readings(
        self,
        plan: GaugePlan,
        readings: Mapping[int, GaugeReading],
        following: Place | None,
        factor: float,
        step: float,
    ) -> None:
        """Show the readings, each value times `factor`, and mark the place that is next.

        `step` of the instrument, in the unit that is shown, says how many decimals there are.
        """
        lines = [(person, part) for person in plan.people for part in range(1, plan.parts + 1)]
        self.setRowCount(len(lines))
        self.setColumnCount(plan.trials)
        self.setVerticalHeaderLabels(
            [
                person if plan.parts == 1 else tr("{person}, part {part}", person=person, part=part)
                for person, part in lines
            ]
        )
        self.setHorizontalHeaderLabels([str(one) for one in range(1, plan.trials + 1)])
        rows = {(one.person, one.part, one.trial): row for row, one in readings.items()}
        for y, (person, part) in enumerate(lines):
            for trial in range(1, plan.trials + 1):
                place = (person, part, trial)
                row = rows.get(place)
                value = None if row is None else readings[row].value * factor
                self._fill(y, trial - 1, _words(value, step, place == following), row)
        shown = min(_MOST_ROWS, len(lines))
        bar = self.horizontalScrollBar().sizeHint().height()
        self.setFixedHeight(shown * TOUCH + self.horizontalHeader().sizeHint().height() + bar + 4)
        if following is not None:
            y = lines.index(following[:2])
            self.scrollTo(self.model().index(y, following[2] - 1))

    def _fill(self, y: int, x: int, words: str, row: int | None) -> None:
        item = self.item(y, x)
        if item is None:
            item = QTableWidgetItem()
            self.setItem(y, x, item)
        item.setText(words)
        item.setData(ROW, row)
        font = item.font()
        font.setBold(words == NEXT)
        item.setFont(font)

    @Slot()
    def take_chosen_out(self) -> None:
        """Ask for the chosen reading to be taken out; an empty place has none."""
        item = self.currentItem()
        row = None if item is None else item.data(ROW)
        if row is not None:
            self.taken_out.emit(int(row))


def _words(value: float | None, step: float, is_next: bool) -> str:
    if value is None:
        return NEXT if is_next else ""
    text = f"{round(value, 6):.6g}"
    decimals = math.ceil(-math.log10(step) - 1e-9) if 0 < step < 1 else 0
    return shown(text if len(text.partition(".")[2]) >= decimals else f"{value:.{decimals}f}")
