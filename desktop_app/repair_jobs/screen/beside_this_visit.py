"""The other visits that share a job's car, and the way out where they were another car's."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import vehicle_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored_known_car import jobs_beside
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label, tooltip

MOST_NAMED = 4


class BesideThisVisit(QWidget):
    """One line; hidden where the car was here this once."""

    def __init__(self, desk: Desk, may: vehicle_actions.MayPart | None = None) -> None:
        super().__init__()
        self._desk = desk
        self._may = may
        self._job: JobView | None = None
        self._says = plain_label("", "quiet", wrap=True)
        self._another = QPushButton(tr("This was another car"))
        self._another.setToolTip(
            tooltip(tr("This visit gets a car of its own with the same plate; Undo takes it back"))
        )
        self._another.clicked.connect(self._say_another)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._says, 1)
        row.addWidget(self._another)

    def show_job(self, job: JobView) -> None:
        """Show which other jobs stand on the same car."""
        self._job = job
        numbers = self._desk.ask(jobs_beside, job.vehicle.id, job.visit_id) or ()
        self._says.setText(
            tr("What is written of the car stands on {jobs} too.", jobs=_listed(numbers))
        )
        self.setVisible(bool(numbers))

    @Slot()
    def _say_another(self) -> None:
        if self._job is None:
            return
        number = self._job.number
        deed = vehicle_actions.say_another_car
        if self._desk.do(deed, self._job.visit_id, self._may) is not None:
            self._desk.told.emit(
                tr(
                    "{number} stands on a car of its own now, with the same plate. Its VIN "
                    "and what kind of car it is are still to be written.",
                    number=number,
                )
            )


def _listed(numbers: tuple[str, ...]) -> str:
    named = list(numbers[-MOST_NAMED:])
    if len(numbers) > MOST_NAMED:
        named.insert(0, tr("{count} earlier jobs", count=len(numbers) - MOST_NAMED))
    if len(named) < 2:
        return "".join(named)
    return tr("{all_but_last} and {last}", all_but_last=", ".join(named[:-1]), last=named[-1])
