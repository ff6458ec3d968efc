"""What a file leaves open, asked about once: each answer shows the file's own example with it."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QButtonGroup, QFrame, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.records_exchanged.asked_once import answers_to
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.screen.file_in_hand import FileInHand
from desktop_app.shop_window.fields import Tick
from desktop_app.shop_window.flow_row import FlowRow, empty
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label


class QuestionsBox(Section):
    """Hidden while the file leaves nothing open."""

    def __init__(self, file: FileInHand) -> None:
        super().__init__(tr("Asked once about this file"))
        self._file = file
        self._asked: tuple[Question, ...] = ()
        self._box = QVBoxLayout()
        self.column.addLayout(self._box)
        file.changed.connect(self._show)
        self.hide()

    @Slot()
    def _show(self) -> None:
        questions = self._file.questions if self._file.found is not None else ()
        self.setVisible(bool(questions))
        if questions == self._asked:
            return  # the cursor stays on the answer that was just given
        self._asked = questions
        empty(self._box)
        for question in questions:
            card = _Card(self._file, question)
            self._box.addWidget(card)
            card.show()  # not in the next turn: what is pressed meanwhile would find it hidden


class _Card(QFrame):
    def __init__(self, file: FileInHand, question: Question) -> None:
        super().__init__()
        self.setObjectName("question")
        self._file, self._question = file, question
        self._group = QButtonGroup(self)
        self._choices: list[str] = []
        column = QVBoxLayout(self)
        said = tr("Row {row}: {says}", row=question.row, says=question.says)
        column.addWidget(plain_label(said, wrap=True))
        if file.choices.as_last_time(question.option):
            column.addWidget(plain_label(tr("Answered as for the last file like this."), "quiet"))
        row = QWidget()
        flow = FlowRow(row)
        for at, answer in enumerate(answers_to(question)):
            button = Tick(answer.words)
            button.setChecked(file.choices.answers.get(question.option) == answer.choice)
            self._group.addButton(button, at)
            self._choices.append(answer.choice)
            flow.addWidget(button)
        column.addWidget(row)
        self._group.idClicked.connect(self._answer)

    @Slot(int)
    def _answer(self, at: int) -> None:
        self._file.answer(self._question.option, self._choices[at])
