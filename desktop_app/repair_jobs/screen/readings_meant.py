"""Readings that may be meant by an odd one of an odometer: a button for each."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words
from desktop_app.repair_jobs.odometer_questions import Proposal
from desktop_app.shop_window.flow_row import FlowRow


class ReadingsMeant(QWidget):
    """A button for each reading that would fit; pressed, it says which one was meant."""

    taken = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._row = FlowRow(self)
        self.hide()

    def offer(self, proposals: Sequence[Proposal], unit: DistanceUnit) -> None:
        """Offer readings in the vehicle's unit; none takes the row away."""
        self._row.clear()
        for each in proposals:
            button = QPushButton(tr("Take {reading}", reading=distance_in_words(each.value, unit)))
            button.setToolTip(each.why)
            button.setAccessibleName(f"{button.text()}: {each.why}")
            button.setProperty("value", each.value)
            button.clicked.connect(self._press)
            self._row.addWidget(button)
        self.setVisible(bool(proposals))

    @Slot()
    def _press(self) -> None:
        self.taken.emit(int(self.sender().property("value")))
