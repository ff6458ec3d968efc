"""What happened to the car itself: its odometer was replaced, it was sold."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs import odometer_actions
from desktop_app.repair_jobs.job_view import EventSeen, JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.screen.car_event_form import CarEventForm
from desktop_app.repair_jobs.stored_reading import events_of
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Tick
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.texts import plain_label


class CarEvents(QWidget):
    """The events that are known, and a form for another, folded away until it is wanted."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._known = QVBoxLayout()
        self._open = Tick(tr("Odometer replaced, or car sold"))
        self._form = CarEventForm(desk)
        self._open.toggled.connect(self._unfold)
        self._form.noted.connect(self._fold)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._known)
        column.addWidget(self._open)
        column.addWidget(self._form)
        self._form.hide()

    def show_job(self, job: JobView) -> None:
        """Show what is known of the job's car; the form is open only where it was typed into."""
        if self._job is None or self._job.id != job.id:
            self._open.setChecked(self._form.show_car(job.vehicle))
        self._job = job
        empty(self._known)
        for event in self._desk.ask(events_of, job.vehicle.id) or ():
            self._known.addWidget(self._line(event, job.vehicle.odometer_unit))

    def keep_draft(self) -> None:
        """Keep what is typed and not noted yet."""
        self._form.keep_draft()

    @Slot(bool)
    def _unfold(self, shown: bool) -> None:
        if shown:
            self._form.begin()
        self._form.setVisible(shown)

    @Slot()
    def _fold(self) -> None:
        self._open.setChecked(False)

    def _line(self, event: EventSeen, unit: str) -> QWidget:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        words = _in_words(event, unit)
        row.addWidget(plain_label(words, wrap=True), 1)
        out = QPushButton(tr("Take it out"))
        out.setAccessibleName(tr("Take it out: {words}", words=words))
        out.setProperty("event", event.id)
        out.clicked.connect(self._strike)
        row.addWidget(out)
        return line

    @Slot()
    def _strike(self) -> None:
        event = int(self.sender().property("event"))
        self._desk.do(odometer_actions.strike_vehicle_event, event)


def _in_words(event: EventSeen, unit: str) -> str:
    said = f"{day_in_words(kept_day(event.on))}: {tr(event.kind)}"
    if event.kind == "odometer replaced":
        before, after = (
            tr("not known") if value is None else f"{figure(value, ',')} {unit}"
            for value in (event.before, event.after)
        )
        said = tr(
            "{what}, the old one at {before}, the new one at {after}",
            what=said,
            before=before,
            after=after,
        )
    return f"{said}. {event.note}".strip()
