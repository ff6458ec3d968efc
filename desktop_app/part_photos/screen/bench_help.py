"""What is to do next on the photo bench, in words beneath the photos."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot

from desktop_app.part_photos.drawing_words import START
from desktop_app.shop_window.room_watch import RoomWatch
from desktop_app.shop_window.texts import PlainLabel, tooltip

_LETTERS_WIDE = 90  # letters that it has to be wide; where it is narrower it takes a line more


class BenchHelp(PlainLabel):
    """It has its room from the start: a stage that moves under the mouse spoils a click."""

    def __init__(self) -> None:
        super().__init__(START)
        self.setObjectName("quiet")
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        RoomWatch(self, _LETTERS_WIDE, self._fit).look()

    @Slot(str)
    def say(self, words: str) -> None:
        """Say what is to do next."""
        self.setText(words)
        self.setToolTip(tooltip(words))

    def _fit(self, narrow: bool) -> None:
        lines = 3 if narrow else 2
        self.setFixedHeight(lines * self.fontMetrics().lineSpacing() + 2)
