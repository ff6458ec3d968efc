"""Customers who told of the same trouble while their car was not seen yet."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.returns_watched.told_the_same import ToldSame, told_in_words
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

MOST = 12  # buttons; the sentence above says how many there are


class ToldRows(QWidget):
    """A sentence and a button for each job, the oldest first; hidden where nobody told."""

    job_chosen = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._words = plain_label("", wrap=True)
        box = QWidget()
        self._row = FlowRow(box)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._words)
        column.addWidget(box)
        self.hide()

    def show_told(self, told: Sequence[ToldSame]) -> None:
        """Show whose customer told of the same trouble."""
        self._words.setText(told_in_words(told))
        self._row.clear()
        for one in told[:MOST]:
            button = QPushButton(f"◇ {one.number}: told {one.since.isoformat()}")
            button.setAccessibleName(f"Open {one.in_words()}")
            button.setToolTip(tooltip(one.in_words()))
            button.setProperty("job", one.job_id)
            button.clicked.connect(self._open)
            self._row.addWidget(button)
            button.show()
        self._row.invalidate()
        self.setVisible(bool(told))

    @Slot()
    def _open(self) -> None:
        self.job_chosen.emit(int(self.sender().property("job")))
