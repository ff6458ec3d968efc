"""A car that was here before: what is known of it, its jobs, and whether it is the same car."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import EarlierJob
from desktop_app.repair_jobs.known_car import KnownCar
from desktop_app.repair_jobs.odometer import OdometerReading
from desktop_app.repair_jobs.screen.still_here_box import StillHereBox
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Tick
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip

# What is said of the promise for an earlier job (by its id), such as that its window still runs,
# where the odometer says this now.
Promised = Callable[[int, OdometerReading | None], str]


def nothing_promised(_job_id: int, _reading: OdometerReading | None) -> str:
    """Say nothing of promises."""
    return ""


class KnownCarBox(Section):
    """The car that a plate or a VIN found; a person says whether it is this one."""

    job_wanted = Signal(int)
    concern_wanted = Signal(int)  # of the visit with this id, for the car is still in the shop
    decided = Signal()

    def __init__(self, desk: Desk, promised: Promised = nothing_promised) -> None:
        super().__init__(tr("This car was here before"))
        self._desk = desk
        self._promised = promised
        self.known: KnownCar | None = None
        self.is_another = False
        self._agreed: frozenset[str] = frozenset()
        self._reasons: tuple[str, ...] = ()
        self._reading: OdometerReading | None = None
        self._told: dict[int, tuple[str, QLabel]] = {}  # by job, what was done and where it stands
        self._line = plain_label("", wrap=True)
        self._question = QFrame()
        self._question.setObjectName("question")
        self._against = plain_label("", wrap=True)
        self._same = QPushButton(tr("The same car"))
        self._same.clicked.connect(self._say_same)
        self._another = QPushButton(tr("Another car"))
        self._another.clicked.connect(self._say_another)
        asked = QVBoxLayout(self._question)
        asked.addWidget(self._against)
        answers = QHBoxLayout()
        answers.addWidget(self._same)
        answers.addWidget(self._another)
        answers.addStretch(1)
        asked.addLayout(answers)
        self._here = StillHereBox()
        self._here.concern_wanted.connect(self.concern_wanted)
        self._here.again.connect(self.decided)
        self._not_this_one = QPushButton(tr("It is another car"))
        self._not_this_one.clicked.connect(self._say_another)
        self._jobs = QVBoxLayout()
        self.same_trouble = Tick(tr("It is the same trouble as before, says the customer"))
        self.same_trouble.setToolTip(tooltip(tr("Said here, judged later (Ctrl+T)")))
        same = self.same_trouble
        says = tr("it is the same trouble, says the customer")
        on_key(same, "Ctrl+T", says, same.click)
        trouble = QHBoxLayout()
        trouble.addWidget(self.same_trouble)
        trouble.addWidget(self._not_this_one)
        trouble.addStretch(1)
        self.column.addWidget(self._line)
        self.column.addWidget(self._question)
        self.column.addWidget(self._here)
        self.column.addLayout(self._jobs)
        self.column.addLayout(trouble)
        self.hide()

    def show_car(self, known: KnownCar, jobs: Sequence[EarlierJob]) -> None:
        """Show a car that was found; what was said of another one is forgotten."""
        self.known, self.is_another, self._agreed = known, False, frozenset()
        self._line.setText(known.in_words(self._desk.today()))
        self._here.show_here(known.still_here)
        empty(self._jobs)
        self._told.clear()
        for job in jobs:
            self._jobs.addWidget(self._job_line(job))
        self.ask(())
        self.show()

    def read_now(self, reading: OdometerReading | None) -> None:
        """Hold what was promised against what the odometer says now; None: nobody said it."""
        if reading != self._reading:
            self._reading = reading
            for job_id in self._told:
                self._say_promised(job_id)

    def forget(self) -> None:
        """No car is known by what is typed."""
        self.known, self.is_another, self._agreed = None, False, frozenset()
        self._reasons = ()
        self._told.clear()
        self._here.show_here(None)
        self.hide()

    def ask(self, against: Sequence[str]) -> None:
        """Ask whether it is the same car where something speaks against it."""
        self._reasons = tuple(against)
        if self.is_another:
            said = tr("Taken for another car with this plate; what is written of this one stays.")
        else:
            said = " ".join((*against, tr("Is it the same car?")))
        self._against.setText(said)
        self._another.setVisible(not self.is_another)
        self._question.setVisible(self.is_another or self._is_doubted())
        self._here.see(same=not self.is_another and not self._is_doubted())
        self._not_this_one.setVisible(not (self.is_another or self._is_doubted()))
        self._jobs_seen(not self.is_another)

    def still_asked(self) -> str:
        """Return what is asked of this car and nobody has answered; "" where nothing is."""
        if self._is_doubted():
            return tr("Is it the same car?")
        if not self.is_another and self._here.is_open():
            return tr("The car is still in the shop by the record.")
        return ""

    def _is_doubted(self) -> bool:
        """Tell whether something speaks against the same car that nobody has answered."""
        return not self.is_another and not self._agreed.issuperset(self._reasons)

    def _jobs_seen(self, seen: bool) -> None:
        self.same_trouble.setVisible(seen)
        if not seen:
            self.same_trouble.setChecked(False)

    def _job_line(self, job: EarlierJob) -> QWidget:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        button = QPushButton(f"{job.number}, {_ago(job, self._desk)}")
        button.setProperty("job", job.id)
        button.setAccessibleName(tr("Open the earlier job {number}", number=job.number))
        button.clicked.connect(self._open)
        row.addWidget(button)
        done = f"  →  {job.correction}" if job.correction else ""
        words = f"{job.concern}{done}"[:300]
        label = plain_label("", wrap=True)
        self._told[job.id] = words, label
        self._say_promised(job.id)
        row.addWidget(label, 1)
        return line

    def _say_promised(self, job_id: int) -> None:
        words, label = self._told[job_id]
        promised = self._promised(job_id, self._reading)
        label.setText(f"{words}\n{promised}" if promised else words)

    @Slot()
    def _open(self) -> None:
        self.job_wanted.emit(int(self.sender().property("job")))

    @Slot()
    def _say_same(self) -> None:
        self._agreed |= frozenset(self._reasons)
        self.is_another = False
        self.decided.emit()

    @Slot()
    def _say_another(self) -> None:
        self.is_another = True
        self.decided.emit()


def _ago(job: EarlierJob, desk: Desk) -> str:
    day = desk.today().fromisoformat(job.left_on or job.came_on)
    days = (desk.today() - day).days
    if days <= 0:
        return tr("today")
    return tr("yesterday") if days == 1 else tr("{days} days ago", days=days)
