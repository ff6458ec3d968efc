"""Where the shop's own phrases open below a question: made when they are first wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.texts import tooltip
from desktop_app.symptom_search.screen.link_button import LinkButton
from desktop_app.symptom_search.screen.old_jobs import OldJobs

if TYPE_CHECKING:
    from desktop_app.symptom_search.screen.phrases_box import PhrasesBox

KEYS = "Ctrl+M"


class Meanings(QWidget):
    """Takes no room until `button` is pressed; what a question leaves untold is offered then."""

    def __init__(self, desk: Desk, old_jobs: OldJobs, question: QLineEdit) -> None:
        super().__init__()
        self._desk, self._old_jobs, self._question = desk, old_jobs, question
        self._box: PhrasesBox | None = None
        self._for_question = False
        self.button = LinkButton(tr("Our own phrases"), tr("The shop's own phrases"))
        self.button.setToolTip(
            tooltip(tr("What your customers say, and what it means here ({keys})", keys=KEYS))
        )
        self.button.setMinimumHeight(TOUCH)
        self.button.clicked.connect(self.open)
        press_by(self.button, KEYS)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self.hide()

    @Slot()
    def open(self) -> None:
        """Open the box for the words of the question that mean nothing yet."""
        if self._box is None:
            from desktop_app.symptom_search.screen.phrases_box import PhrasesBox

            self._box = PhrasesBox(self._desk, self._old_jobs, self)
            self._box.kept.connect(self._kept)
            self._box.left.connect(self._left)
            self._column.addWidget(self._box)
        said = self._old_jobs.untold(self._question.text())
        self._for_question = bool(said.words)
        self.show()
        self._box.open_for(said)

    @Slot()
    def _kept(self) -> None:
        """Go back to the question where its words were told; who looks after the list stays."""
        if self._for_question:
            self._left()

    @Slot()
    def _left(self) -> None:
        self.hide()
        self._question.setFocus()
