"""A button for what can't be taken back: it asks once more, and a wait makes it ask anew."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QPushButton

_WAITS_MS = 6000


class TwoPresses(QPushButton):
    """Says `words`, and `asks` after the first press."""

    pressed_twice = Signal()

    def __init__(self, words: str, asks: str) -> None:
        super().__init__(words)
        self._words, self._asks = words, asks
        self._waits = QTimer(self)
        self._waits.setSingleShot(True)
        self._waits.setInterval(_WAITS_MS)
        self._waits.timeout.connect(self._ask_anew)
        self.clicked.connect(self._press)

    @Slot()
    def _press(self) -> None:
        if self._waits.isActive():
            self._ask_anew()
            self.pressed_twice.emit()
            return
        self.setText(self._asks)
        self._waits.start()

    @Slot()
    def _ask_anew(self) -> None:
        self._waits.stop()
        self.setText(self._words)
