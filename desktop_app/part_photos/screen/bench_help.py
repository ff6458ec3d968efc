"""What is to do next on the photo bench, in words beneath the photos."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Slot

from desktop_app.part_photos.drawing_words import START
from desktop_app.shop_window.look import larger
from desktop_app.shop_window.texts import PlainLabel, tooltip

_LARGER = 1.4  # than the usual text: it takes a line more


class BenchHelp(PlainLabel):
    """It has its room from the start: a stage that moves under the mouse spoils a click."""

    def __init__(self) -> None:
        super().__init__(START)
        self.setObjectName("quiet")
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._fit()

    @Slot(str)
    def say(self, words: str) -> None:
        """Say what is to do next."""
        self.setText(words)
        self.setToolTip(tooltip(words))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _fit(self) -> None:
        lines = 2 if larger(self) <= _LARGER else 3
        self.setFixedHeight(lines * self.fontMetrics().lineSpacing() + 2)
