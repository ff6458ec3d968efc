"""What was typed while the server was away and was not sent before the program ended."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import tr
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.words_edit import WordsEdit

NOT_SENT = tr("Not Sent")
_WHAT = tr(
    "This was typed while the shop's server was away, and was not sent before the "
    "program ended. Nobody else has seen it. Copy each where it belongs."
)


class UnsentPage(ReadingPage):
    """Each text under the page and the field that it was typed into; `done` puts them away."""

    done = Signal()

    def __init__(self, texts: Mapping[str, str]) -> None:
        super().__init__()
        self.column.addWidget(plain_label(NOT_SENT, "title"))
        self.column.addWidget(plain_label(_WHAT, wrap=True))
        for name, text in texts.items():
            section = Section(name)
            shown = WordsEdit()
            shown.setPlainText(text)
            shown.setReadOnly(True)
            shown.setAccessibleName(name)
            shown.setFixedHeight(self.fontMetrics().lineSpacing() * 4 + 22)
            section.column.addWidget(shown)
            self.column.addWidget(section)
        self._put_away = QPushButton(tr("All of it is where it belongs"))
        self._put_away.clicked.connect(self._press)
        self.column.addWidget(self._put_away)

    @Slot()
    def _press(self) -> None:
        off_because(self._put_away, tr("All of it is put away."))
        self._put_away.setText(tr("Put away"))
        self.done.emit()
