"""Judging a return: eight answers, each with its sentence, and who judged it when."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_actions import deeds_of
from desktop_app.returns_watched.return_cost import cost_in_words, return_cost
from desktop_app.returns_watched.screen.asked_line import Answers, AskedLine
from desktop_app.returns_watched.screen.own_job_line import OwnJobLine
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.returns_watched.screen.typed_field import show_words
from desktop_app.shop_record.house_rules import hour_is_preset
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, Tick, WordsField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.notice import Notice
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

About = Callable[[Judging], object]  # what of a return a question is about
APART, TOGETHER = tr("These are two vehicles"), tr("It is the same vehicle after all")
TWO_VEHICLES = tr(
    "These are said to be two vehicles, and then it is no return. If they are one, press "
    "“{together}” first.",
    together=TOGETHER,
)
UNJUDGED = tr("It is not judged yet. Press an answer first.")


class JudgementBox(ReturnBox):
    """The question, its answers, what it is as well, and the words that go with the answer."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__(tr("What is it?"), desk, judging)
        self._deeds = deeds_of(judging)
        self._decided = plain_label("", wrap=True)
        self._own_job = OwnJobLine(desk)
        self._answers: dict[Judgement, QPushButton] = {}
        self._also: dict[Judgement, Tick] = {}
        self._back = QPushButton(tr("Take the judgement back"))
        self._confirm = QPushButton(tr("Confirm it as a second person"))
        self._unconfirm = QPushButton(tr("Take the second look back"))
        self._apart = QPushButton(APART)
        self._ask = AskedLine()
        self._asked: tuple[About, object] | None = None
        self._unjudged = ""  # the answer that waits for who gives it
        self._why = WordsField(tr("Why"), self._save_why, 2)
        self._evidence = WordsField(tr("What it rests on"), self._save_evidence, 2)
        self._view = WordsField(tr("First repairer's own view"), self._save_view, 2)
        self._view_box = Labelled(tr("First repairer's own view"), self._view)
        self._lay_out()
        desk.named.connect(self._hear_who)
        for button, pressed in (
            (self._back, self._take_back),
            (self._confirm, self._look_again),
            (self._unconfirm, self._unlook),
            (self._apart, self._turn_apart),
        ):
            button.clicked.connect(pressed)

    def show_return(self, judging: Judging, *, in_window: bool) -> None:
        """Show what is kept now about the return that this box was made for."""
        if self._asked is not None and self._asked[0](judging) != self._asked[1]:
            self._ask.put_away()  # it was asked about something else
        self.take(judging)
        main = judging.judgement
        self._decided.setText(judging.decided(in_window=in_window))
        self._own_job.show_return(judging)
        apart = "" if judging.same_vehicle else TWO_VEHICLES
        unjudged = "" if main is not None else UNJUDGED
        for judgement, button in self._answers.items():
            button.setChecked(main is judgement)
            off_because(button, apart)
        comeback = main is not None and main.is_comeback
        self._also_box.setVisible(comeback and not judging.is_told)
        for judgement, tick in self._also.items():
            tick.setChecked(judgement in judging.also)
            tick.setVisible(judgement is not main)
        self._also_row.invalidate()
        off_because(self._back, unjudged)
        self._confirm.setVisible(not judging.second_look and not judging.is_told)
        off_because(self._confirm, apart or unjudged)
        self._apart.setText(APART if judging.same_vehicle else TOGETHER)
        self._unconfirm.setVisible(bool(judging.second_look))
        self._apart.setVisible(not judging.is_told)
        who = judging.first_by
        self._view_box.hint(tr("{who} did the first repair.", who=who) if who else "")
        show_words(self._why, judging.why)
        show_words(self._evidence, judging.evidence)
        show_words(self._view, judging.first_view)

    def _lay_out(self) -> None:
        self.column.addWidget(self._decided)
        self.column.addWidget(self._own_job)
        self.column.addWidget(self._answer_rows())
        self._also_box = QWidget()
        self._also_row = FlowRow(self._also_box)
        self._also_row.addWidget(plain_label(tr("It is as well:")))
        for judgement in Judgement:
            if judgement.is_comeback:
                tick = Tick(tr(judgement.value))
                tick.clicked.connect(self._save_also)
                self._also[judgement] = tick
                self._also_row.addWidget(tick)
        self.column.addWidget(self._also_box)
        buttons = FlowRow()
        for button in (self._back, self._confirm, self._unconfirm, self._apart):
            buttons.addWidget(button)
        self.column.addLayout(buttons)
        self.column.addWidget(self._ask)  # below all that asks: nothing pressed moves away
        self.column.addWidget(Labelled(tr("Why, in one sentence"), self._why))
        rests = Labelled(tr("What it rests on"), self._evidence)
        rests.hint(tr("The old part kept, codes, the comparison."))
        views = FieldRows((rests, self._view_box), 2, 240)
        self.column.addWidget(views)
        if self.judging.is_told:  # nothing is kept of these where no car was seen
            views.hide()

    def _answer_rows(self) -> FieldRows:
        rows = []
        for judgement in Judgement:
            shown = tr(judgement.value).capitalize()
            button = QPushButton(shown)
            button.setCheckable(True)
            button.setAccessibleName(f"{shown}: {judgement.means}")
            button.setProperty("judgement", judgement.value)
            button.clicked.connect(self._judge)
            self._answers[judgement] = button
            row = QWidget()
            line = QHBoxLayout(row)
            line.setContentsMargins(0, 0, 0, 0)
            button.setMinimumWidth(self.fontMetrics().averageCharWidth() * 24)
            line.addWidget(button)
            line.addWidget(plain_label(judgement.means, "quiet", wrap=True), 1)
            rows.append(row)
        return FieldRows(rows, 2, 330, down=True)

    @Slot()
    def _judge(self) -> None:
        pressed = self.sender()
        assert isinstance(pressed, QPushButton)
        word = str(pressed.property("judgement"))
        if self.desk.record.who:
            self.do(self._deeds.judge, word)
        else:
            self._ask_who(word, pressed)
        for judgement, button in self._answers.items():
            button.setChecked(self.judging.judgement is judgement)

    def _ask_who(self, word: str, pressed: QPushButton) -> None:
        """Ask who judges; a judgement that nobody gave is none."""
        names = [name for _, name in self.desk.ask(people_here) or ()]
        if not names:
            self.desk.told.emit(
                Notice(
                    tr(
                        "Who judges it “{judgement}”? Nobody is on the list of people.",
                        judgement=tr(word),
                    ),
                    kept=tr("Nothing was judged."),
                    do=tr("Put the names under House Rules first. “Who is here?” leads there."),
                    holds=lambda: not self.desk.ask(people_here),
                )
            )
            return
        answers = {name: partial(self.do, self._deeds.judge, word, by=name) for name in names}
        question = _who_question(word)
        self._ask_about(_judged, question, {**answers, tr("Nobody yet"): _nothing}, pressed)
        self._unjudged = word

    def unjudged(self) -> str:
        """Return the answer that was pressed and waits for who gives it; "" where none does."""
        return "" if self._ask.isHidden() else self._unjudged

    @Slot(str)
    def _hear_who(self, who: str) -> None:
        if self.unjudged():
            named = tr("Who judges it “{judgement}”?", judgement=tr(self._unjudged))
            self._ask.reword(named if who else _who_question(self._unjudged))

    def _ask_about(
        self, about: About, question: str, answers: Answers, pressed: QPushButton
    ) -> None:
        """Ask; the question stays until it is answered or what it is about has changed."""
        self._asked, self._unjudged = (about, about(self.judging)), ""
        self._ask.ask(question, answers, pressed)

    @Slot()
    def _save_also(self) -> None:
        chosen = [one.value for one, tick in self._also.items() if tick.isChecked()]
        done = self.do(judging_actions.say_also, chosen)
        for judgement, tick in self._also.items() if done is None else ():
            put_back(tick, judgement in self.judging.also)

    @Slot()
    def _take_back(self) -> None:
        self.do(self._deeds.take_back)

    @Slot()
    def _look_again(self) -> None:
        if not self.desk.record.who:
            self.desk.told.emit(
                Notice(
                    tr("Nobody is named at the desk."),
                    do=tr("Choose who is here, then press it again."),
                    holds=lambda: not self.desk.record.who,
                )
            )
        elif self.do(judging_actions.look_again) is not None:
            self._why.setFocus()  # the pressed button is gone, and the next one means much

    @Slot()
    def _unlook(self) -> None:
        self.do(judging_actions.take_second_look_back)

    @Slot()
    def _turn_apart(self) -> None:
        if not self.judging.same_vehicle:
            self.do(actions.say_same_vehicle)
            return
        rules = self.desk.rules
        hour = self.judging.hour_cost(rules.hour_cost_cents)
        preset = hour == rules.hour_cost_cents and hour_is_preset(rules)
        cost = return_cost(self.judging.cost, hour)
        words = cost_in_words(cost, hour, rules.currency, preset=preset)
        question = self.judging.apart_question(words)
        if question is None:
            self._say_apart()
        else:
            yes, no = tr("Yes, two vehicles"), tr("No, the same vehicle")
            answers = {yes: self._say_apart, no: _nothing}
            self._ask_about(_judged_at_a_cost, question, answers, self._apart)

    def _say_apart(self) -> None:
        if self.do(actions.say_not_same_vehicle) is not None:
            one = self.judging
            self.desk.told.emit(
                tr(
                    "{earlier} and {later} are two vehicles: the return left the list. "
                    "“{together}” brings it back, and so does Undo.",
                    earlier=one.earlier,
                    later=one.later,
                    together=TOGETHER,
                )
            )

    def _save_why(self, text: str) -> object:
        return self.save(self._why, self._deeds.say_why, text)

    def _save_evidence(self, text: str) -> object:
        return self.save(self._evidence, judging_actions.write_evidence, text)

    def _save_view(self, text: str) -> object:
        return self.save(self._view, judging_actions.write_first_view, text)


def _who_question(word: str) -> str:
    return tr("Nobody is named at the desk. Who judges it “{judgement}”?", judgement=tr(word))


def _judged(judging: Judging) -> object:
    return judging.judgement, judging.same_vehicle


def _judged_at_a_cost(judging: Judging) -> object:
    return _judged(judging), judging.cost


def _nothing() -> None:
    """What an answer does that leaves all as it is."""
