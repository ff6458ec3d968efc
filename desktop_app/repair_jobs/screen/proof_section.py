"""Proof: how far the repair was proved before the car leaves."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.hand_over import LEFT, WRITE_UP_ANEW
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import (
    CODES_READ,
    RECORDED_LEVELS,
    ProofLevel,
    WhyNot,
    why_not_offered,
    worth_saying,
)
from desktop_app.repair_jobs.proof_checks import maker_first, proof_checks
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import (
    codes_to_say,
    conditions_told,
    level_words,
    proof_reached,
    readings_doubted,
)
from desktop_app.repair_jobs.screen.caught_here_rows import CaughtHereRows
from desktop_app.repair_jobs.screen.check_list import CheckList
from desktop_app.repair_jobs.screen.code_rows import CodeRows
from desktop_app.repair_jobs.screen.conditions_met_row import ConditionsMetRow
from desktop_app.repair_jobs.screen.done_by_field import IF_ANOTHER, DoneByField
from desktop_app.repair_jobs.screen.proof_steps_row import ProofStepsRow
from desktop_app.repair_jobs.screen.readiness_rows import ReadinessRows
from desktop_app.repair_jobs.screen.road_test_fields import RoadTestFields
from desktop_app.repair_jobs.screen.shop_use import shop_use
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

WHY_LOCKED = " ".join(
    (
        LEFT,
        WRITE_UP_ANEW,
        tr("One that was handed over by mistake: undo that entry in the job's History."),
    )
)
CHOSEN_BEYOND = tr("“Same conditions” is chosen, and not every condition is written down as met.")
LINES_OF_LEVEL = 2  # that are said of most
# What the fitted parts of a job ask for as proof, beside what its system asks for.
AskedByParts = Callable[[int], Sequence[str]]


def _nothing_asked(_job_id: int) -> Sequence[str]:
    return ()


class ProofSection(Section):
    """The order of the work, what was driven and read, and the level reached."""

    def __init__(self, desk: Desk, asked_by_parts: AskedByParts = _nothing_asked) -> None:
        super().__init__(tr("Proof"))
        self._desk = desk
        self._asked_by_parts = asked_by_parts
        self._job: JobView | None = None
        self._steps = ProofStepsRow(desk)
        self._list = CheckList(desk, "proof")
        self._enough = plain_label("", "quiet", wrap=True)
        self._conditions = ConditionsMetRow(desk)
        self._drive = RoadTestFields(desk)
        self._codes = CodeRows(desk, "after repair")
        self._readiness = ReadinessRows(desk)
        self._readings = plain_label("", wrap=True)
        self._means = plain_label("", wrap=True)
        self._means.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._why_not = plain_label("", "quiet", wrap=True)
        self._caught = CaughtHereRows(desk)
        self._levels = QButtonGroup(self)
        self._levels.setExclusive(True)
        self._level_row = self._levels_in_a_row()
        self._who = DoneByField(desk, "proved")
        self._closed_once_left = (
            *(self._steps, self._list, self._conditions, self._drive, self._codes),
            *(self._readiness, self._level_row),
        )
        self._why_locked = plain_label(WHY_LOCKED, wrap=True)
        for widget in (
            self._why_locked,
            plain_label(tr("The order in which nothing is lost")),
            self._steps,
            plain_label(maker_first(), "quiet", wrap=True),
            self._list,
            self._conditions,
            self._drive,
            plain_label(tr("Codes read after the repair")),
            self._codes,
            self._readiness,
            self._readings,
            plain_label(tr("How far was it proved?")),
            self._enough,
            self._level_row,
            self._why_not,
            self._means,
            self._caught,
        ):
            self.column.addWidget(widget)
        who = Labelled(self._who.accessibleName(), self._who, IF_ANOTHER)
        place = self.column.indexOf(self._level_row) + 1
        row = QHBoxLayout()  # a place at the left alone would give it the height of a wide one
        row.addWidget(who)
        row.addStretch(1)
        self.column.insertLayout(place, row)

    def show_job(self, job: JobView) -> None:
        """Show what was proved on a job."""
        self._job = job
        kept: ProofKept = self._desk.ask(read_proof, job.id, shop_use(self._desk)) or ProofKept()
        self._who.show_job(job)
        locked = WHY_LOCKED if job.left_at is not None else ""
        self._steps.show_steps(job.id, kept, locked)
        checks = proof_checks(job.system)
        # What belongs to the drive comes last: what is asked of it stands right beneath.
        asked = (*checks.bay, CODES_READ, *self._asked_by_parts(job.id), *checks.road)
        shown = job.proof_points(asked)
        on_the_drive = next((one for one in shown if one in checks.road), "")
        besides = next((one for one in shown if one not in asked), "")
        headings = {
            shown[0]: tr("Before the drive and after it"),
            on_the_drive: tr("The drive"),
            besides: tr("Answered besides these"),
        }
        self._list.show_checks(job, [(words, False) for words in shown], headings)
        self._enough.setText(tr("Enough when: {enough}", enough=tr(checks.enough)))
        self._conditions.show_job(job, kept)
        self._drive.show_job(job, kept)
        self._codes.show_job(job)
        self._readiness.show_job(job, kept)
        doubted = (f"⚠  {words}" for words in readings_doubted(job, kept))
        said = (*codes_to_say(job, kept), *doubted)
        self._readings.setText("\n".join(said))
        self._readings.setVisible(bool(said))
        self._show_level(job, kept)
        self._caught.show_job(job, kept)
        for widget in self._closed_once_left:
            off_because(widget, locked)
        self._why_locked.setVisible(job.left_at is not None)

    def answer_field(self, about: str, _pair: int | None) -> QWidget | None:
        """Return where it is said how far the repair was proved."""
        return self._level_stop() if about == "proof" else None

    def _show_level(self, job: JobView, kept: ProofKept) -> None:
        told = conditions_told(job)
        not_met = [name for name, met in kept.conditions.items() if not met]
        why_not: dict[ProofLevel, WhyNot | None] = {
            level: why_not_offered(level, told, not_met) for level in RECORDED_LEVELS
        }
        reasons = " ".join(f"{one.what} {one.do}" for one in why_not.values() if one)
        self._why_not.setText(reasons if job.left_at is None else "")
        self._why_not.setVisible(bool(self._why_not.text()))
        for button in self._levels.buttons():
            level = ProofLevel(self._levels.id(button))
            unfit = why_not[level]
            why = f"{unfit.what} {unfit.do}" if unfit is not None else ""
            off_because(button, why if job.left_at is None else WHY_LOCKED, level.means)
            button.setText(level_words(level, kept.conditions, told))
            chosen = int(level) == job.proof_level
            if chosen != button.isChecked():
                self._levels.setExclusive(False)
                button.setChecked(chosen)
                self._levels.setExclusive(True)
        self._stop_at_one_level()
        if job.proof_level is None:
            self._means.setText("")
        else:
            level = ProofLevel(job.proof_level)
            reached = proof_reached(job, kept, level)
            said = [one for one in worth_saying(reached) if one not in reached.doubts]
            plain = " ".join(one for one in (reached.means, *said) if one)
            beyond = (CHOSEN_BEYOND,) if reached.chosen_beyond else ()
            doubts = (f"⚠  {words}" for words in (*beyond, *reached.doubts))
            self._means.setText("\n".join(one for one in (plain, *doubts) if one))
        # As high before a level is chosen: what is below stays where it is.
        self._means.setMinimumHeight(LINES_OF_LEVEL * self._means.fontMetrics().lineSpacing())

    def _level_stop(self) -> QAbstractButton | None:
        """Return the level that is chosen, or else the lowest: nobody is led to a claim."""
        lowest = (one for one in self._levels.buttons() if one.isEnabled())
        return self._levels.checkedButton() or next(lowest, None)

    def _stop_at_one_level(self) -> None:
        """Let Tab stop at one level; Qt would stop where it did in the job shown before."""
        stop = self._level_stop()
        for button in self._levels.buttons():
            policy = Qt.FocusPolicy
            button.setFocusPolicy(policy.StrongFocus if button is stop else policy.ClickFocus)

    def _levels_in_a_row(self) -> QWidget:
        box = QWidget()
        row = FlowRow(box)
        for level in RECORDED_LEVELS:
            button = QPushButton(f"{int(level)}  {level.word}")
            button.setCheckable(True)
            button.setAccessibleName(tr("Proved: {word}", word=level.word))
            self._levels.addButton(button, int(level))
            row.addWidget(button)
        self._levels.idClicked.connect(self._say_level)
        return box

    @Slot(int)
    def _say_level(self, level: int) -> None:
        if self._job is not None:
            self._desk.do(actions.say_proof, self._job.id, level)
