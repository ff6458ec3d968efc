"""Gone: what was declined, the odometer out, and the hand-over that starts the window."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QWidget

from desktop_app.language import as_kept, as_shown, tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.distance import distance_in_words
from desktop_app.repair_jobs.hand_over import (
    REFUSED,
    OpenAnswer,
    hand_over_question,
    left_open,
    listed,
    open_answers,
    refit_unanswered,
    still_to_say,
    unanswered_words,
    ways_to_points,
)
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.our_words import NOTHING
from desktop_app.repair_jobs.parts_in_doubt import (
    PartInDoubt,
    doubt_words,
    parts_question,
    ways_to_parts,
)
from desktop_app.repair_jobs.proof import ProofLevel, worth_saying
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import proof_reached, unit_of
from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.screen.odometer_out_box import OdometerOutBox
from desktop_app.repair_jobs.screen.proof_asked_box import ProofAskedBox
from desktop_app.repair_jobs.screen.refused_here import RefusedHere
from desktop_app.repair_jobs.screen.ways_to_answers import WaysToAnswers
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, WordsField, save_everything
from desktop_app.shop_window.notice import Notice
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip

RefitChecks = Callable[[int], Sequence[tuple[str, bool]]]
# The pairs of a job (id, name of the kind) whose new part nobody said the origin of.
OpenOrigins = Callable[[int], Sequence[tuple[int, str]]]


def _no_checks(_job_id: int) -> Sequence[tuple[str, bool]]:
    return ()


class GoneSection(Section):
    """The hand-over; it says what is still missing and never calls a car safe."""

    about_to_leave = Signal()
    answer_wanted = Signal(str, object)  # as `OpenAnswer` says it: about, and a pair or None
    sheet_wanted = Signal(int)

    def __init__(
        self,
        desk: Desk,
        open_origins: OpenOrigins,
        refit_checks: RefitChecks = _no_checks,
        promise: actions.PromiseThen | None = None,
        promised: QWidget | None = None,
    ) -> None:
        """Take what is asked of the job, and where its promise is written: above the button."""
        super().__init__(tr("Gone"))
        self._desk = desk
        self._open_origins = open_origins
        self._refit_checks = refit_checks
        self._promise = promise
        self._job: JobView | None = None
        self._doubted: tuple[int | None, tuple[PartInDoubt, ...]] = (None, ())  # of which job
        self._declined = WordsField(tr("Declined or left undone"), self._save_declined, 2)
        nothing = QPushButton(tr("Nothing"))
        nothing.setAccessibleName(tr("Nothing was declined or left undone"))
        nothing.clicked.connect(self._say_nothing)
        declined = Labelled(tr("Declined or left undone, and what may follow"), self._declined)
        self._holds = WhichHolds(desk, declined)
        self._out = OdometerOutBox(desk)
        self._said = plain_label("", wrap=True)
        self._missing = plain_label("", wrap=True)
        self._missing.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self._told: tuple[str, ...] = ()  # what was missing when the button was pressed
        self._ways = WaysToAnswers()
        self._ways.wanted.connect(self.answer_wanted)
        self._refused = RefusedHere(desk, self)
        self._refused.changed.connect(self._refused_anew)
        self._sheet = QPushButton(tr("The sheet for the customer…"))
        self._sheet.setToolTip(tooltip(tr("The sheet for the counter: look, print, save (Ctrl+P)")))
        self._sheet.clicked.connect(self._sheet_pressed)
        self._leave = QPushButton(tr("Hand the car over"))
        self._leave.setObjectName("next")
        self._leave.clicked.connect(self._hand_over)
        self._asked = ProofAskedBox()
        self._asked.all_the_same.connect(self._let_it_go)
        self._asked.not_yet.connect(self._leave.setFocus)
        grid = QGridLayout()
        grid.addWidget(declined, 0, 0)
        grid.addWidget(nothing, 0, 1)
        grid.addWidget(self._out, 1, 0, 1, 2)
        grid.setColumnStretch(0, 1)
        self.column.addLayout(grid)
        self.column.addWidget(self._said)
        if promised is not None:
            self.column.addWidget(promised)
        self.column.addWidget(self._missing)
        self.column.addWidget(self._ways)
        row = QHBoxLayout()
        row.addWidget(self._leave)
        row.addWidget(self._sheet)
        row.addStretch(1)
        self.column.addLayout(row)
        self.column.addWidget(self._asked)

    def show_job(self, job: JobView) -> None:
        """Show how a job stands before or after its hand-over."""
        if self._job is not None and self._job.id != job.id:
            self._holds.leave()
            self._told = ()
        if not self._question(job) or self._job is None or self._job.id != job.id:
            self._asked.hide()
        self._job = job
        self._out.show_job(job)
        self._holds.show_kept(job.declined, as_shown(job.declined or "", (NOTHING,)))
        if job.proof_level is not None:
            kept = self._desk.ask(read_proof, job.id, ShopUse()) or ProofKept()
            reached = proof_reached(job, kept, ProofLevel(job.proof_level))
            said = " ".join(worth_saying(reached))
            self._said.setText(tr("To say at hand-over: {said}", said=said) if said else "")
        else:
            self._said.setText("")
        self._said.setVisible(bool(self._said.text()))
        self._show_hand_over(job)

    def _show_hand_over(self, job: JobView) -> None:
        gone = job.left_on is not None
        self._leave.setVisible(not gone)
        self._sheet.setVisible(gone)
        missing = () if gone else self._open_answers(job)
        left = () if gone else left_open(job, anybody=bool(self._desk.ask(people_here)))
        self._refused.look()
        refused = () if gone else self._refused.answers()
        parts = () if gone else self._parts()
        points = () if gone else refit_unanswered(job, self._refit_checks(job.id))
        to_look_at = (*ways_to_parts(parts), *ways_to_points(points))
        self._ways.show_answers((*refused, *missing, *left, *to_look_at))
        words = tuple(one.words for one in (*refused, *missing))
        if words != self._told:
            self._told = ()  # something of it is answered: it is not asked for any more as it was
        if gone:
            day = day_in_words(date.fromisoformat(str(job.left_on)))
            if job.odometer_out is None:
                said = tr("Left on {day}. Under watch from then on.", day=day)
            else:
                said = tr(
                    "Left on {day} at {reading}. Under watch from then on.",
                    day=day,
                    reading=distance_in_words(job.odometer_out, unit_of(job)),
                )
            self._missing.setText(said)
            return
        unanswered = unanswered_words(len(points), sum(hurts for _, hurts in points))
        passed_by = (doubt_words(parts), unanswered)
        open_ones = still_to_say(refused, missing, left, passed_by=any(passed_by))
        self._missing.setText("\n".join(one for one in (open_ones, *passed_by) if one))

    @Slot(int, object)
    def show_doubted(self, job_id: int, parts: tuple[PartInDoubt, ...]) -> None:
        """Show which of a job's parts go with the car in doubt."""
        if self._doubted != (job_id, parts):
            self._doubted = job_id, parts
            if self._job is not None and self._job.id == job_id:
                self._show_hand_over(self._job)

    def _parts(self) -> tuple[PartInDoubt, ...]:
        job_id, parts = self._doubted
        return parts if self._job is not None and self._job.id == job_id else ()

    @Slot()
    def _refused_anew(self) -> None:
        if self._job is not None:
            self._show_hand_over(self._job)

    def _open_answers(self, job: JobView) -> tuple[OpenAnswer, ...]:
        return open_answers(job, tuple(self._open_origins(job.id)))

    def answer_field(self, about: str, pair: int | None) -> QWidget | None:
        """Return where it is said what was declined, or a field that stands refused."""
        if about == REFUSED and pair is not None:
            return self._refused.field(pair)
        return self._declined if about == "declined" else None

    def _question(self, job: JobView) -> str:
        parts = parts_question(self._parts())
        checks = hand_over_question(job, self._refit_checks(job.id))
        return "\n".join(one for one in (parts, checks) if one)

    def _save_declined(self, words: str) -> object:
        if self._job is None:
            return None
        said = as_kept(words, (NOTHING,))
        return self._holds.save(said.strip() or None, actions.say_declined, self._job.id, said)

    @Slot()
    def _say_nothing(self) -> None:
        if self._job is not None:
            self._declined.setPlainText(tr(NOTHING))
            self._declined.save_now()

    @Slot()
    def _hand_over(self) -> None:
        if self._job is None:
            return
        self.about_to_leave.emit()
        save_everything(self.window())
        job = self._job
        if not self._out.is_settled():
            return
        self._refused.look(at_all=True)
        self._show_hand_over(job)
        refused = tuple(one.words for one in self._refused.answers())
        missing = tuple(one.words for one in self._open_answers(job))
        if refused or missing:
            self._say_missing(refused, missing)
            return
        question = self._question(job)
        if question:
            self._asked.ask(question)
            return
        self._let_it_go()

    def _say_missing(self, refused: tuple[str, ...], missing: tuple[str, ...]) -> None:
        """Say what must be said first, and go to the ways there; it is told until one is gone."""
        told = self._told = (*refused, *missing)
        said = []
        if refused:
            said.append(
                tr("Before the car leaves, mend or empty: {listed}.", listed=listed(refused))
            )
        if missing:
            said.append(tr("Before the car leaves, say {listed}.", listed=listed(missing)))
        self._desk.told.emit(
            Notice(
                " ".join(said),
                kept="" if refused else tr("Everything so far is kept."),
                do=tr("The buttons above “Hand the car over” lead there."),
                holds=lambda: self._told == told,
            )
        )
        self._ways.setFocus()

    @Slot()
    def _let_it_go(self) -> None:
        if self._job is None or not self._out.is_settled():
            return
        job, reading = self._job, self._out.reading()
        missing = tuple(one.words for one in self._open_answers(job))
        self._missing.setFocus()  # the button goes: the page stays, and no key does anything
        left = self._desk.do(actions.hand_over, job.id, reading, missing, promise=self._promise)
        if left is not None:
            self._desk.told.emit(
                tr("{number} is handed over. It is under watch from now on.", number=job.number)
            )

    @Slot()
    def _sheet_pressed(self) -> None:
        if self._job is not None:
            self.sheet_wanted.emit(self._job.id)
