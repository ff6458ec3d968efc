"""Heard: the page on which a car is taken in, with what the shop knows of it already."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.job_view import EarlierJob, VehicleSeen
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.screen.odometer_box import SOURCE_WORDS
from desktop_app.repair_jobs.stored_questions import odometer_asked
from desktop_app.repair_jobs.stored_reading import (
    earlier_jobs,
    find_vehicle,
    read_job,
    read_vehicle,
)
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.repair_jobs.vin import is_well_formed, vin_question
from desktop_app.repair_jobs.write_up import UNREAD_REASONS, WriteUp
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, QuestionLine, Tick
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label

FORM = "write-up"
PAUSE_MS = 400
# The ids that words name: symptom groups, or conditions.
ReadWords = Callable[[str], tuple[str, ...]]


class WriteUpPage(ReadingPage):
    """Which car, what the odometer says, what the customer says: then it is a job."""

    taken_in = Signal(int)
    job_wanted = Signal(int)

    def __init__(
        self, desk: Desk, drafts: Drafts, read_symptoms: ReadWords, read_conditions: ReadWords
    ) -> None:
        super().__init__()
        self._desk = desk
        self._drafts = drafts
        self._read_symptoms = read_symptoms
        self._read_conditions = read_conditions
        self._vehicle: VehicleSeen | None = None
        self._filled_in = ""  # what the program wrote into "What kind of car" by itself
        self._answered: set[str] = set()
        self._plate = _line("Plate, or the shop's own tag")
        self._vin = _line("VIN, if it is at hand")
        self._about = _line("What kind of car", "1.8-litre compact hatchback, 1990s")
        self._odometer = _line("Odometer")
        self._unit = QComboBox()
        self._unit.addItem("miles", "mi")
        self._unit.addItem("km", "km")
        self._unit.setAccessibleName("Unit of the odometer")
        self._unread = QComboBox()
        for source in READING_SOURCES:
            self._unread.addItem(SOURCE_WORDS[source], source)
        for reason in UNREAD_REASONS:
            self._unread.addItem(f"cannot be read: {reason}", reason)
        self._unread.setAccessibleName("How is the odometer known?")
        self._customer = _line("Customer")
        self._phone = _line("Phone")
        self._brought = _line("Brought by, if someone else")
        self._concern = QPlainTextEdit()
        self._concern.setAccessibleName("What the customer says")
        self._concern.setTabChangesFocus(True)
        self._concern.setFixedHeight(96)
        self._same = Tick("It is the same trouble as before, says the customer")
        self._take_in = QPushButton("Take the car in")
        self._take_in.setObjectName("next")
        self._take_in.clicked.connect(self.take_in)
        self._clear = QPushButton("Empty the form")
        self._clear.clicked.connect(self._empty)
        self._hint = plain_label("", wrap=True)
        self._hint.hide()
        self._vin_box = Labelled("VIN, if it is at hand", self._vin)
        self._odometer_box = Labelled("Odometer", self._odometer)
        self._odd = QuestionLine()
        self._before = Section("This car was here before")
        self._before_rows = QVBoxLayout()
        self._lay_out()
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._rested)
        self._listen()
        self._odd.kept.connect(self._right_as_typed)
        self._vin_box.question.kept.connect(self._right_as_typed)
        for choice in (self._unit, self._unread):
            choice.activated.connect(self.keep_draft)
        self._same.clicked.connect(self.keep_draft)
        self._bring_draft_back()

    def came_here(self) -> None:
        """Put the cursor where the work begins."""
        self._plate.setFocus()

    @Slot()
    def take_in(self) -> None:
        """Make the visit and its job; what is missing is said and nothing typed is lost."""
        self._look_up()
        try:
            said = self._said()
            said.check()
        except ShopTrouble as trouble:
            self._say(trouble.sentence())
            return
        done = self._desk.do(actions.write_up, said)
        if done is not None and done.made is not None:
            self._keep_answers(done.made)
            self._empty()
            self.taken_in.emit(done.made)

    def _keep_answers(self, job_id: int) -> None:
        """Write down what was said to be right as typed, so that nobody is asked again."""
        job = self._desk.ask(read_job, job_id) if self._answered else None
        if job is None:
            return
        for question in sorted(self._answered):
            for about in (f"vehicle:{job.vehicle.id}:vin", f"visit:{job.visit_id}:odometer"):
                self._desk.do(actions.keep_as_typed, about, question)

    def _said(self) -> WriteUp:
        odometer = None
        how = str(self._unread.currentData())
        known = how in READING_SOURCES
        text = self._odometer.text().strip()
        if text and known:
            odometer = read_odometer(text, self._odometer_unit())
        concern = self._concern.toPlainText()
        return WriteUp(
            concern=concern,
            vehicle_id=self._vehicle.id if self._vehicle else None,
            vin=self._vin.text(),
            plate=self._plate.text(),
            description=self._about.text(),
            odometer_unit=str(self._unit.currentData()),
            odometer=odometer,
            odometer_unread="" if known else how,
            odometer_source=how if known else "read",
            customer=self._customer.text(),
            phone=self._phone.text(),
            brought_by=self._brought.text(),
            says_same=self._same.isChecked(),
            symptoms=self._read_symptoms(concern),
            conditions=self._read_conditions(concern),
        )

    def _lay_out(self) -> None:
        self.column.addWidget(plain_label("Heard: a car is here", "title"))
        car = Section("Which car")
        grid = QGridLayout()
        grid.addWidget(Labelled("Plate, or the shop's own tag", self._plate), 0, 0)
        grid.addWidget(self._vin_box, 0, 1)
        grid.addWidget(Labelled("What kind of car", self._about), 1, 0)
        odometer = QHBoxLayout()
        odometer.addWidget(self._odometer_box, 2)
        odometer.addWidget(Labelled("in", self._unit))
        odometer.addWidget(Labelled("How is it known?", self._unread), 1)
        grid.addLayout(odometer, 1, 1)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 3)
        car.column.addLayout(grid)
        car.column.addWidget(self._odd)
        self.column.addWidget(car)
        self._before.column.addLayout(self._before_rows)
        same = QHBoxLayout()
        same.addWidget(self._same)
        same.addStretch(1)
        self._before.column.addLayout(same)
        self._before.hide()
        self.column.addWidget(self._before)
        words = Section("What the customer says")
        words.column.addWidget(Labelled("In their own words", self._concern))
        who = QGridLayout()
        for place, field in enumerate((self._customer, self._phone, self._brought)):
            who.addWidget(Labelled(field.accessibleName(), field), 0, place)
        words.column.addLayout(who)
        words.column.addWidget(self._hint)
        row = QHBoxLayout()
        row.addWidget(self._take_in)
        row.addWidget(self._clear)
        row.addStretch(1)
        words.column.addLayout(row)
        self.column.addWidget(words)

    def _listen(self) -> None:
        for line in self._lines().values():
            line.textEdited.connect(self._pause.start)
            line.returnPressed.connect(self._next_field)
        self._concern.textChanged.connect(self._pause.start)

    def _lines(self) -> dict[str, QLineEdit]:
        return {
            "plate": self._plate,
            "vin": self._vin,
            "about": self._about,
            "odometer": self._odometer,
            "customer": self._customer,
            "phone": self._phone,
            "brought": self._brought,
        }

    @Slot()
    def _next_field(self) -> None:
        self._rested()
        self.focusNextChild()

    @Slot()
    def keep_draft(self) -> None:
        """Keep the whole form as it is now, over closing the program and over a crash."""
        self._pause.stop()
        fields = {name: line.text() for name, line in self._lines().items()}
        fields["concern"] = self._concern.toPlainText()
        if any(fields.values()):
            fields["unit"] = str(self._unit.currentData())
            fields["unread"] = str(self._unread.currentData())
            fields["same"] = "yes" if self._same.isChecked() else ""
        self._drafts.keep(FORM, fields)

    @Slot()
    def _rested(self) -> None:
        """Keep the draft, look the car up, and ask about odd entries."""
        self.keep_draft()
        self._look_up()
        vin = self._vin.text().strip()
        self._ask(self._vin_box.question, vin_question(vin) if is_well_formed(vin) else None)
        self._vin_box.hint(
            "" if not vin or is_well_formed(vin) else "a VIN has 17 letters and digits"
        )
        self._ask_about_odometer()

    def _ask_about_odometer(self) -> None:
        question, hint = None, ""
        text = self._odometer.text().strip()
        if text and self._unread.currentData() == "read":
            try:
                reading = read_odometer(text, self._odometer_unit())
            except ShopTrouble as trouble:
                hint = trouble.sentence()
            else:
                today = self._desk.today()
                if self._vehicle is not None:
                    question = self._desk.ask(
                        odometer_asked, self._vehicle.id, reading, today, today
                    )
        self._odometer_box.hint(hint)
        self._ask(self._odd, question)

    def _odometer_unit(self) -> DistanceUnit:
        return "km" if self._unit.currentData() == "km" else "mi"

    def _ask(self, line: QuestionLine, question: str | None) -> None:
        """Ask, unless it was answered with "right as typed" on this form."""
        line.ask(None if question in self._answered else question)

    @Slot(str)
    def _right_as_typed(self, question: str) -> None:
        self._answered.add(question)

    def _look_up(self) -> None:
        found = self._desk.ask(find_vehicle, self._plate.text(), self._vin.text())
        if found is None:
            self._forget_vehicle()
            return
        if self._vehicle is not None and self._vehicle.id == found:
            return
        self._vehicle = self._desk.ask(read_vehicle, found)
        if self._vehicle is None:
            return
        if self._about.text() in ("", self._filled_in):
            self._filled_in = self._vehicle.description
            self._about.setText(self._filled_in)
            self._about.setCursorPosition(0)
        self._unit.setCurrentIndex(1 if self._vehicle.odometer_unit == "km" else 0)
        self._unit.setEnabled(False)  # the car's odometer counts in what it counted in before
        self._show_before(self._desk.ask(earlier_jobs, found) or ())

    def _forget_vehicle(self) -> None:
        """The car is not known after all: take back what was filled in for it."""
        self._vehicle = None
        self._before.hide()
        self._unit.setEnabled(True)
        if self._filled_in and self._about.text() == self._filled_in:
            self._about.clear()
        self._filled_in = ""

    def _show_before(self, jobs: tuple[EarlierJob, ...]) -> None:
        empty(self._before_rows)
        for job in jobs:
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            button = QPushButton(f"{job.number}, {_ago(job, self._desk)}")
            button.setProperty("job", job.id)
            button.setAccessibleName(f"Open the earlier job {job.number}")
            button.clicked.connect(self._open_earlier)
            row.addWidget(button)
            done = f"  →  {job.correction}" if job.correction else ""
            row.addWidget(plain_label(f"{job.concern}{done}"[:300], wrap=True), 1)
            self._before_rows.addWidget(line)
        self._before.setVisible(bool(jobs))

    @Slot()
    def _open_earlier(self) -> None:
        self.job_wanted.emit(int(self.sender().property("job")))

    @Slot()
    def _empty(self) -> None:
        for line in self._lines().values():
            line.clear()
        self._concern.clear()
        self._same.setChecked(False)
        self._unread.setCurrentIndex(0)
        self._answered.clear()
        self._filled_in = ""
        self._say("")
        self._rested()

    def _say(self, words: str) -> None:
        self._hint.setText(words)
        self._hint.setVisible(bool(words))

    def _bring_draft_back(self) -> None:
        draft = self._drafts.read(FORM)
        for name, line in self._lines().items():
            line.setText(draft.get(name, ""))
        self._concern.setPlainText(draft.get("concern", ""))
        self._unit.setCurrentIndex(max(0, self._unit.findData(draft.get("unit", "mi"))))
        self._unread.setCurrentIndex(max(0, self._unread.findData(draft.get("unread", "read"))))
        self._same.setChecked(draft.get("same") == "yes")
        if draft:
            self._say("This was typed before the program was closed. Nothing of it was lost.")
            self._rested()


def _line(name: str, example: str = "") -> QLineEdit:
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setPlaceholderText(example)
    line.setMaxLength(200)
    return line


def _ago(job: EarlierJob, desk: Desk) -> str:
    day = desk.today().fromisoformat(job.left_on or job.came_on)
    days = (desk.today() - day).days
    return "today" if days <= 0 else "yesterday" if days == 1 else f"{days} days ago"
