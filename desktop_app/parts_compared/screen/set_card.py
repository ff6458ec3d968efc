"""The card of parts that meet: is there room, drawn to scale, and what was entered of the car."""

from __future__ import annotations

from functools import partial

from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QVBoxLayout

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_sets.part_set import GivenTerm, PartSet
from desktop_app.parts_compared.part_sets.set_sentence import (
    SET_SIGNS,
    main_sentence,
    set_sentences,
)
from desktop_app.parts_compared.screen.drawn_set import drawn_set
from desktop_app.parts_compared.screen.set_drawing import SetDrawing
from desktop_app.parts_compared.set_actions import enter_for_set, figure_text
from desktop_app.parts_compared.shown_value import amount
from desktop_app.parts_compared.stored_sets import JobSet
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.signs import signed
from desktop_app.shop_window.texts import CautionBox, plain_label

COLUMNS = 2


class SetCard(QFrame):
    """One set of one job: the verdict, the drawing, what it stands on, and fields for the car."""

    def __init__(self, desk: Desk, part_set: PartSet, position: str = "") -> None:
        super().__init__()
        self.setObjectName("card")
        self._desk = desk
        self._set = part_set
        self._position = position
        self._shown: JobSet | None = None
        self._unit = ""
        name = _capital(part_set.name)
        where = f", {position}" if position.strip() else ""
        self.setAccessibleName(tr("together: {name}{where}", name=part_set.name, where=where))
        self._verdict = plain_label("", "title", wrap=True)
        self._sentence = plain_label("", wrap=True)
        self._drawing = SetDrawing(f"{part_set.result}{where}")
        self._more = plain_label("", "quiet", wrap=True)
        self._steps = plain_label("", wrap=True)
        self._fields: dict[str, LineField] = {}
        self._names: dict[str, QLabel] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(plain_label(f"{name}{where}", "heading", wrap=True))
        for widget in (self._verdict, self._sentence, self._drawing, self._steps, self._more):
            column.addWidget(widget)
        column.addLayout(self._figures(where))
        if part_set.cautions:
            column.addWidget(CautionBox(part_set.cautions))

    def show_set(self, one: JobSet) -> None:
        """Show the set as the record has it now."""
        unit = self._desk.rules.length_unit
        if (one, unit) == (self._shown, self._unit):
            return
        self._shown, self._unit = one, unit
        judged = one.judged
        self._verdict.setText(signed(SET_SIGNS, judged.verdict))
        self._sentence.setText(main_sentence(judged, unit))
        self._drawing.show_rooms(drawn_set(judged, unit))
        self._more.setText(" ".join(set_sentences(judged, unit)[1:]))
        self._steps.setText("\n".join(f"→  {step}" for step in judged.next_steps))
        self._steps.setVisible(bool(judged.next_steps))
        spoken, _ = shop_unit(self._set.unit, unit)
        for term in self._set.given:
            said = tr("inch") if spoken == "in" else spoken
            self._names[term.name].setText(f"{_capital(term.label)}, {said}")
            field = self._fields[term.name]
            kept = one.entered.get(term.name)
            field.show_value(figure_text(kept, term, self._set.unit, unit))
            field.setPlaceholderText(_usual(term, self._set.unit, unit))

    def _figures(self, where: str) -> QGridLayout:
        """Lay out a field for each figure of the car that can be measured and entered."""
        grid = QGridLayout()
        grid.setHorizontalSpacing(18)
        for number, term in enumerate(self._set.given):
            field = LineField(f"{_capital(term.label)}{where}", partial(self._enter, term.name))
            name = plain_label("", wrap=True)
            name.setBuddy(field)
            self._fields[term.name], self._names[term.name] = field, name
            place = QVBoxLayout()
            place.setSpacing(3)
            place.addWidget(name)
            place.addWidget(field)
            place.addWidget(plain_label(term.how, "quiet", wrap=True))
            place.addStretch(1)
            grid.addLayout(place, number // COLUMNS, number % COLUMNS)
        for column in range(COLUMNS):
            grid.setColumnStretch(column, 1)
        return grid

    def _enter(self, name: str, text: str) -> object:
        if self._shown is None:
            return None
        return self._desk.do(
            enter_for_set,
            *(self._shown.job_id, self._set, self._position, name, text),
            self._desk.rules.length_unit,
            self._shown.kept_as,
        )


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _usual(term: GivenTerm, unit: str, length_unit: str) -> str:
    """Say in an empty field what is taken as long as nothing is entered."""
    shown, factor = shop_unit(unit, length_unit)
    if term.value is None:
        return tr("not entered")
    taken = term.half_width if term.enters == "play" else term.value
    return tr("usual {amount}", amount=amount(float(f"{taken * factor:.3g}"), shown))
