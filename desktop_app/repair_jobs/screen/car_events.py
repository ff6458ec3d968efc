"""What happened to the car itself: its odometer was replaced, it was sold."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox, QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.stored_reading import events_of
from desktop_app.repair_jobs.typed_entry import read_odometer
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
        for day, kind, note in self._desk.ask(events_of, job.vehicle.id) or ():
            words = f"{day_in_words(date.fromisoformat(day))}: {kind}. {note}".strip()
            self._known.addWidget(plain_label(words, wrap=True))

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
            before, after = _reading(self._before.text()), _reading(self._after.text())
        except ShopTrouble as trouble:
            self._hint.setText(trouble.sentence())
            return
        self._hint.setText("")
        done = self._desk.do(
            actions.note_vehicle_event,
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


def _reading(text: str) -> int | None:
    return read_odometer(text) if text.strip() else None
