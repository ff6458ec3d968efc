"""A question where the one who did the first repair judged the return alone."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.repair_jobs.actions import keep_as_typed
from desktop_app.repair_jobs.stored_reading import was_answered
from desktop_app.returns_watched.judging import Judging
from desktop_app.shop_record.question import Question, question_of
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label


class OwnJobLine(QFrame):
    """Asks whether someone else should look; the judgement itself is already kept."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setObjectName("question")
        self._desk = desk
        self._about = ""
        self._asked: Question | None = None
        self._words = plain_label("", wrap=True)
        keep = QPushButton(tr("It stands as judged"))
        keep.clicked.connect(self._keep)
        row = FlowRow()
        row.addWidget(keep)
        column = QVBoxLayout(self)
        column.addWidget(self._words)
        column.addLayout(row)
        self.hide()

    def show_return(self, judging: Judging) -> None:
        """Ask about a return, or show nothing."""
        kind = "told" if judging.is_told else "return"
        self._about = f"{kind}:{judging.earlier_id}:{judging.later_id}:own job"
        self._asked = question_of(judging.own_job_question)
        self._words.setText(self._asked or "")
        self.setVisible(
            self._asked is not None and not self._desk.ask(was_answered, self._about, self._asked)
        )

    @Slot()
    def _keep(self) -> None:
        if self._asked is not None:
            self._desk.do(keep_as_typed, self._about, self._asked)
        self.hide()
