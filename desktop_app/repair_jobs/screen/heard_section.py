"""Heard: the car, its odometer, the customer's own words, and when the fault happens."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import actions, vehicle_actions
from desktop_app.repair_jobs.concern_conditions import CONDITIONS, condition_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.beside_this_visit import BesideThisVisit
from desktop_app.repair_jobs.screen.beside_vin import BesideVin
from desktop_app.repair_jobs.screen.car_events import CarEvents
from desktop_app.repair_jobs.screen.done_by_field import DoneByField
from desktop_app.repair_jobs.screen.kind_of_work_field import KindOfWorkField
from desktop_app.repair_jobs.screen.odometer_box import OdometerBox
from desktop_app.repair_jobs.screen.same_plate_box import SamePlateBox
from desktop_app.repair_jobs.screen.side_by_side import side_by_side
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.stored_questions import vin_still_asked
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, LineField, WordsField, put_into
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptThreeWay, KeptTick
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip

SHOWN_FIRST = ("Engine", "Pedal and load", "Weather", "Time")  # of the conditions' headings
SymptomNames = Callable[[str], str]
ReadSymptoms = Callable[[str], tuple[str, ...]]
ReadConditions = ReadSymptoms
SAME_TROUBLE = tr("The customer says it is the same trouble as before")


class HeardSection(Section):
    """What is known from the counter; every field saves itself."""

    heard = Signal(str, int)  # the concern as it stands in its field, and the job's id

    def __init__(
        self,
        desk: Desk,
        read_symptoms: ReadSymptoms,
        symptom_name: SymptomNames,
        may_part: vehicle_actions.MayPart | None = None,
        beside_words: QWidget | None = None,
        beside_vin: BesideVin | None = None,
        read_conditions: ReadConditions = lambda _words: (),
    ) -> None:
        super().__init__(tr("Heard"))
        self._desk = desk
        self._read_symptoms, self._read_conditions = read_symptoms, read_conditions
        self._symptom_name = symptom_name
        self._job: JobView | None = None
        self._concern = WordsField(tr("Concern, in the customer's own words"), self._save_concern)
        self._same = KeptTick(desk, SAME_TROUBLE, self._say_same)
        self._same.setToolTip(tooltip(tr("Said here, judged later (Ctrl+T)")))
        says = tr("it is the same trouble, says the customer")
        on_key(self._same, "Ctrl+T", says, self._same.click)
        self._groups = QWidget()
        self._groups_row = FlowRow(self._groups)
        self._plate = LineField(tr("Plate"), self._save_plate)
        self._vin = LineField("VIN", self._save_vin)
        self._about = LineField(tr("What kind of car"), self._save_about)
        self._odometer = OdometerBox(desk)
        self._written_up, self._work = DoneByField(desk, "wrote up"), KindOfWorkField(desk)
        self._vin_box = Labelled("VIN", self._vin)
        self._vin_box.question.kept.connect(self._keep_vin)
        self._beside_vin = beside_vin
        if beside_vin is not None:
            beside_vin.put_in.connect(self._put_vin)
        self._beside = BesideThisVisit(desk, may_part)
        self._same_plate = SamePlateBox(desk, may_part)
        self._who = plain_label("", "quiet", wrap=True)
        self._events = CarEvents(desk)
        self._ticks: dict[str, KeptThreeWay] = {}
        concern = Labelled(tr("Concern, in the customer's own words"), self._concern)
        self._holds = WhichHolds(desk, concern)
        self.column.addLayout(side_by_side(concern, beside_words))
        self._concern.textChanged.connect(self._say_heard)
        same = QHBoxLayout()
        same.addWidget(self._same)
        same.addStretch(1)
        self.column.addLayout(same)
        self.column.addWidget(self._groups)
        self.column.addWidget(
            plain_label(tr("When does it happen?  ○ not asked  ● happens  ⊘ never"))
        )
        self._read = plain_label("", "quiet", wrap=True)
        self.column.addWidget(self._read)
        self._add_conditions()
        self._add_vehicle()

    def show_job(self, job: JobView) -> None:
        """Show the concern, the conditions and the car of a job."""
        if self._job is not None and self._job.id != job.id:
            for field in (self._plate, self._vin, self._about):
                field.save_now()
            self._holds.leave()
            self._odometer.leave()
        self._job = job
        self._holds.show_kept(job.concern, job.concern)
        self._same.show_value(job.says_same, job.id)
        self._plate.show_value(job.vehicle.plate)
        self._vin.show_value(job.vehicle.vin)
        self._about.show_value(job.vehicle.description)
        if self._beside_vin is not None:
            self._beside_vin.show_job(job)
        self._beside.show_job(job)
        self._same_plate.show_job(job)
        self._odometer.show_job(job)
        self._written_up.show_job(job)
        self._work.show_job(job)
        brought = [
            job.customer,
            job.phone,
            job.brought_by and tr("brought by {name}", name=job.brought_by),
        ]
        self._who.setText("   ".join(part for part in brought if part))
        self._who.setVisible(bool(self._who.text()))
        for condition, button in self._ticks.items():
            button.show_value(job.conditions.get(condition), job.id)
        self._show_read(job)
        self._show_more(any(c in job.conditions for c in self._hidden_ids()))
        self._events.show_job(job)
        self._show_groups(job)
        self._show_questions(job)
        self._say_heard()

    @Slot()
    def _say_heard(self) -> None:
        if self._job is not None:
            self.heard.emit(self._concern.toPlainText(), self._job.id)

    def keep_draft(self) -> None:
        """Keep what is only typed into a form."""
        self._events.keep_draft()

    def answer_field(self, about: str, _pair: int | None) -> QWidget | None:
        """Return where the concern is said."""
        return self._concern if about == "concern" else None

    def _show_questions(self, job: JobView) -> None:
        self._vin_box.question.ask(self._desk.ask(vin_still_asked, job))

    def _show_read(self, job: JobView) -> None:
        """Say which conditions the words tell: nobody had to ask for these."""
        ticked = (one for one in self._read_conditions(job.concern) if job.conditions.get(one))
        said = ", ".join(map(condition_words, ticked))
        words = tr("The customer's words say it themselves: {conditions}.", conditions=said)
        self._read.setText(words if said else "")
        self._read.setVisible(bool(said))

    def _show_groups(self, job: JobView) -> None:
        self._groups_row.clear()
        for symptom in job.symptoms:
            chip = QPushButton(f"{self._symptom_name(symptom)}  ✕")
            chip.setProperty("symptom", symptom)
            chip.setToolTip(tooltip(tr("Read from the words; press to take it out")))
            chip.setAccessibleName(
                tr("Take out the symptom {symptom}", symptom=self._symptom_name(symptom))
            )
            chip.clicked.connect(self._drop_symptom)
            self._groups_row.addWidget(chip)
        self._groups.setVisible(bool(job.symptoms))

    def _add_conditions(self) -> None:
        headings: dict[str, list[str]] = {}
        for condition in CONDITIONS:
            headings.setdefault(condition.heading, []).append(condition.id)
            tick = partial(self._tick, condition.id)
            self._ticks[condition.id] = KeptThreeWay(self._desk, tr(condition.words), tick)
        self._more: list[QWidget] = []
        for heading, ids in headings.items():
            box = QWidget()
            row = FlowRow(box)
            label = plain_label(f"{tr(heading)}:", "quiet")
            label.setMinimumHeight(TOUCH)
            row.addWidget(label)
            for identity in ids:
                row.addWidget(self._ticks[identity])
            self.column.addWidget(box)
            if heading not in SHOWN_FIRST:
                self._more.append(box)
        self._more_button = QPushButton(tr("More conditions"))
        self._more_button.setCheckable(True)
        self._more_button.toggled.connect(self._toggle_more)
        more = QHBoxLayout()
        more.addWidget(self._more_button)
        more.addStretch(1)
        self.column.addLayout(more)
        self._toggle_more(False)

    def _add_vehicle(self) -> None:
        vin_place = QWidget()
        vin = QVBoxLayout(vin_place)
        vin.setContentsMargins(0, 0, 0, 0)
        vin.addWidget(self._vin_box)
        if self._beside_vin is not None:
            vin.addWidget(self._beside_vin)
        vin.addStretch(1)
        fields = (self._plate, self._about, self._work, self._written_up)
        plate, about, work, by = (Labelled(one.accessibleName(), one) for one in fields)
        self.column.addWidget(FieldRows((plate, vin_place, about, self._odometer, work, by), 2))
        self.column.addWidget(self._same_plate)
        self.column.addWidget(self._beside)
        self.column.addWidget(self._events)
        self.column.addWidget(self._who)

    def _hidden_ids(self) -> list[str]:
        return [c.id for c in CONDITIONS if c.heading not in SHOWN_FIRST]

    def _show_more(self, wanted: bool) -> None:
        if wanted and not self._more_button.isChecked():
            self._more_button.setChecked(True)

    @Slot(bool)
    def _toggle_more(self, shown: bool) -> None:
        for box in self._more:
            box.setVisible(shown)

    def _save_concern(self, words: str) -> object:
        if self._job is None:
            return None
        groups = self._read_symptoms(words)
        deed = actions.write_concern
        return self._holds.save(words, deed, self._job.id, words, groups)

    def _save_plate(self, text: str) -> object:
        return self._change_vehicle(plate=text)

    def _save_vin(self, text: str) -> object:
        return self._change_vehicle(vin=text)

    @Slot(str)
    def _put_vin(self, vin: str) -> None:
        """Put in a VIN that was pressed; what was typed meanwhile is kept first, and shown."""
        if put_into(self._vin, vin):
            self._vin.setFocus()

    def _save_about(self, text: str) -> object:
        return self._change_vehicle(description=text)

    def _change_vehicle(self, **values: str) -> object:
        if self._job is None:
            return None
        return self._desk.do(vehicle_actions.change_vehicle, self._job.vehicle.id, **values)

    def _tick(self, condition: str, happens: bool | None) -> object:
        return self._job and self._desk.do(actions.tick_condition, self._job.id, condition, happens)

    def _say_same(self, same: bool) -> object:
        return self._job and self._desk.do(actions.say_same_trouble, self._job.id, same=same)

    @Slot()
    def _drop_symptom(self) -> None:
        if self._job is not None:
            symptom = str(self.sender().property("symptom"))
            self._desk.do(actions.choose_symptom, self._job.id, symptom, chosen=False)

    @Slot(str)
    def _keep_vin(self, question: str) -> None:
        if self._job is not None:
            about = f"vehicle:{self._job.vehicle.id}:vin"
            self._desk.do(actions.keep_as_typed, about, question)
