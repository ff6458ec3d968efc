"""A button whose words end in "…" where they find no room; under the mouse they are read whole."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QHelpEvent, QPaintEvent
from PySide6.QtWidgets import (
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOptionButton,
    QStylePainter,
)

from desktop_app.shop_window.said_whole import say_whole

_LEAST = 16  # letters that are read in any case


class ShortButton(QPushButton):
    """Says `words` and behind them a `sign`, which is never cut off."""

    def __init__(self, words: str, sign: str) -> None:
        super().__init__(f"{words}  {sign}")
        self._words, self._sign = words, sign
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def minimumSizeHint(self) -> QSize:
        whole = super().minimumSizeHint()
        least = self.fontMetrics().averageCharWidth() * _LEAST
        return whole.boundedTo(QSize(least, whole.height()))

    def paintEvent(self, event: QPaintEvent) -> None:
        option = self._option()
        option.text = self._shown(option)
        painter = QStylePainter(self)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        painter.end()  # now, and not when Python comes to it

    def event(self, event: QEvent) -> bool:
        if event.type() != QEvent.Type.ToolTip or not isinstance(event, QHelpEvent):
            return super().event(event)
        if self._shown(self._option()) == self.text():
            return super().event(event)
        say_whole(self, event, self._words)
        return True

    def _option(self) -> QStyleOptionButton:
        option = QStyleOptionButton()
        self.initStyleOption(option)
        return option

    def _shown(self, option: QStyleOptionButton) -> str:
        contents = QStyle.SubElement.SE_PushButtonContents
        room = self.style().subElementRect(contents, option, self).width()
        letters = self.fontMetrics()
        if letters.horizontalAdvance(self.text()) <= room:
            return self.text()
        room -= letters.horizontalAdvance(f"  {self._sign}")
        return f"{letters.elidedText(self._words, Qt.TextElideMode.ElideRight, room)}  {self._sign}"
