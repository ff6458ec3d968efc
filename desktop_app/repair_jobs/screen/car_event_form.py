"""The form in which it is noted what happened to a car, with what is asked about it."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import odometer_actions
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.entry_bounds import check_day
from desktop_app.repair_jobs.job_view import VehicleSeen
from desktop_app.repair_jobs.stored_questions import odometer_asked
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.shop_record.question import Question
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, QuestionLine
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.typing_pause import TypingPause


class _Words(NamedTuple):
    """What is typed into the form; kept while another car's job is shown, and over a crash."""

    kind: int
    day: str
    before: str
    after: str
    note: str

    def more_than_a_day(self) -> bool:
        """Tell whether more stands there than what the form begins with."""
        return any((self.before, self.after, self.note))


class CarEventForm(QWidget):
    """An event of one car; only a replaced odometer asks for readings."""

    noted = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._car: VehicleSeen | None = None
        self._drafts = Drafts(desk.record.folder)
        self._right: str | None = None
        self._kind = ChoiceList()
        for kind in odometer_actions.EVENT_KINDS:
            self._kind.addItem(tr(kind), kind)
        self._kind.currentIndexChanged.connect(self._fit)
        self._day, self._before, self._after, self._note = (QLineEdit() for _ in range(4))
        self._pause = TypingPause(self, self.keep_draft)
        for field in (self._day, self._before, self._after, self._note):
            field.textEdited.connect(self._pause.typed)
        self._hint = plain_label("", wrap=True)
        self._odd = QuestionLine()
        self._odd.kept.connect(self._right_as_typed)
        button = QPushButton(tr("Note it"))
        button.setAccessibleName(tr("Note what happened to the car"))
        button.clicked.connect(self._write)
        self._readings = (
            Labelled(
                tr("The old odometer's last reading"), self._before, tr("empty: nobody knows")
            ),
            Labelled(tr("The new one's first reading"), self._after, tr("empty: nobody knows")),
        )
        grid = QGridLayout()
        boxes = (
            Labelled(tr("What happened"), self._kind),
            Labelled(tr("On which day"), self._day, tr("like 2026-11-16")),
            *self._readings,
            Labelled(tr("Note"), self._note),
        )
        for place, box in enumerate(boxes):
            grid.addWidget(box, place // 3, place % 3)
        grid.addWidget(button, 1, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(grid)
        column.addWidget(self._hint)
        column.addWidget(self._odd)

    def show_car(self, car: VehicleSeen) -> bool:
        """Be the form of this car; True where something typed for it is not noted yet."""
        self.keep_draft()
        self._car = car
        draft = self._drafts.read(_form(car.id))
        self._show(_of(draft) if draft else self._empty())
        return bool(draft)

    def keep_draft(self) -> None:
        """Keep what is typed for this car and not noted yet."""
        self._pause.stop()
        if self._car is not None:
            words = self._words()
            typed = words._asdict() if words.more_than_a_day() else {}
            draft = {name: str(said) for name, said in typed.items()}
            if draft != self._drafts.read(_form(self._car.id)):
                self._drafts.keep(_form(self._car.id), draft)

    def begin(self) -> None:
        """Offer this day, unless something is typed already."""
        if not self._words().more_than_a_day():
            self._day.setText(self._desk.today().isoformat())

    def _words(self) -> _Words:
        fields = (self._day, self._before, self._after, self._note)
        return _Words(self._kind.currentIndex(), *(field.text() for field in fields))

    def _empty(self) -> _Words:
        return _Words(0, self._desk.today().isoformat(), "", "", "")

    def _show(self, words: _Words) -> None:
        self._kind.setCurrentIndex(words.kind)
        fields = (self._day, self._before, self._after, self._note)
        for field, text in zip(fields, words[1:], strict=True):
            field.setText(text)
        self._say("")
        self._odd.ask(None)

    @Slot()
    def _fit(self) -> None:
        """Ask for readings only where there were two odometers."""
        self._pause.start()
        for box in self._readings:
            box.setVisible(self._kind.currentData() == "odometer replaced")

    @Slot(str)
    def _right_as_typed(self, question: str) -> None:
        self._right = question
        self._write()

    @Slot()
    def _write(self) -> None:
        if self._car is None:
            return
        replaced = self._kind.currentData() == "odometer replaced"
        unit: DistanceUnit = "km" if self._car.odometer_unit == "km" else "mi"
        texts = [f.text().strip() if replaced else "" for f in (self._before, self._after)]
        day = self._day.text().strip()
        try:
            check_day(day, self._desk.today())
            before, after = (read_odometer(text, unit) if text else None for text in texts)
        except ShopTrouble as trouble:
            self._say(trouble.sentence())
            return
        self._say("")
        question = self._asked(before, day)
        self._odd.ask(question)
        if question:
            return
        done = self._desk.do(
            odometer_actions.note_vehicle_event,
            *(self._car.id, str(self._kind.currentData()), day, before, after),
            self._note.text().strip(),
        )
        if done is not None:
            self._show(self._empty())
            self.keep_draft()
            self.noted.emit()

    def _asked(self, before: int | None, day: str) -> Question | None:
        """Return what is odd about the old odometer's last reading, unless it was answered."""
        if before is None or self._car is None:
            return None
        today = self._desk.today()
        odd = self._desk.ask(odometer_asked, self._car.id, before, check_day(day, today), today)
        question = None if odd is None else odd.asked
        return None if question is None or question.kept == self._right else question

    def _say(self, words: str) -> None:
        self._hint.setText(words)
        self._hint.setVisible(bool(words))


def _form(car: int) -> str:
    return f"car-event-{car}"


def _of(draft: dict[str, str]) -> _Words:
    """Return the words of a draft; a kind that a hand wrote into its file is the first one."""
    kinds = {str(place): place for place in range(len(odometer_actions.EVENT_KINDS))}
    lines = (draft.get(name, "") for name in _Words._fields[1:])
    return _Words(kinds.get(draft.get("kind", ""), 0), *lines)
