"""A line that says how far something is, with a bar and a way to stop it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.step import Step
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label


class ProgressLine(QWidget):
    """Hidden until `begin`; `stop_wanted` when its button was pressed."""

    stop_wanted = Signal()

    def __init__(self, what: str) -> None:
        super().__init__()
        self._words = plain_label("", wrap=True)
        self._bar = QProgressBar()
        self._bar.setAccessibleName(tr("How far: {what}", what=what))
        self._bar.setMaximumWidth(260)
        self._bar.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocusProxy(self._bar)
        self._stop = QPushButton(tr("Stop"))
        self._stop.setAccessibleName(tr("Stop: {what}", what=what))
        self._stop.clicked.connect(self._press)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._words, 1)
        row.addWidget(self._bar)
        row.addWidget(self._stop)
        self.hide()

    def begin(self, words: str) -> None:
        """Show that something has begun."""
        self._words.setText(f"{words} …")
        self._bar.setRange(0, 0)
        off_because(self._stop, "")
        self.show()

    def end(self) -> None:
        """Show nothing any more."""
        self.hide()

    @Slot(object)
    def step(self, step: Step) -> None:
        """Show how far it is."""
        self._bar.setRange(0, step.of)
        self._bar.setValue(step.done)
        if self._stop.isEnabled():
            self._words.setText(f"{step.words} …")

    @Slot()
    def _press(self) -> None:
        off_because(self._stop, tr("It stops as soon as it can."))
        self._words.setText(tr("Stopping …"))
        self.stop_wanted.emit()
