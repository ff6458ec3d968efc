"""The order that loses nothing: a button for each step, and when each was ticked beneath them."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.odometer_questions import day_and_month
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_steps import STEPS, order_said, step_question
from desktop_app.repair_jobs.screen.proof_step_time import ProofStepTime
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.signed_button import SignedButton
from desktop_app.shop_window.texts import plain_label

_NONE_YET = tr("A press notes the time of its step.")


class ProofStepsRow(QWidget):
    """The steps from left to right; one that would lose something is asked about first."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job_id: int | None = None
        self._kept = ProofKept()
        self._asked = ""
        self._buttons: dict[str, QPushButton] = {}
        self._times = plain_label("", "quiet", wrap=True)
        self._said = plain_label("", wrap=True)
        self._time = ProofStepTime(desk)
        self._question = plain_label("", wrap=True)
        self._question_box = QWidget()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._step_row())
        column.addWidget(self._times)
        column.addWidget(self._question_box)
        column.addWidget(self._said)
        column.addWidget(self._time)
        self._add_question()

    def show_steps(self, job_id: int, kept: ProofKept, why_off: str = "") -> None:
        """Show which steps of a job are ticked, and when; `why_off` says why none can be now."""
        if job_id != self._job_id:
            self._ask("", "")
        self._job_id, self._kept = job_id, kept
        for step in STEPS:
            self._buttons[step.id].setChecked(step.id in kept.steps)
            off_because(self._buttons[step.id], why_off, step.means)
        ticked = [one for one in STEPS if one.id in kept.steps]
        times = "  ·  ".join(f"{one.words} {_moment(kept.steps[one.id])}" for one in ticked)
        self._times.setText(times or _NONE_YET)  # there from the first: nothing moves down for it
        self._said.setText("\n".join(f"⚠  {words}" for words in order_said(kept.steps)))
        self._said.setVisible(bool(self._said.text()))
        self._time.show_steps(job_id, kept.steps)

    def _step_row(self) -> QWidget:
        box = QWidget()
        row = FlowRow(box)
        for number, step in enumerate(STEPS, start=1):
            button = SignedButton(f"{number}  {step.words}")
            button.setAccessibleName(tr("Step: {words}", words=step.words))
            button.setProperty("step", step.id)
            button.clicked.connect(self._press)
            self._buttons[step.id] = button
            row.addWidget(button)
        return box

    def _add_question(self) -> None:
        row = QHBoxLayout(self._question_box)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._question, 1)
        yes = QPushButton(tr("Yes, all the same"))
        self._not_yet = QPushButton(tr("Not yet"))
        for button, slot in ((yes, self._yes), (self._not_yet, self._no)):
            button.clicked.connect(slot)
            row.addWidget(button)
        self._question_box.hide()

    def _ask(self, step: str, question: str) -> None:
        self._asked = step
        self._question.setText(question)
        self._question_box.setVisible(bool(question))
        if question:
            self._not_yet.setFocus()
            QTimer.singleShot(0, self, self._show_question)  # once it has its place

    @Slot()
    def _show_question(self) -> None:
        """Scroll the page, where it is longer than the window, so that the question is seen."""
        if self._question_box.isVisible():
            bring_up(self._question_box, below=80)

    @Slot()
    def _press(self) -> None:
        button = self.sender()
        if self._job_id is None or not isinstance(button, QPushButton):
            return
        step, wanted = str(button.property("step")), button.isChecked()
        question = step_question(self._kept.steps, step) if wanted else None
        if question:
            button.setChecked(False)
            self._ask(step, question)
            return
        self._ask("", "")
        self._tick(step, wanted)

    @Slot()
    def _yes(self) -> None:
        step = self._asked
        self._buttons[step].setFocus()
        self._ask("", "")
        self._tick(step, True)

    @Slot()
    def _no(self) -> None:
        self._buttons[self._asked].setFocus()
        self._ask("", "")

    def _tick(self, step: str, done: bool) -> None:
        if self._job_id is None:
            return
        if self._desk.do(proof_actions.tick_step, self._job_id, step, done=done) is None:
            put_back(self._buttons[step], step in self._kept.steps)  # later is another time


def _moment(at: str) -> str:
    """Return day and hour as they stand beneath the buttons: "16 Nov 14:05"."""
    return f"{day_and_month(date.fromisoformat(at[:10]))} {at[11:16]}"
