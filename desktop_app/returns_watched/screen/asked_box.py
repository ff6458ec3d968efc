"""Asking the customer how the car does: one press for what was said, and the answers so far."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.returns_watched import customer_actions
from desktop_app.returns_watched.customer_answers import (
    Answer,
    CustomerSaid,
    HeardBy,
    odometer_question,
)
from desktop_app.returns_watched.screen.typed_field import NO_NAME, TypedField
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.lost_words import let_go
from desktop_app.shop_window.refused_drafts import ROW
from desktop_app.shop_window.texts import plain_label

HEARD_BY = [
    (HeardBy.TOLD.value, tr("told by the customer")),
    (HeardBy.PAPER.value, tr("seen on another shop's bill")),
]


class AskedBox(QWidget):
    """Five buttons, and a row for each time the customer was asked; seen once the car has left.

    Of a car that came back nobody asks here how it does: that is asked of the visit it came with.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._saving = False
        self._rows: dict[int, AskedRow] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._head = plain_label("", wrap=True)
        self._column.addWidget(self._head)
        self._buttons = QWidget()
        row = FlowRow(self._buttons)
        for answer in Answer:
            shown = tr(answer.value)
            button = QPushButton(shown.capitalize())
            button.setAccessibleName(tr("The customer was asked: {answer}", answer=shown))
            button.setProperty("answer", answer.value)
            button.clicked.connect(self._note)
            row.addWidget(button)
        self._column.addWidget(self._buttons)
        self.hide()

    def show_job(self, job: JobView, came_back_as: str = "") -> None:
        """Show what the customer of a job said so far; one that came back did so as another job."""
        if self._saving:
            return  # shown again by what is being saved; the rest is shown below, once it is
        before, self._job = self._job, job
        if before is not None and before.id != job.id:
            self._saving = True
            for row in tuple(self._rows.values()):
                row.save_typed()
            self._saving = False
        self.setVisible(job.left_at is not None)
        said = self._desk.ask(answers_of_job, job.id)
        if said is None and before is not None and before.id == job.id:
            return  # what can't be read just now is not gone
        said = said or ()
        called = f" {job.customer}, {job.phone}." if job.customer and job.phone else ""
        self._buttons.setVisible(not came_back_as)
        self._head.setText(
            tr(
                "The car came back as {number}. How it does is asked there, once it has left.",
                number=came_back_as,
            )
            if came_back_as
            else tr(
                "How does the car do? Ask the customer, and press what was said.{called}",
                called=called,
            )
        )
        for gone in set(self._rows) - {one.id for one in said}:
            row = self._rows.pop(gone)
            let_go(self._desk, self._column, row, row.name)
        for one in said:
            if one.id not in self._rows:
                self._rows[one.id] = AskedRow(self._desk, one, job.number)
                self._column.addWidget(self._rows[one.id])
            self._rows[one.id].show_said(one, job)

    @Slot()
    def _note(self) -> None:
        if self._job is not None:
            answer = self.sender().property("answer")
            self._desk.do(customer_actions.note_answer, self._job.id, answer)


class AskedRow(QWidget):
    """One time that the customer was asked: the answer, the odometer as told, the words."""

    def __init__(self, desk: Desk, said: CustomerSaid, job_number: str) -> None:
        super().__init__()
        self._desk, self._said = desk, said
        self._unit: DistanceUnit = "mi"
        self.setProperty(ROW, f"answer {said.id}")
        day = said.on.isoformat()
        self.name = tr("The answer of {day} ({job_number})", day=day, job_number=job_number)
        answers = [(one.value, tr(one.value)) for one in Answer]
        self._answer = KeptChoiceField(
            desk, tr("Answer of {day}", day=day), answers, self._save_answer
        )
        self._odometer = TypedField(
            tr("Odometer as told"),
            self._read,
            self._save_odometer,
            shown=lambda read: figure(read, ","),
        )
        self._words = TypedField(tr("In the customer's words"), str.strip, self._save_words)
        known = tr("How it became known on {day}", day=day)
        self._source = KeptChoiceField(desk, known, HEARD_BY, self._save_source)
        self._source_box = Labelled(tr("Known by"), self._source)
        self._odometer_holds, self._words_hold = (
            WhichHolds(desk, field) for field in (self._odometer, self._words)
        )
        out = QPushButton(tr("Take out"))
        out.setAccessibleName(tr("Take the answer of {day} out", day=day))
        out.clicked.connect(self._take_out)
        by = tr("{day}, asked by {by}", day=day, by=said.by) if said.by else day
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        fields = (Labelled(by, self._answer), self._odometer, self._source_box)
        column.addWidget(FieldRows(fields, 3))
        told = QHBoxLayout()
        told.addWidget(self._words, 1)
        told.addWidget(Labelled(NO_NAME, out))
        column.addLayout(told)

    def show_said(self, said: CustomerSaid, job: JobView) -> None:
        """Show what is kept of this answer, in the unit that the car counts in now."""
        self._said = said
        self._unit = unit_of(job)
        self._answer.show_value(said.answer.value)
        self._source.show_value(said.source.value)
        self._source_box.setVisible(said.answer is Answer.SAME_TROUBLE)
        told = said.odometer_told
        self._odometer_holds.stands(told, "" if told is None else figure(told, ","))
        self._odometer.show_kept(told)
        out = job.odometer_in if job.odometer_out is None else job.odometer_out
        self._odometer.hint(odometer_question(told, out, self._unit) or self._unit)
        self._words_hold.stands(said.words, said.words)
        self._words.show_kept(said.words)

    def save_typed(self) -> None:
        """Save what is still only typed."""
        self._odometer.line.save_now()
        self._words.line.save_now()

    def _read(self, text: str) -> int | None:
        return read_odometer(text, self._unit) if text.strip() else None

    def _save_answer(self, answer: str) -> object:
        return self._desk.do(customer_actions.change_answer, self._said.id, answer)

    def _save_source(self, source: str) -> object:
        shown = Shown(self._said.source.value)
        return self._desk.do(customer_actions.say_source, self._said.id, source, shown)

    def _save_odometer(self, reading: Any) -> object:
        deed = customer_actions.write_told_odometer
        return self._odometer_holds.save(reading, deed, self._said.id, reading)

    def _save_words(self, words: Any) -> object:
        deed = customer_actions.write_answer_words
        return self._words_hold.save(words, deed, self._said.id, words)

    @Slot()
    def _take_out(self) -> None:
        self._desk.do(customer_actions.take_answer_out, self._said.id)
