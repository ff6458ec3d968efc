"""Heard: the page on which a car is taken in, with what the shop knows of it already."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QTextCursor
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLayout,
    QLineEdit,
    QPushButton,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.known_car import KnownCar, against_the_same
from desktop_app.repair_jobs.screen.asked_for import AskedFor
from desktop_app.repair_jobs.screen.checked_then_box import CheckedThenBox
from desktop_app.repair_jobs.screen.known_car_box import KnownCarBox, Promised, nothing_promised
from desktop_app.repair_jobs.screen.side_by_side import side_by_side
from desktop_app.repair_jobs.screen.which_car import WhichCar, line_of
from desktop_app.repair_jobs.stored_known_car import find_vehicle, read_known_car
from desktop_app.repair_jobs.stored_reading import earlier_jobs, read_job
from desktop_app.repair_jobs.write_up import NotSaid, WriteUp
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.shop_window.typing_pause import TypingPause
from desktop_app.shop_window.words_edit import WordsEdit

FORM = "write-up"
PAUSE_MS = 400
# The ids that words name: symptom groups, or conditions.
ReadWords = Callable[[str], tuple[str, ...]]


class WriteUpPage(ReadingPage):
    """Which car, what the odometer says, what the customer says: then it is a job."""

    taken_in = Signal(int)
    job_wanted = Signal(int)
    heard = Signal(str)  # the concern, whenever it was changed

    def __init__(
        self,
        desk: Desk,
        drafts: Drafts,
        read_symptoms: ReadWords,
        read_conditions: ReadWords,
        promised: Promised = nothing_promised,
        beside_words: QWidget | None = None,
    ) -> None:
        """Take how words are read, what is promised of a job, and what stands beside the words."""
        super().__init__()
        self._desk = desk
        self._drafts = drafts
        self._read_symptoms = read_symptoms
        self._read_conditions = read_conditions
        self._filled_in: dict[QLineEdit, str] = {}  # what the program wrote by itself
        self._missing = False  # the hint says what is missing
        self._which = WhichCar(desk)
        self._known = KnownCarBox(desk, promised)
        self._customer = line_of(tr("Customer"))
        self._phone = line_of(tr("Phone"))
        self._brought = line_of(tr("Brought by, if someone else"))
        self._concern = WordsEdit()
        self._concern.setAccessibleName(tr("What the customer says"))
        self._concern.setFixedHeight(96)
        words = Labelled(tr("In their own words"), self._concern)
        boxes = {"car": self._which.plate_box, "odometer": self._which.odometer_box}
        self._asked = AskedFor({**boxes, "concern": words})
        self._checked_then = CheckedThenBox()
        self._take_in = QPushButton(tr("Take the car in"))
        self._take_in.setObjectName("next")
        self._take_in.setToolTip(tooltip(tr("The visit and its job are written down (Ctrl+Enter)")))
        for keys in ("Ctrl+Return", "Ctrl+Enter"):  # the second is the one beside the numbers
            press_by(self._take_in, keys)
        self._take_in.clicked.connect(self.take_in)
        self._clear = QPushButton(tr("Empty the form"))
        self._clear.clicked.connect(self._empty)
        self._hint = plain_label("", wrap=True)
        self._hint.hide()
        self._lay_out(side_by_side(words, beside_words))
        self._pause = TypingPause(self, self._rested, self.keep_draft, PAUSE_MS)
        self._listen()
        self._bring_draft_back()

    def came_here(self) -> None:
        """Put the cursor where the work begins; an empty form counts in the shop's unit."""
        if not any(line.text() for line in self._lines().values()):
            self._which.shop_unit()
        empty = (line for line in (self._which.plate, self._which.odometer) if not line.text())
        next(empty, self._concern).setFocus()  # what is typed next belongs to nothing that is there
        self._say_heard()

    def start_like(self, job_id: int) -> None:
        """Begin with the words of an old job and what was checked then; what was typed stays."""
        job = self._desk.ask(read_job, job_id)
        if job is None:
            return
        if job.concern not in self._concern.toPlainText():
            self._concern.appendPlainText(job.concern)
        self._concern.moveCursor(QTextCursor.MoveOperation.End)
        self._checked_then.show_job(job)
        self._say(
            tr("These are the words of {number}: make them this customer's own.", number=job.number)
        )
        self._concern.setFocus()

    @Slot()
    def take_in(self) -> None:
        """Make the visit and its job; what is missing is said and nothing typed is lost."""
        self._rested()
        self._missing = True
        asked = self._say_what_is_missing()
        if asked is not None:
            self.go_to(asked)
            return
        said = self._said()
        done = self._desk.do(actions.write_up, said)
        if done is not None and done.made is not None:
            self._keep_answers(done.made)
            self._empty()
            self.taken_in.emit(done.made)

    def go_to(self, about: str) -> None:
        """Go to what is asked for: its field, or what is asked of a car that was here before."""
        self.settle()
        if about == "answer":
            self.bring_up(self._known)
        self._asked.go_to(about)

    def _check_answers(self) -> None:
        asked = self._known.still_asked()
        if asked:
            raise NotSaid("answer", asked, do=tr("Answer that above first."))

    @Slot(int)
    def _add_concern(self, visit: int) -> None:
        """The car is here still: what the customer says is another concern of that visit."""
        said = self._concern.toPlainText()
        if not said.strip():
            self._say(tr("What does the customer say? Write it down below first."))
            self.go_to("concern")
            return
        done = self._desk.do(actions.add_job, visit, said, self._read_symptoms(said))
        if done is None or done.made is None:
            return
        for condition in self._read_conditions(said):
            self._desk.do(actions.tick_condition, done.made, condition, True)
        if self._known.same_trouble.isChecked():
            self._desk.do(actions.say_same_trouble, done.made, same=True)
        unused = self._typed_beside()
        if unused:
            self._desk.told.emit(
                tr(
                    "The concern is added to that visit. Typed here, not kept, for the "
                    "visit has its own: {unused}.",
                    unused=unused,
                )
            )
        self._empty()
        self.taken_in.emit(done.made)

    def _typed_beside(self) -> str:
        """Return what was typed of a visit beside its concern and did not come from the record."""
        known = self._known.known
        by_itself = dict(self._filled_in)
        if known is not None:
            by_itself[self._which.vin] = known.vehicle.vin
        typed = [
            f"{line.accessibleName()} “{line.text().strip()}”"
            for line in self._lines().values()
            if line is not self._which.plate
            and line.text().strip()
            and line.text() != by_itself.get(line)
        ]
        return "; ".join(typed)

    def _keep_answers(self, job_id: int) -> None:
        """Write down what was said to be right as typed, so that nobody is asked again."""
        answered = sorted(self._which.answered)
        job = self._desk.ask(read_job, job_id) if answered else None
        if job is None:
            return
        for question in answered:
            for about in (f"vehicle:{job.vehicle.id}:vin", f"visit:{job.visit_id}:odometer"):
                self._desk.do(actions.keep_as_typed, about, question)

    def _said(self) -> WriteUp:
        which, known = self._which, self._known.known
        concern = self._concern.toPlainText()
        another = known is not None and self._known.is_another
        return WriteUp(
            concern=concern,
            vehicle_id=known.vehicle.id if known is not None and not another else None,
            another_than=known.vehicle.id if known is not None and another else None,
            vin=which.vin.text(),
            plate=which.plate.text(),
            description=which.about.text(),
            odometer_unit=which.unit,
            odometer=which.reading(),
            odometer_unread="" if which.is_read else which.how,
            odometer_source=which.how if which.is_read else "read",
            customer=self._customer.text(),
            phone=self._phone.text(),
            brought_by=self._brought.text(),
            says_same=self._known.same_trouble.isChecked(),
            symptoms=self._read_symptoms(concern),
            conditions=self._read_conditions(concern),
        )

    def _lay_out(self, words_row: QLayout) -> None:
        self.column.addWidget(plain_label(tr("Heard: a car is here"), "title"))
        self.column.addWidget(self._which)
        self.column.addWidget(self._known)
        words = Section(tr("What the customer says"))
        words.column.addLayout(words_row)
        words.column.addWidget(self._checked_then)
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
            line.textEdited.connect(self._pause.typed)
            line.returnPressed.connect(self._next_field)
        self._concern.textChanged.connect(self._pause.typed)
        self._concern.textChanged.connect(self._say_heard)
        self._which.changed.connect(self._rested)
        self._known.decided.connect(self._decided)
        self._known.concern_wanted.connect(self._add_concern)
        self._known.job_wanted.connect(self.job_wanted)
        self._known.same_trouble.clicked.connect(self.keep_draft)

    def _lines(self) -> dict[str, QLineEdit]:
        return {
            "plate": self._which.plate,
            "vin": self._which.vin,
            "about": self._which.about,
            "odometer": self._which.odometer,
            "customer": self._customer,
            "phone": self._phone,
            "brought": self._brought,
        }

    @Slot()
    def _say_heard(self) -> None:
        self.heard.emit(self._concern.toPlainText())

    @Slot()
    def _next_field(self) -> None:
        """Go on to what is still to be said: of a known car its odometer, then the words.

        A question about what was typed lies in nobody's way: the next letters would press it.
        """
        self._rested()
        which, left = self._which, self.sender()
        known = self._known.known is not None and not self._known.is_another
        lines = [which.plate, which.vin, which.about, which.odometer]
        fields = [*lines, self._concern, self._customer, self._phone, self._brought, self._take_in]
        if left in (which.plate, which.vin) and known:
            there: QWidget = which.odometer
        else:
            there = next(to for at, to in pairwise(fields) if at is left)
        there.setFocus(Qt.FocusReason.TabFocusReason)
        self.settle()
        self.ensureWidgetVisible(there, 50, 80)

    @Slot()
    def keep_draft(self) -> None:
        """Keep the whole form as it is now, over closing the program and over a crash."""
        self._pause.stop()
        fields = {name: line.text() for name, line in self._lines().items()}
        fields["concern"] = self._concern.toPlainText()
        if any(fields.values()):
            fields["unit"] = self._which.unit
            fields["checked"] = self._checked_then.words()
            fields["unread"] = self._which.how
            fields["same"] = "yes" if self._known.same_trouble.isChecked() else ""
        self._drafts.keep(FORM, fields)

    @Slot()
    def _rested(self) -> None:
        """Keep the draft, look the car up, and ask about odd entries."""
        self.keep_draft()
        self._look_up()
        known = self._known.known
        odd = self._which.ask(None if self._known.is_another else known)
        self._known.read_now(self._which.read_now())
        if known is not None:
            self._known.ask(against_the_same(known, self._which.typed(), odd))
        if self._missing:
            self._say_what_is_missing()

    def _say_what_is_missing(self) -> str | None:
        """Say what keeps the car from being taken in, and what that is about; None: nothing."""
        about, words = None, ""
        try:
            self._said().check()
            self._check_answers()
        except ShopTrouble as trouble:  # what is typed and can't be is the odometer's reading
            about = trouble.about if isinstance(trouble, NotSaid) else "odometer"
            words = trouble.sentence()
        self._say(words, about=about)
        return about

    def _look_up(self) -> None:
        which, known = self._which, self._known.known
        found = self._desk.ask(find_vehicle, which.plate.text(), which.vin.text())
        if found == (None if known is None else known.vehicle.id):
            return
        if known is not None:
            self._take_back()
            self._known.forget()
        car = None if found is None else self._desk.ask(read_known_car, found)
        if car is not None:
            self._known.show_car(car, self._desk.ask(earlier_jobs, found) or ())
            self._fill_in(car)

    def _fill_in(self, car: KnownCar) -> None:
        """Write what is known of the car into the empty fields; a sold one has another owner."""
        owner = ("", "") if car.sold_on is not None else (car.customer, car.phone)
        lines = (self._which.about, self._customer, self._phone)
        for line, words in zip(lines, (car.vehicle.description, *owner), strict=True):
            if words and not line.text():
                self._filled_in[line] = words
                line.setText(words)
                line.setCursorPosition(0)
        self._which.car_unit(car.unit)

    def _take_back(self) -> None:
        """It is not that car: take back what was filled in for it, and its unit."""
        for line, words in self._filled_in.items():
            if line.text() == words:
                line.clear()
        self._filled_in = {}
        self._which.shop_unit()

    @Slot()
    def _decided(self) -> None:
        """Take back what was filled in, or fill it in again, by what was said."""
        known = self._known.known
        if known is not None and self._known.is_another:
            self._take_back()
        elif known is not None:
            self._fill_in(known)
        self._say("")
        self._rested()

    @Slot()
    def _empty(self) -> None:
        for line in self._lines().values():
            line.clear()
        self._concern.clear()
        self._checked_then.show_words("")
        self._known.same_trouble.setChecked(False)
        self._which.keep_how("read")
        self._which.answered.clear()
        self._filled_in = {}
        self._say("")
        self._rested()
        self._which.plate.setFocus()  # what is typed next is the next car

    def _say(self, words: str, *, about: str | None = None) -> None:
        self._missing = about is not None
        self._asked.mark(about or "", words)
        self._hint.setText(words)
        self._hint.setVisible(bool(words))

    def _bring_draft_back(self) -> None:
        draft = self._drafts.read(FORM)
        for name, line in self._lines().items():
            line.setText(draft.get(name, ""))
        self._concern.setPlainText(draft.get("concern", ""))
        self._which.keep_unit(draft.get("unit", self._which.unit))
        self._which.keep_how(draft.get("unread", "read"))
        self._known.same_trouble.setChecked(draft.get("same") == "yes")
        self._checked_then.show_words(draft.get("checked", ""))
        if draft:
            self._say(tr("This was typed before the program was closed."))
            self._rested()
