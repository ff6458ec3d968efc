"""A car that was not handed over yet is to be taken in: another concern of that visit, or anew?"""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.repair_jobs.known_car import StillHere
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label

ADD, AGAIN = tr("Add this concern to that visit"), tr("Take it in again all the same")


class StillHereBox(QFrame):
    """The question and its two answers; hidden unless the car is in the shop by the record."""

    concern_wanted = Signal(int)  # the visit's id
    again = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("question")
        self._here: StillHere | None = None
        self._is_again = False
        self._words = plain_label("", wrap=True)
        row = FlowRow()
        for words, pressed in ((ADD, self._add), (AGAIN, self._take_in_again)):
            button = QPushButton(words)
            button.clicked.connect(pressed)
            row.addWidget(button)
        column = QVBoxLayout(self)
        column.addWidget(self._words)
        column.addLayout(row)
        self.hide()

    def show_here(self, here: StillHere | None) -> None:
        """Ask about another car, or about none."""
        self._here, self._is_again = here, False
        self._words.setText("" if here is None else here.question())
        self.setVisible(self.is_open())

    def see(self, *, same: bool) -> None:
        """Ask only where it is the same car."""
        self.setVisible(same and self.is_open())

    def is_open(self) -> bool:
        """Tell whether nobody has answered."""
        return self._here is not None and not self._is_again

    @Slot()
    def _add(self) -> None:
        if self._here is not None:
            self.concern_wanted.emit(self._here.visit_id)

    @Slot()
    def _take_in_again(self) -> None:
        self._is_again = True
        self.hide()
        self.again.emit()
