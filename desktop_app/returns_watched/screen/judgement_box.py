"""Judging a return: eight answers, each with its sentence, and what goes with the answer."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.returns_watched import actions
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled, LineField, WordsField
from desktop_app.shop_window.texts import plain_label


class JudgementBox(QWidget):
    """The answers and fields for one return; every press and every field is a deed of its own."""

    def __init__(self, desk: Desk, row: ReturnRow, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._row = row
        self._decided = plain_label("", wrap=True)
        self._answers: dict[Judgement, QPushButton] = {}
        self._back = QPushButton("Take the judgement back")
        self._apart = QPushButton("These are two vehicles")
        self._why = WordsField("Why", self._save_why, 2)
        causes = [(None, "not said"), *((c.id, f"{c.words}: {c.means}") for c in RETURN_CAUSES)]
        self._cause = ChoiceField("Cause of the return", causes, self._save_cause)
        self._cause.setSizeAdjustPolicy(
            ChoiceField.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._cost = LineField("What it cost the shop", self._save_cost)
        self._cost_box = Labelled("What it cost the shop", self._cost)
        self._change = WordsField("What will be done differently", self._save_change, 2)
        self._lay_out()
        self._back.clicked.connect(self._take_back)
        self._apart.clicked.connect(self._say_apart)
        self.show_return(row)

    def show_return(self, row: ReturnRow) -> None:
        """Show what is kept now about the return that this box was made for."""
        self._row = row
        for judgement, button in self._answers.items():
            button.setChecked(row.judgement is judgement)
        self._decided.setText(_decided(row))
        self._back.setEnabled(row.judgement is not None)
        self._why.show_value(row.why)
        self._cause.show_value(row.cause_class)
        self._cost_box.hint(f"In {self._desk.rules.currency}; empty where nobody knows.")
        cents = row.cost_cents
        self._cost.show_value("" if cents is None else f"{cents / 100:.2f}")
        self._change.show_value(row.change_promised)

    def is_about(self, row: ReturnRow) -> bool:
        """Tell whether this box was made for that return."""
        return (row.earlier_id, row.later_id) == (self._row.earlier_id, self._row.later_id)

    def save_typed(self) -> None:
        """Save what is still only typed, before the box goes."""
        for field in (self._why, self._cost, self._change):
            field.save_now()

    def _lay_out(self) -> None:
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
        buttons = QHBoxLayout()
        buttons.addWidget(self._back)
        buttons.addWidget(self._apart)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._decided)
        column.addLayout(grid)
        column.addLayout(buttons)
        column.addWidget(Labelled("Why", self._why, "One sentence, and what it rests on."))
        pair = QHBoxLayout()
        pair.addWidget(Labelled("Cause of the return", self._cause), 3)
        pair.addWidget(self._cost_box, 1)
        column.addLayout(pair)
        column.addWidget(Labelled("What will be done differently", self._change))

    def _do(self, deed: Callable[..., Done], *args: object) -> Done | None:
        return self._desk.do(deed, self._row.earlier_id, self._row.later_id, *args)

    @Slot()
    def _judge(self) -> None:
        self._do(actions.judge_return, self.sender().property("judgement"))
        for judgement, button in self._answers.items():
            button.setChecked(self._row.judgement is judgement)

    @Slot()
    def _take_back(self) -> None:
        self._do(actions.take_judgement_back)

    @Slot()
    def _say_apart(self) -> None:
        self._do(actions.say_not_same_vehicle)

    def _save_why(self, text: str) -> object:
        return self._do(actions.say_why, text)

    def _save_cause(self, cause: str | None) -> object:
        return self._do(actions.name_cause_class, cause)

    def _save_change(self, text: str) -> object:
        return self._do(actions.promise_change, text)

    def _save_cost(self, text: str) -> object:
        try:
            cents = read_money(text)
        except ShopTrouble as trouble:
            self._cost_box.hint(trouble.sentence())
            return None
        return self._do(actions.write_cost, cents)


def _decided(row: ReturnRow) -> str:
    if row.judgement is None:
        return "Nobody has judged it yet. What is it?"
    who = f" by {row.judged_by}" if row.judged_by else ""
    on = f" on {row.judged_at[:10]}" if row.judged_at else ""
    counts = "It counts as a comeback." if row.is_comeback else "It is not counted."
    return f"Judged “{row.judgement.value}”{who}{on}. {counts}"
