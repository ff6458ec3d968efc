"""Several lines of words; Tab leaves them."""

from __future__ import annotations

from PySide6.QtCore import QMimeData, Slot
from PySide6.QtGui import QTextOption
from PySide6.QtWidgets import QPlainTextEdit

# Qt lays a word without an end out in time that grows with its square: 200,000 letters hold the
# window for seconds at each key. Broken wherever the line ends it takes a fortieth of that.
ENDLESS = 2000  # letters


class WordsEdit(QPlainTextEdit):
    """Breaks its lines between words, or anywhere as long as a word has no end."""

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)
        self.textChanged.connect(self._look)

    def setPlainText(self, text: str) -> None:
        """Show a text, laid out once."""
        self._break_for(text)
        super().setPlainText(text)

    def insertFromMimeData(self, source: QMimeData) -> None:
        """Take in what is pasted or dropped, laid out once."""
        if _is_endless(source.text()):
            self._break_for(source.text())
        super().insertFromMimeData(source)

    @Slot()
    def _look(self) -> None:
        self._break_for(self.toPlainText())

    def _break_for(self, text: str) -> None:
        way = QTextOption.WrapMode
        wanted = way.WrapAnywhere if _is_endless(text) else way.WrapAtWordBoundaryOrAnywhere
        if wanted != self.wordWrapMode():
            self.setWordWrapMode(wanted)


def _is_endless(text: str) -> bool:
    return len(text) >= ENDLESS and any(len(word) >= ENDLESS for word in text.split())
