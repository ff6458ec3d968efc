"""The odometer of a visit: what it says, how that is known, how the car is used, what is odd."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import as_kept, as_shown, tr
from desktop_app.repair_jobs import actions, odometer_actions, vehicle_actions
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, unit_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.our_words import WHY_UNREAD
from desktop_app.repair_jobs.rate_of_use import use_in_words
from desktop_app.repair_jobs.screen.readings_meant import ReadingsMeant
from desktop_app.repair_jobs.screen.shop_use import shop_use
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.stored_questions import OdometerSaid, read_odometer_said
from desktop_app.repair_jobs.typed_entry import is_a_reading, read_odometer
from desktop_app.repair_jobs.vehicle_actions import UNITS
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.texts import plain_label, tooltip

SOURCE_WORDS = {
    "read": tr("read in the car"),
    "told": tr("told by the customer"),
    "estimated": tr("estimated"),
}


class OdometerBox(QWidget):
    """The reading with its source; beneath it the rate of use, a question and its answers."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self.field = LineField(tr("Odometer in"), self._save)
        self._source = KeptChoiceField(
            desk,
            tr("How the odometer is known"),
            [(source, SOURCE_WORDS[source]) for source in READING_SOURCES],
            self._say_source,
        )
        self._box = Labelled(tr("Odometer in"), self.field)
        self._box.question.kept.connect(self._keep)
        self._holds = WhichHolds(desk, self._box)
        self._use = plain_label("", "quiet", wrap=True)
        self._meant = ReadingsMeant()
        self._meant.taken.connect(self._take)
        units = list(UNITS.items())
        self._unit = KeptChoiceField(desk, tr("The odometer counts in"), units, self._count_in)
        self._unit.setToolTip(
            tooltip(tr("Readings keep their numbers; what they count in changes."))
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self._box)
        column.addWidget(self._meant)
        how = QHBoxLayout()
        how.addWidget(self._source, 1)
        how.addWidget(plain_label(tr("counts in")))
        how.addWidget(self._unit)
        column.addLayout(how)
        column.addWidget(self._use)

    def leave(self) -> None:
        """Save what is typed before another job is shown."""
        self._holds.leave()

    def show_job(self, job: JobView) -> None:
        """Show what the odometer said when the car came in, and what it is worth."""
        self._job = job
        read = "" if job.odometer_in is None else figure(job.odometer_in, ",")
        kept = job.odometer_in, job.odometer_unread
        self._holds.show_kept(kept, read or as_shown(job.odometer_unread or "", WHY_UNREAD))
        unit = unit_words(job.vehicle.odometer_unit)
        self._box.hint(tr("in {unit}; or in words why it cannot be read", unit=unit))
        self._unit.show_value(job.vehicle.odometer_unit, job.id)
        self._source.show_value(job.odometer_source or "read", job.id)
        self._source.setVisible(job.odometer_in is not None)
        shop = shop_use(self._desk)
        said = self._desk.ask(read_odometer_said, job, self._desk.today(), shop)
        self._box.question.ask(None if said is None else said.asked)
        self._show_said(said)

    def _show_said(self, said: OdometerSaid | None) -> None:
        self._meant.offer((), "mi")
        self._use.setText("")
        if said is None:
            return
        per_mile = from_miles(1, said.unit)
        self._use.setText(use_in_words(said.rate, unit_words(said.unit), per_mile))
        self._meant.offer(said.proposals, said.unit)

    def _save(self, text: str) -> object:
        if self._job is None:
            return None
        reading, unread = None, ""
        unit: DistanceUnit = "km" if self._job.vehicle.odometer_unit == "km" else "mi"
        if is_a_reading(text):
            try:
                reading = read_odometer(text, unit)
            except ShopTrouble as trouble:
                self._box.refuse(trouble.sentence())
                return None
        else:
            unread = as_kept(text, WHY_UNREAD)
        self._box.refuse("")
        kept, visit = (reading, unread.strip() or None), self._job.visit_id
        deed = odometer_actions.change_odometer
        done = self._holds.save(kept, deed, visit, reading, unread)
        if done is not None and reading is not None:
            self.field.setText(figure(reading, ","))  # in the car's own unit, as it is kept
        return done

    @Slot(int)
    def _take(self, value: int) -> None:
        self.field.setText(figure(value, ","))
        self.field.save_now()

    def _count_in(self, unit: str) -> object:
        if self._job is None or unit == self._job.vehicle.odometer_unit:
            return None
        done = self._desk.do(vehicle_actions.count_in, self._job.vehicle.id, unit)
        if done is not None:
            self._desk.told.emit(
                tr(
                    "All readings of this car count in {unit} from now on; their numbers "
                    "are as they were. Proof drives stay as long as they were. Undo takes "
                    "it back.",
                    unit=UNITS[unit],
                )
            )
        return done

    def _say_source(self, source: str) -> object:
        if self._job is None:
            return None
        return self._desk.do(odometer_actions.say_how_read, self._job.visit_id, source)

    @Slot(str)
    def _keep(self, question: str) -> None:
        if self._job is not None:
            about = f"visit:{self._job.visit_id}:odometer"
            self._desk.do(actions.keep_as_typed, about, question)
