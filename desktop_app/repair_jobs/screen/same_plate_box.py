"""A plate that another car has too: is it the same car? Asked as it is at the counter."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.repair_jobs import vehicle_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.known_car import KnownCar
from desktop_app.repair_jobs.stored_same_plate import same_plate_asked
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label


class SamePlateBox(QFrame):
    """The question with its two answers; hidden where no other car has the plate."""

    def __init__(self, desk: Desk, may: vehicle_actions.MayPart | None = None) -> None:
        super().__init__()
        self.setObjectName("question")
        self._desk = desk
        self._may = may
        self._job: JobView | None = None
        self._other: KnownCar | None = None
        self._says = plain_label("", wrap=True)
        same, another = QPushButton(tr("The same car")), QPushButton(tr("Another car"))
        same.clicked.connect(self._say_same)
        another.clicked.connect(self._say_another)
        answers = QHBoxLayout()
        answers.addWidget(same)
        answers.addWidget(another)
        answers.addStretch(1)
        column = QVBoxLayout(self)
        column.addWidget(self._says)
        column.addLayout(answers)
        self.hide()

    def show_job(self, job: JobView) -> None:
        """Ask about the plate of a job's car, where another car has it too."""
        self._job, self._other = job, self._desk.ask(same_plate_asked, job)
        self.setVisible(self._other is not None)
        if self._other is not None:
            known = self._other.in_words(self._desk.today())
            self._says.setText(
                tr(
                    "Another car is written down with this plate: {known}. Is it the same "
                    "car? Its visits count as this car's until somebody says that it is "
                    "another.",
                    known=known,
                )
            )

    @Slot()
    def _say_same(self) -> None:
        if self._job is not None and self._other is not None:
            cars = (self._job.vehicle.id, self._other.vehicle.id)
            self._desk.do(vehicle_actions.say_one_car, *cars)

    @Slot()
    def _say_another(self) -> None:
        if self._job is not None and self._other is not None:
            deed = vehicle_actions.say_two_cars
            self._desk.do(deed, self._job.visit_id, self._other.vehicle.id, self._may)
