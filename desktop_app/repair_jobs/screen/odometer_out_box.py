"""The odometer with which a car leaves: asked about before the hand-over, mended after it."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs import actions, odometer_actions
from desktop_app.repair_jobs.distance import unit_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.screen.readings_meant import ReadingsMeant
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.stored_questions import (
    OdometerAsked,
    about_odometer_out,
    odometer_out_asked,
)
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.in_sight import bring_up


class OdometerOutBox(QWidget):
    """Before the hand-over what is typed is kept with it; after it, it mends what was kept."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._drafts = Drafts(desk.record.folder)  # typed, and not handed over yet
        self._field = LineField(tr("Odometer out"), self._typed)
        self._field.setMaximumWidth(240)
        self._box = Labelled(tr("Odometer out"), self._field)
        self._holds = WhichHolds(desk, self._box)
        self._box.question.kept.connect(self._right_as_typed)
        self._meant = ReadingsMeant()
        self._meant.taken.connect(self._take)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self._box)
        column.addWidget(self._meant)

    def show_job(self, job: JobView) -> None:
        """Show the reading that was kept, or what is typed so far."""
        if self._job is not None and self._job.id != job.id:
            self.keep_draft()
            self._holds.leave()
        before, self._job = self._job, job
        if before is None or (before.id, before.left_at) != (job.id, job.left_at):
            self._begin(before, job)
        unit = unit_words(unit_of(job))
        if job.left_at is None:
            self._box.hint(tr("in {unit}; empty: as it came in", unit=unit))
        else:
            self._box.hint(tr("in {unit}; mends what it left with", unit=unit))
            self._holds.show_kept(job.odometer_out, _shown(job.odometer_out))
        self._ask()

    def _begin(self, before: JobView | None, job: JobView) -> None:
        """Put another job's reading into the field; what was typed for it comes back with it."""
        if before is not None and before.id == job.id:
            if job.left_at is not None:
                self._say_what_else_was_typed(job)
            elif before.odometer_out != job.odometer_in:  # the hand-over was undone
                self._keep(job.id, _shown(before.odometer_out))
        self._field.forget()
        if job.left_at is None:
            self._field.show_value(self._drafts.read(_form(job.id)).get("reading", ""))
        else:
            self._keep(job.id, "")

    def _say_what_else_was_typed(self, job: JobView) -> None:
        """Another desk handed the car over: what was typed here is told, for it goes away."""
        typed = self._field.text().strip()
        if typed and (not self._is_accepted() or self.reading() != job.odometer_out):
            self._desk.told.emit(
                tr(
                    "{number} was handed over at another desk. Odometer out typed here, "
                    "not kept: “{typed}”.",
                    number=job.number,
                    typed=typed,
                )
            )

    def keep_draft(self) -> None:
        """Keep what is typed for a car that is still here, over closing the program too."""
        if self._job is not None and self._job.left_at is None:
            self._keep(self._job.id, self._field.text().strip())

    def _keep(self, job_id: int, typed: str) -> None:
        if typed != self._drafts.read(_form(job_id)).get("reading", ""):
            self._drafts.keep(_form(job_id), {"reading": typed})

    def reading(self) -> int | None:
        """Return what the car leaves with; what it came with where nothing is typed."""
        assert self._job is not None
        text = self._field.text().strip()
        return read_odometer(text, unit_of(self._job)) if text else self._job.odometer_in

    def is_settled(self) -> bool:
        """Tell whether what is typed can be kept: it is a reading, and nothing is asked."""
        settled = self._is_accepted()
        if settled:
            self._ask(empty_too=True)
            settled = not self._box.question.question()
        if not settled:
            self._field.setFocus()
            bring_up(self._box)  # it may be far above the button that was pressed
        return settled

    def _is_accepted(self) -> bool:
        try:
            self.reading()
        except ShopTrouble as trouble:
            self._box.refuse(trouble.sentence())
            return False
        self._box.refuse("")
        return True

    def _ask(self, *, empty_too: bool = False) -> None:
        """Ask about an odd reading; an empty field is one, as it came in, once the car leaves."""
        odd = OdometerAsked()
        typed = bool(self._field.text().strip()) or empty_too
        reading = None
        if self._job is not None and typed and self._is_accepted():
            reading = self.reading()
        if self._job is not None and reading is not None:
            today = self._desk.today()
            odd = self._desk.ask(odometer_out_asked, self._job, reading, today) or odd
            self._meant.offer(odd.proposals, unit_of(self._job))
        else:
            self._meant.offer((), "mi")
        self._box.question.ask(odd.asked)

    def _typed(self, text: str) -> object:
        if self._job is None or not self._is_accepted():
            return None
        if self._job.left_at is None:
            self._ask()
            self.keep_draft()
            return text  # goes into the record with the hand-over
        reading = self.reading() if text.strip() else None
        deed = odometer_actions.change_odometer_out
        return self._holds.save(reading, deed, self._job.id, reading)

    @Slot(int)
    def _take(self, value: int) -> None:
        self._field.setText(figure(value, ","))
        self._field.save_now()

    @Slot(str)
    def _right_as_typed(self, question: str) -> None:
        if self._job is not None:
            self._desk.do(actions.keep_as_typed, about_odometer_out(self._job), question)


def _form(job_id: int) -> str:
    return f"odometer-out-{job_id}"


def _shown(reading: int | None) -> str:
    return "" if reading is None else figure(reading, ",")
