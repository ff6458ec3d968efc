"""What happened to the car itself: its odometer was replaced, it was sold."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.repair_jobs import odometer_actions
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.job_view import EventSeen, JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.stored_reading import events_of
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, Tick
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.texts import plain_label

KINDS = ("odometer replaced", "sold")


class CarEvents(QWidget):
    """The events that are known, and a form for another, folded away until it is wanted."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._known = QVBoxLayout()
        self._open = Tick("Odometer replaced, or car sold")
        self._open.toggled.connect(self._fold)
        self._kind = QComboBox()
        self._kind.addItems(KINDS)
        self._day = QLineEdit()
        self._before = QLineEdit()
        self._after = QLineEdit()
        self._note = QLineEdit()
        self._hint = plain_label("", wrap=True)
        button = QPushButton("Note it")
        button.setAccessibleName("Note what happened to the car")
        button.clicked.connect(self._write)
        self._form = QWidget()
        grid = QGridLayout(self._form)
        grid.setContentsMargins(0, 0, 0, 0)
        fields = (
            ("What happened", self._kind, ""),
            ("On which day", self._day, "like 2026-11-16"),
            ("The old odometer's last reading", self._before, "empty: nobody knows"),
            ("The new one's first reading", self._after, "empty: nobody knows"),
            ("Note", self._note, ""),
        )
        for place, (name, field, hint) in enumerate(fields):
            grid.addWidget(Labelled(name, field, hint), place // 3, place % 3)
        grid.addWidget(button, 1, 2)
        grid.addWidget(self._hint, 2, 0, 1, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._known)
        column.addWidget(self._open)
        column.addWidget(self._form)
        self._form.hide()

    def show_job(self, job: JobView) -> None:
        """Show what is known of the job's car."""
        if self._job is not None and self._job.vehicle.id != job.vehicle.id:
            self._open.setChecked(False)
            for field in (self._day, self._before, self._after, self._note):
                field.clear()
        self._job = job
        empty(self._known)
        for event in self._desk.ask(events_of, job.vehicle.id) or ():
            self._known.addWidget(self._line(event, job.vehicle.odometer_unit))

    def _line(self, event: EventSeen, unit: str) -> QWidget:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        words = _in_words(event, unit)
        row.addWidget(plain_label(words, wrap=True), 1)
        out = QPushButton("Take it out")
        out.setAccessibleName(f"Take it out: {words}")
        out.setProperty("event", event.id)
        out.clicked.connect(self._strike)
        row.addWidget(out)
        return line

    @Slot()
    def _strike(self) -> None:
        event = int(self.sender().property("event"))
        self._desk.do(odometer_actions.strike_vehicle_event, event)

    @Slot(bool)
    def _fold(self, shown: bool) -> None:
        self._form.setVisible(shown)
        if shown and not self._day.text():
            self._day.setText(self._desk.today().isoformat())

    @Slot()
    def _write(self) -> None:
        if self._job is None:
            return
        try:
            day = _day(self._day.text())
            unit: DistanceUnit = "km" if self._job.vehicle.odometer_unit == "km" else "mi"
            before = _reading(self._before.text(), unit)
            after = _reading(self._after.text(), unit)
        except ShopTrouble as trouble:
            self._hint.setText(trouble.sentence())
            return
        self._hint.setText("")
        done = self._desk.do(
            odometer_actions.note_vehicle_event,
            self._job.vehicle.id,
            self._kind.currentText(),
            day,
            before,
            after,
            self._note.text().strip(),
        )
        if done is not None:
            for field in (self._day, self._before, self._after, self._note):
                field.clear()
            self._open.setChecked(False)


def _day(text: str) -> str:
    try:
        return date.fromisoformat(text.strip()).isoformat()
    except ValueError as error:
        raise ShopTrouble(f"“{text}” is not a day.", do="Type it like 2026-11-16.") from error


def _reading(text: str, unit: DistanceUnit) -> int | None:
    return read_odometer(text, unit) if text.strip() else None


def _in_words(event: EventSeen, unit: str) -> str:
    said = f"{day_in_words(kept_day(event.on))}: {event.kind}"
    if event.kind == "odometer replaced":
        before, after = (
            "not known" if value is None else f"{value:,} {unit}"
            for value in (event.before, event.after)
        )
        said = f"{said}, the old one at {before}, the new one at {after}"
    return f"{said}. {event.note}".strip()
