"""The odometer of a visit: what it says, how that is known, how the car is used, what is odd."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.repair_jobs import actions, odometer_actions
from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.rate_of_use import use_in_words
from desktop_app.repair_jobs.stored_odometer import OdometerSaid, read_odometer_said
from desktop_app.repair_jobs.stored_questions import odometer_still_asked
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label

SOURCE_WORDS = {
    "read": "read in the car",
    "told": "told by the customer",
    "estimated": "estimated",
}


class OdometerBox(QWidget):
    """The reading with its source; beneath it the rate of use, a question and its answers."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self.field = LineField("Odometer in", self._save)
        self._source = ChoiceField(
            "How the odometer is known",
            [(source, SOURCE_WORDS[source]) for source in READING_SOURCES],
            self._say_source,
        )
        self._box = Labelled("Odometer in", self.field)
        self._box.question.kept.connect(self._keep)
        self._use = plain_label("", "quiet", wrap=True)
        self._meant = QWidget()
        self._meant_row = FlowRow(self._meant)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self._box)
        column.addWidget(self._meant)
        column.addWidget(self._source)
        column.addWidget(self._use)

    def show_job(self, job: JobView) -> None:
        """Show what the odometer said when the car came in, and what it is worth."""
        self._job = job
        read = "" if job.odometer_in is None else f"{job.odometer_in:,}"
        self.field.show_value(read or (job.odometer_unread or ""))
        unit = "km" if job.vehicle.odometer_unit == "km" else "miles"
        self._box.hint(f"in {unit}; or in words why it cannot be read")
        self._source.show_value(job.odometer_source or "read")
        self._source.setVisible(job.odometer_in is not None)
        asked = self._desk.ask(odometer_still_asked, job, self._desk.today())
        self._box.question.ask(asked)
        said = self._desk.ask(
            read_odometer_said, job.vehicle.id, job.came_at, job.odometer_in, job.visit_id
        )
        self._show_said(said, bool(asked))

    def _show_said(self, said: OdometerSaid | None, asked: bool) -> None:
        self._meant_row.clear()
        self._meant.setVisible(False)
        self._use.setText("")
        if said is None:
            return
        words = "km" if said.unit == "km" else "miles"
        self._use.setText(use_in_words(said.rate, words, from_miles(1, said.unit)))
        if not asked:
            return
        for each in said.proposals:
            button = QPushButton(f"Take {distance_in_words(each.value, said.unit)}")
            button.setToolTip(each.why)
            button.setAccessibleName(f"{button.text()}: {each.why}")
            button.setProperty("value", each.value)
            button.clicked.connect(self._take)
            self._meant_row.addWidget(button)
        self._meant.setVisible(bool(said.proposals))

    def _save(self, text: str) -> object:
        if self._job is None:
            return None
        reading, unread = None, ""
        unit: DistanceUnit = "km" if self._job.vehicle.odometer_unit == "km" else "mi"
        if any(c.isdigit() for c in text):
            try:
                reading = read_odometer(text, unit)
            except ShopTrouble as trouble:
                self._box.hint(trouble.sentence())
                return None
        else:
            unread = text
        done = self._desk.do(odometer_actions.change_odometer, self._job.visit_id, reading, unread)
        if done is not None and reading is not None:
            self.field.setText(f"{reading:,}")  # in the car's own unit, as it is kept
        return done

    @Slot()
    def _take(self) -> None:
        if self._job is not None:
            value = int(self.sender().property("value"))
            self.field.setText(f"{value:,}")
            self.field.save_now()

    def _say_source(self, source: str) -> object:
        if self._job is None:
            return None
        return self._desk.do(odometer_actions.say_how_read, self._job.visit_id, source)

    @Slot(str)
    def _keep(self, question: str) -> None:
        if self._job is not None:
            about = f"visit:{self._job.visit_id}:odometer"
            self._desk.do(actions.keep_as_typed, about, question)
