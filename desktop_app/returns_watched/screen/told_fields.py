"""What a customer tells beside the answer: the odometer, and the words."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.returns_watched.customer_answers import odometer_question
from desktop_app.returns_watched.screen.typed_field import NO_NAME, TypedField
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, Tick
from desktop_app.shop_window.texts import tooltip


class ToldFields(QWidget):
    """Two lines and a tick that wait, over closing the program too, to be noted with an answer."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._drafts = Drafts(desk.record.folder)
        self._job: JobView | None = None
        self._unit: DistanceUnit = "mi"
        self._odometer = TypedField(tr("Odometer as told"), self._read, self._ask_and_keep)
        self._words = TypedField(tr("In the customer's words"), str.strip, self._keep)
        self._paper = Tick(tr("Seen on another shop's bill"))
        self._paper.setToolTip(tooltip(tr("Goes with “same trouble”.")))
        self._paper.clicked.connect(self._ticked)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._odometer, 2)
        row.addWidget(self._words, 5)
        row.addWidget(Labelled(NO_NAME, self._paper))

    def show_job(self, job_id: int) -> None:
        """Show what was typed for the customer of a job so far."""
        if self._job is not None and self._job.id == job_id:
            return
        self.leave()
        self._job = self._desk.ask(read_job, job_id)
        self._unit = "mi" if self._job is None else unit_of(self._job)
        draft = self._drafts.read(_form(job_id))
        for field, typed in zip(self._fields(), ("odometer", "words"), strict=True):
            field.line.forget()
            field.line.show_value(draft.get(typed, ""))
        self._paper.setChecked(draft.get("paper", "") == "yes")
        self._ask_and_keep(None)

    def leave(self) -> None:
        """Keep what is typed, whatever it is, before another customer is shown."""
        if self._job is not None:
            self._keep(None)

    @property
    def on_paper(self) -> bool:
        """True where another shop's bill was seen."""
        return self._paper.isChecked()

    def said(self) -> tuple[int | None, str]:
        """Return the odometer as told, in the car's own unit, and the words.

        Raises ShopTrouble where the odometer cannot be read; what is accepted is said beneath it.
        """
        try:
            return self._read(self._odometer.line.text()), self._words.line.text().strip()
        except ShopTrouble as trouble:
            self._odometer.refuse(trouble.sentence())
            self._odometer.line.setFocus()
            raise

    def forget(self, job_id: int) -> None:
        """What was typed for this customer is noted: it waits no more."""
        self._drafts.keep(_form(job_id), {})
        if self._job is not None and self._job.id == job_id:
            self._job = None
            for field in self._fields():
                field.line.forget()
            self._paper.setChecked(False)

    @Slot()
    def _ticked(self) -> None:
        self._keep(None)

    def _fields(self) -> tuple[TypedField, TypedField]:
        return self._odometer, self._words

    def _read(self, text: str) -> int | None:
        return read_odometer(text, self._unit) if text.strip() else None

    def _ask_and_keep(self, told: Any) -> object:
        had = None
        if self._job is not None:
            out = self._job.odometer_out
            had = self._job.odometer_in if out is None else out
        unit = "km" if self._unit == "km" else tr("miles")
        asked = odometer_question(told, had, self._unit)
        self._odometer.hint(asked or tr("in {unit}", unit=unit))
        return self._keep(told)

    def _keep(self, _value: Any) -> object:
        if self._job is None:
            return None
        odometer, words = (field.line.text().strip() for field in self._fields())
        self._drafts.keep(_form(self._job.id), _typed(odometer, words, self.on_paper))
        return odometer, words


def _typed(odometer: str, words: str, on_paper: bool) -> dict[str, str]:
    typed = {"odometer": odometer, "words": words}
    return {**typed, "paper": "yes"} if on_paper else typed


def _form(job_id: int) -> str:
    return f"customer-asked-{job_id}"
