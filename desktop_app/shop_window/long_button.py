"""A button whose words may be a whole sentence: they go on in the next line where they have to."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QPushButton, QSizePolicy, QStyle, QStyleOptionButton

LINES_LEAST = 12  # letters; it asks for no more room than a line of these, or its longest word


class LongButton(QPushButton):
    """Says its words from the left, in as many lines as its width asks for."""

    def __init__(self, words: str = "") -> None:
        super().__init__(words)
        self._words = words
        self.setStyleSheet("text-align: left;")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)

    def text(self) -> str:
        """Return its words, however they are broken into lines."""
        return self._words

    def setText(self, words: str) -> None:
        """Say other words."""
        self._words = words
        self._break()

    def minimumSizeHint(self) -> QSize:
        letters = self.fontMetrics()
        longest = max(map(letters.horizontalAdvance, self._words.split()), default=0)
        least = max(longest, LINES_LEAST * letters.averageCharWidth())
        return QSize(least + self._beside(), self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._break()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._break()

    def _beside(self) -> int:
        """Return what the frame takes of the width."""
        option = QStyleOptionButton()
        self.initStyleOption(option)
        inside = self.style().subElementRect(QStyle.SubElement.SE_PushButtonContents, option, self)
        return option.rect.width() - inside.width()

    def _break(self) -> None:
        lines = "\n".join(in_lines(self._words, self.fontMetrics(), self.width() - self._beside()))
        if lines != super().text():
            super().setText(lines)


def in_lines(words: str, letters: QFontMetrics, width: int) -> list[str]:
    """Break words into lines of at most a width; a longer word has a line of its own."""
    lines: list[str] = []
    for word in words.split(" "):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and letters.horizontalAdvance(longer) > width:
            lines.append(word)
        else:
            lines[-1:] = [longer]
    return lines
