"""A mark as a reading of the pair: what would be taken, what is there, no reading any more."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QMenu, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.mark_words import unit_of, value_words
from desktop_app.part_photos.stored_marks import KeptMark
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip


class MarkReading(QWidget):
    """Offers the dimensions of the part that a mark of this sort measures."""

    def __init__(self, desk: Desk, kept: KeptMark, side: str, readings: BenchReadings) -> None:
        super().__init__()
        self._desk, self._kept, self._side, self._readings = desk, kept, side, readings
        self._taken = plain_label("", wrap=True)
        self._use = QPushButton(tr("Use as the reading of …"))
        self._use.setMenu(QMenu(self._use))
        self._use.menu().aboutToShow.connect(self._fill)
        self._no_more = QPushButton(tr("Not a reading any more"))
        self._no_more.setToolTip(
            tooltip(tr("The reading goes out of the comparison; the mark stays."))
        )
        self._no_more.clicked.connect(self._let_go)
        row = FlowRow()
        row.addWidget(self._use)
        row.addWidget(self._no_more)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._taken)
        column.addLayout(row)

    def show_mark(self, kept: KeptMark) -> None:
        """Show of what the mark is the reading, and whether it can be one."""
        self._kept = kept
        taken = self._readings.taken(kept.id)
        self._taken.setText(tr("◎  Reading of {taken}", taken=taken) if taken else "")
        self._taken.setVisible(bool(taken))
        self._no_more.setVisible(bool(taken))
        self._use.setEnabled(kept.value is not None)
        why = "" if kept.value is not None else tr("The mark says no size yet.")
        self._use.setToolTip(tooltip(why or tr("Its value and its doubt go into the comparison.")))

    @Slot()
    def _fill(self) -> None:
        """Offer each dimension with the value that would be taken, and what was read of it."""
        kept, menu = self._kept, self._use.menu()
        menu.clear()
        wanted, unit = unit_of(kept.mark.type), self._desk.rules.length_unit
        value = value_words(kept.value, kept.unit, kept.expanded_u, unit)
        for one in self._readings.dimensions(self._side):
            if unit_of(one.mark_type) == wanted:
                there = tr("; the pair has {there}", there=one.there) if one.there else ""
                menu.addAction(f"{one.label}: {value}{there}", partial(self._take, one.name))
        if menu.isEmpty():
            menu.addAction(tr("No dimension of this part is measured so")).setEnabled(False)

    def _take(self, dimension: str) -> None:
        self._readings.take(self._kept.id, self._side, dimension)

    @Slot()
    def _let_go(self) -> None:
        self._readings.let_go(self._kept.id)
