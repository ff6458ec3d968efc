"""Judging a return: eight answers, each with its sentence, and who judged it when."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.own_job_line import OwnJobLine
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.returns_watched.screen.typed_field import show_words
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, Tick, WordsField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label


class JudgementBox(ReturnBox):
    """The question, its answers, what it is as well, and the words that go with the answer."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__("What is it?", desk, judging)
        self._decided = plain_label("", wrap=True)
        self._own_job = OwnJobLine(desk)
        self._answers: dict[Judgement, QPushButton] = {}
        self._also: dict[Judgement, Tick] = {}
        self._back = QPushButton("Take the judgement back")
        self._confirm = QPushButton("Confirm it as a second person")
        self._unconfirm = QPushButton("Take the second look back")
        self._apart = QPushButton("These are two vehicles")
        self._why = WordsField("Why", self._save_why, 2)
        self._evidence = WordsField("What it rests on", self._save_evidence, 2)
        self._view = WordsField("First repairer's own view", self._save_view, 2)
        self._view_box = Labelled("First repairer's own view", self._view)
        self._lay_out()
        for button, pressed in (
            (self._back, self._take_back),
            (self._confirm, self._look_again),
            (self._unconfirm, self._unlook),
            (self._apart, self._say_apart),
        ):
            button.clicked.connect(pressed)

    def show_return(self, judging: Judging, *, in_window: bool) -> None:
        """Show what is kept now about the return that this box was made for."""
        self.judging = judging
        main = judging.judgement
        self._decided.setText(judging.decided(in_window=in_window))
        self._own_job.show_return(judging)
        for judgement, button in self._answers.items():
            button.setChecked(main is judgement)
        self._also_box.setVisible(main is not None and main.is_comeback)
        for judgement, tick in self._also.items():
            tick.setChecked(judgement in judging.also)
            tick.setVisible(judgement is not main)
        self._also_row.invalidate()
        self._back.setEnabled(main is not None)
        self._confirm.setVisible(not judging.second_look)
        self._confirm.setEnabled(main is not None)
        self._unconfirm.setVisible(bool(judging.second_look))
        who = judging.first_by
        self._view_box.hint(f"{who} did the first repair." if who else "")
        show_words(self._why, judging.why)
        show_words(self._evidence, judging.evidence)
        show_words(self._view, judging.first_view)

    def _lay_out(self) -> None:
        self.column.addWidget(self._decided)
        self.column.addWidget(self._own_job)
        self.column.addLayout(self._answer_grid())
        self._also_box = QWidget()
        self._also_row = FlowRow(self._also_box)
        self._also_row.addWidget(plain_label("It is as well:"))
        for judgement in Judgement:
            if judgement.is_comeback:
                tick = Tick(judgement.value)
                tick.clicked.connect(self._save_also)
                self._also[judgement] = tick
                self._also_row.addWidget(tick)
        self.column.addWidget(self._also_box)
        buttons = FlowRow()
        for button in (self._back, self._confirm, self._unconfirm, self._apart):
            buttons.addWidget(button)
        self.column.addLayout(buttons)
        self.column.addWidget(Labelled("Why, in one sentence", self._why))
        words = QGridLayout()
        rests = Labelled("What it rests on", self._evidence)
        words.addWidget(rests, 0, 0)
        rests.hint("The old part kept, codes, the comparison.")
        words.addWidget(self._view_box, 0, 1)
        self.column.addLayout(words)

    def _answer_grid(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setVerticalSpacing(6)
        for place, judgement in enumerate(Judgement):
            button = QPushButton(judgement.value.capitalize())
            button.setCheckable(True)
            button.setAccessibleName(f"{judgement.value.capitalize()}: {judgement.means}")
            button.setProperty("judgement", judgement.value)
            button.clicked.connect(self._judge)
            self._answers[judgement] = button
            line, side = place % 4, 2 * (place // 4)
            grid.addWidget(button, line, side)
            grid.addWidget(plain_label(judgement.means, "quiet", wrap=True), line, side + 1)
        grid.setColumnStretch(1, 1)
        grid.setColumnStretch(3, 1)
        return grid

    @Slot()
    def _judge(self) -> None:
        self.do(actions.judge_return, self.sender().property("judgement"))
        for judgement, button in self._answers.items():
            button.setChecked(self.judging.judgement is judgement)

    @Slot()
    def _save_also(self) -> None:
        chosen = [one.value for one, tick in self._also.items() if tick.isChecked()]
        self.do(judging_actions.say_also, chosen)
        for judgement, tick in self._also.items():
            tick.setChecked(judgement in self.judging.also)

    @Slot()
    def _take_back(self) -> None:
        self.do(actions.take_judgement_back)

    @Slot()
    def _look_again(self) -> None:
        self.do(judging_actions.look_again)

    @Slot()
    def _unlook(self) -> None:
        self.do(judging_actions.take_second_look_back)

    @Slot()
    def _say_apart(self) -> None:
        self.do(actions.say_not_same_vehicle)

    def _save_why(self, text: str) -> object:
        return self.do(actions.say_why, text)

    def _save_evidence(self, text: str) -> object:
        return self.do(judging_actions.write_evidence, text)

    def _save_view(self, text: str) -> object:
        return self.do(judging_actions.write_first_view, text)
