"""What is asked before a car leaves with a check unanswered that is never left out."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.texts import plain_label


class ProofAskedBox(QFrame):
    """A question with two answers; it stops nothing, and it is asked at every hand-over."""

    all_the_same = Signal()
    not_yet = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("question")
        self._question = plain_label("", wrap=True)
        self._not_yet = QPushButton(tr("Not yet"))
        self._not_yet.setAccessibleName(tr("Not yet: keep the car here"))
        self._not_yet.clicked.connect(self._stay)
        leave = QPushButton(tr("Hand over all the same"))
        leave.clicked.connect(self._leave)
        column = QVBoxLayout(self)
        column.addWidget(self._question)
        row = QHBoxLayout()
        for button in (self._not_yet, leave):
            row.addWidget(button)
        row.addStretch(1)
        column.addLayout(row)
        self.hide()

    def ask(self, question: str) -> None:
        """Show the question, scrolled to where it is seen, with the answer that keeps the car."""
        self._question.setText(question)
        self.show()
        self._not_yet.setFocus()
        QTimer.singleShot(0, self, self._scroll_here)  # once it has its place

    @Slot()
    def _scroll_here(self) -> None:
        if self.isVisible():
            bring_up(self, below=80)

    @Slot()
    def _stay(self) -> None:
        self.not_yet.emit()  # before this goes, so that the cursor is somewhere already
        self.hide()

    @Slot()
    def _leave(self) -> None:
        self.hide()
        self.all_the_same.emit()
