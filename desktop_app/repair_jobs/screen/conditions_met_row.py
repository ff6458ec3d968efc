"""The conditions the customer told of, each met on the drive, not met, or not said."""

from __future__ import annotations

from functools import partial

from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import conditions_told
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptThreeWay
from desktop_app.shop_window.texts import plain_label


class MetButton(KeptThreeWay):
    """One condition: not said, met, not met."""

    WORDS = {None: tr("not said"), True: tr("met"), False: tr("not met")}  # noqa: RUF012


class ConditionsMetRow(QWidget):
    """A button for every condition under which it happens."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job_id: int | None = None
        self._told: tuple[str, ...] = ()
        self._buttons: dict[str, MetButton] = {}
        self._title = plain_label("", wrap=True)
        self._box = QWidget()
        self._row = FlowRow(self._box)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._title)
        column.addWidget(self._box)

    def show_job(self, job: JobView, kept: ProofKept) -> None:
        """Show the conditions told of and which of them were met."""
        self._job_id = job.id
        told = conditions_told(job)
        if told != self._told:
            self._told = told
            self._build()
        for condition, button in self._buttons.items():
            button.show_value(kept.conditions.get(condition), job.id)
        self._box.setVisible(bool(told))
        self._title.setText(
            tr("Was it driven where it happens?  ○ not said  ● met  ⊘ not met")
            if told
            else tr("Where does it happen? Under Heard no condition is ticked as “happens” yet.")
        )

    def _build(self) -> None:
        self._row.clear()
        self._buttons = {}
        for condition in self._told:
            words, turn = condition_words(condition), partial(self._turn, condition)
            button = MetButton(self._desk, words, turn)
            self._buttons[condition] = button
            self._row.addWidget(button)

    def _turn(self, condition: str, met: bool | None) -> object:
        if self._job_id is None:
            return None
        return self._desk.do(proof_actions.meet_condition, self._job_id, condition, met)
