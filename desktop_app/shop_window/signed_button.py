"""A button that stays pressed: an empty circle before its words, and a sign once it is pressed."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtWidgets import QPushButton

NOT_PRESSED = "○"


class SignedButton(QPushButton):
    """It is as wide either way, so that nothing beside it moves when it is pressed."""

    def __init__(self, words: str, sign: str = "✓") -> None:
        super().__init__()
        self._words, self._sign = words, sign
        self.setCheckable(True)
        self.toggled.connect(self._say)
        self._say(False)

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        wide = max(map(self._wide, (self._said(True), self._said(False))))
        return QSize(hint.width() + wide - self._wide(self.text()), hint.height())

    def _wide(self, words: str) -> int:
        return self.fontMetrics().size(Qt.TextFlag.TextShowMnemonic, words).width()

    @Slot(bool)
    def _say(self, pressed: bool) -> None:
        self.setText(self._said(pressed))

    def _said(self, pressed: bool) -> str:
        return f"{self._sign if pressed else NOT_PRESSED}  {self._words}"
