"""The ways to what must still be said before a car leaves: a button for each answer."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.hand_over import REFUSED, OpenAnswer
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up


class WaysToAnswers(QWidget):
    """Buttons that lead to the fields; those that are there already are left as they are."""

    wanted = Signal(str, object)  # what the answer is about, and its pair or None

    def __init__(self) -> None:
        super().__init__()
        self._row = FlowRow(self)
        self._shown: tuple[OpenAnswer, ...] = ()
        self._buttons: list[QPushButton] = []

    def show_answers(self, missing: Sequence[OpenAnswer]) -> None:
        """Offer the way to each answer that is missing."""
        if tuple(missing) == self._shown:
            return
        self._shown = tuple(missing)
        self._row.clear()
        self._buttons = []
        for place, one in enumerate(self._shown):
            button = QPushButton(f"→  {one.way}")
            said = tr("Still to say: {missing}.", missing=one.words)
            button.setAccessibleName(one.words if one.about == REFUSED else said)
            button.setProperty("place", place)
            button.clicked.connect(self._press)
            self._row.addWidget(button)
            self._buttons.append(button)
        self.setVisible(bool(self._shown))

    def setFocus(self, reason: Qt.FocusReason = Qt.FocusReason.OtherFocusReason) -> None:
        """Put the cursor onto the first of them, in sight."""
        if self._buttons:
            self._buttons[0].setFocus(reason)
            bring_up(self)

    @Slot()
    def _press(self) -> None:
        one = self._shown[int(self.sender().property("place"))]
        self.wanted.emit(one.about, one.pair)
