"""Which car: the fields of the counter, and what is asked about what they hold."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.known_car import KnownCar, Typed
from desktop_app.repair_jobs.odometer import READING_SOURCES, OdometerReading, reading_source
from desktop_app.repair_jobs.our_words import UNREAD_REASONS
from desktop_app.repair_jobs.screen.odometer_box import SOURCE_WORDS
from desktop_app.repair_jobs.screen.readings_meant import ReadingsMeant
from desktop_app.repair_jobs.stored_questions import OdometerAsked, odometer_asked
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.repair_jobs.vin import is_well_formed, vin_question
from desktop_app.shop_record.question import Question, question_of
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, QuestionLine
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section


class WhichCar(Section):
    """Plate, VIN, what kind of car, and its odometer with how that is known."""

    changed = Signal()  # by a choice or a press; typing is heard at the lines themselves

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("Which car"))
        self._desk = desk
        self.answered: set[str] = (
            set()
        )  # questions answered with "right as typed", as they are kept
        self.plate = line_of(tr("Plate, or the shop's own tag"))
        self.vin = line_of(tr("VIN, if it is at hand"))
        self.about = line_of(tr("What kind of car"), tr("1.8-litre compact hatchback, 1990s"))
        self.odometer = line_of(tr("Odometer"))
        self._unit = ChoiceList()
        self._unit.addItem(tr("miles"), "mi")
        self._unit.addItem(tr("km"), "km")
        self._unit.setAccessibleName(tr("Unit of the odometer"))
        self._how = ChoiceList()
        for source in READING_SOURCES:
            self._how.addItem(SOURCE_WORDS[source], source)
        for reason in UNREAD_REASONS:
            self._how.addItem(tr("cannot be read: {reason}", reason=tr(reason)), reason)
        self._how.setAccessibleName(tr("How is the odometer known?"))
        # Its longest reason may be cut while it is closed, not the reading beside it.
        self._how.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._how.setMinimumContentsLength(14)
        self._vin_box = Labelled(tr("VIN, if it is at hand"), self.vin)
        self.plate_box = Labelled(tr("Plate, or the shop's own tag"), self.plate)
        self.odometer_box = Labelled(tr("Odometer"), self.odometer)
        self._odd, self._meant = QuestionLine(), ReadingsMeant()
        self._meant.taken.connect(self._take)
        for question in (self._odd, self._vin_box.question):
            question.kept.connect(self._right_as_typed)
        for choice in (self._unit, self._how):
            choice.activated.connect(self.changed)
        self.shop_unit()
        self._lay_out()

    def _lay_out(self) -> None:
        reading = QWidget()
        odometer = QHBoxLayout(reading)
        odometer.setContentsMargins(0, 0, 0, 0)
        odometer.addWidget(self.odometer_box, 2)
        odometer.addWidget(Labelled(tr("in"), self._unit))
        odometer.addWidget(Labelled(tr("How is it known?"), self._how), 1)
        kind = Labelled(tr("What kind of car"), self.about)
        self.column.addWidget(FieldRows((self.plate_box, self._vin_box, kind, reading), 2))
        self.column.addWidget(self._odd)
        self.column.addWidget(self._meant)

    @property
    def unit(self) -> DistanceUnit:
        """The unit that the odometer is typed in."""
        return "km" if self._unit.currentData() == "km" else "mi"

    @property
    def how(self) -> str:
        """How the odometer is known, or why it cannot be read."""
        return str(self._how.currentData())

    @property
    def is_read(self) -> bool:
        """Whether a reading is typed at all."""
        return self.how in READING_SOURCES

    def typed(self) -> Typed:
        """Return what is typed of the car."""
        return Typed(self.plate.text(), self.vin.text(), self.about.text(), self.odometer.text())

    def reading(self) -> int | None:
        """Return the reading, in `unit`; None where there is none. Raises ShopTrouble."""
        text = self.odometer.text().strip()
        return read_odometer(text, self.unit) if text and self.is_read else None

    def read_now(self) -> OdometerReading | None:
        """Return what the odometer says today; None where that cannot be told."""
        try:
            value = self.reading()
        except ShopTrouble:  # `ask` says so beneath the field
            return None
        if value is None:
            return None
        return OdometerReading(self._desk.today(), value, self.unit, reading_source(self.how))

    def shop_unit(self) -> None:
        """Let the odometer count as the shop does: nothing is known of the car."""
        self.keep_unit(self._desk.rules.unit_of_distance)
        off_because(self._unit, "")

    def car_unit(self, unit: DistanceUnit) -> None:
        """Let the odometer count in what it counted in before."""
        self.keep_unit(unit)
        off_because(self._unit, tr("The odometer of this car counted in this unit before."))

    def keep_unit(self, unit: str) -> None:
        """Choose a unit, unless it is none."""
        self._unit.setCurrentIndex(max(0, self._unit.findData(unit)))

    def keep_how(self, how: str) -> None:
        """Choose how the odometer is known, unless there is no such way."""
        self._how.setCurrentIndex(max(0, self._how.findData(how)))

    def ask(self, car: KnownCar | None) -> bool:
        """Ask about what looks odd; True where the reading does not go on from the car's last."""
        vin = self.vin.text().strip()
        whole = is_well_formed(vin)
        self._ask(self._vin_box.question, question_of(lambda: vin_question(vin)) if whole else None)
        self._vin_box.hint("" if not vin or whole else tr("a VIN has 17 letters and digits"))
        odd = OdometerAsked()
        try:
            reading = self.reading()
            self.odometer_box.refuse("")
        except ShopTrouble as trouble:
            self.odometer_box.refuse(trouble.sentence())
            reading = None
        if reading is not None and car is not None:
            today = self._desk.today()
            about = (car.vehicle.id, reading, today, today, reading_source(self.how))
            odd = self._desk.ask(odometer_asked, *about) or odd
        self._ask(self._odd, odd.asked)
        self._meant.offer(odd.proposals if self._odd.question() else (), self.unit)
        return odd.asked is not None

    def _ask(self, line: QuestionLine, question: Question | None) -> None:
        """Ask, unless it was answered with "right as typed" on this form."""
        line.ask(None if question is None or question.kept in self.answered else question)

    @Slot(str)
    def _right_as_typed(self, question: str) -> None:
        self.answered.add(question)
        self.changed.emit()

    @Slot(int)
    def _take(self, value: int) -> None:
        self.odometer.setText(figure(value, ","))
        self.changed.emit()


def line_of(name: str, example: str = "") -> QLineEdit:
    """Return a line of a form that is kept as a draft."""
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setPlaceholderText(example)
    line.setMaxLength(200)
    return line
