"""A question within the page with a button for each answer; nothing is done before one is given."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QApplication, QFrame, QPushButton, QVBoxLayout, QWidget

from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up, page_of
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.texts import plain_label

Answers = Mapping[str, Callable[[], object]]


class AskedLine(QFrame):
    """Hidden until something is asked; the focus goes back to where it was asked from.

    Where it came up under the mouse, the second press of a double click answers nothing.
    """

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("question")
        self._answers: Answers = {}
        self._from: QWidget | None = None
        self._words = plain_label("", wrap=True)
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._box = QWidget()
        self._row = FlowRow(self._box)
        column = QVBoxLayout(self)
        column.addWidget(self._words)
        column.addWidget(self._box)
        self.hide()

    def ask(self, question: str, answers: Answers, asked_from: QWidget | None = None) -> None:
        """Ask; each answer is the words of its button and what it does."""
        self._answers, self._from = answers, asked_from
        self._words.setText(question)
        self._row.clear()
        for words in answers:
            button = QPushButton(words)
            button.clicked.connect(self._answer)
            self._row.addWidget(button)
            button.show()
        self._row.invalidate()
        self.show()
        QTimer.singleShot(0, self, self._come_into_view)

    def reword(self, question: str) -> None:
        """Ask the same in other words."""
        self._words.setText(question)

    def put_away(self) -> None:
        """Ask nothing any more."""
        had_focus = self.isAncestorOf(self.focusWidget()) if self.focusWidget() else False
        if had_focus and self._from is not None:
            self._from.setFocus()
        self.hide()

    @Slot()
    def _come_into_view(self) -> None:
        if self.isVisible():
            page = page_of(self)
            if isinstance(page, ReadingPage):
                page.settle()
            bring_up(self, below=50)
        if self.isVisible() and self.rect().contains(self.mapFromGlobal(QCursor.pos())):
            self._box.setEnabled(False)
            QTimer.singleShot(QApplication.doubleClickInterval(), self, self._take_answers)

    @Slot()
    def _take_answers(self) -> None:
        self._box.setEnabled(True)

    @Slot()
    def _answer(self) -> None:
        sender = self.sender()
        assert isinstance(sender, QPushButton)
        act = self._answers[sender.text()]
        self.put_away()
        act()
