"""A table of the car's own tests: as found, after the repair, and what changed between."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.self_tests import SelfTestState
from desktop_app.repair_jobs.self_tests_compared import (
    STAGE_WORDS,
    STAGES,
    SelfTestRow,
    Stage,
    StageTests,
    is_compression,
    side_by_side,
)
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.texts import plain_label, tooltip

SIGNS = {
    None: tr("○  not said"),
    SelfTestState.COMPLETE: tr("✓  complete"),
    SelfTestState.NOT_RUN: tr("◌  not run"),
    SelfTestState.NOT_FITTED: tr("–  not fitted"),
}
_ROUND = (None, SelfTestState.COMPLETE, SelfTestState.NOT_RUN, SelfTestState.NOT_FITTED)


class ReadinessTable(QWidget):
    """What the bytes say stands fast; where none were typed, a press goes on to the next state."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job_id: int | None = None
        self._kept = ProofKept()
        self._shown: tuple[object, ...] = ()
        self._cells: dict[tuple[str, Stage], QLabel | QPushButton] = {}
        self._changes: dict[str, QLabel] = {}
        self._engine = ChoiceField(
            tr("Kind of engine"),
            [(False, tr("spark ignition")), (True, tr("compression ignition (diesel)"))],
            self._choose_engine,
        )
        self._rows = QWidget()
        self._grid = QGridLayout(self._rows)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(18)
        self._grid.setColumnStretch(0, 2)
        self._grid.setColumnStretch(3, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._engine)
        column.addWidget(self._rows)
        self._lay()  # as most jobs have it: made with the page, and not with the first job

    def show_job(self, job: JobView, kept: ProofKept) -> None:
        """Show how the tests stand; the kind of engine is the one that was read."""
        if job.id != self._job_id:
            self._engine.show_value(False)
        self._job_id, self._kept = job.id, kept
        was_read = bool(kept.found.states or kept.after.states)
        if was_read:
            self._engine.show_value(is_compression(kept.found, kept.after))
        self._engine.setVisible(not was_read)  # what was read says it itself
        self._lay()

    def _lay(self) -> None:
        """Build the table anew where other tests stand in it; else say what has changed.

        A pressed button stays the one that it is: it keeps the focus, and the page its place.
        """
        rows = side_by_side(self._kept.found, self._kept.after, bool(self._engine.currentData()))
        fast = tuple(stage.read is not None for stage in (self._kept.found, self._kept.after))
        stands = (tuple(row.monitor.id for row in rows), fast)
        if stands != self._shown:
            self._shown = stands
            self._build(rows, fast)
        for row in rows:
            for stage, state in zip(STAGES, (row.found, row.after), strict=True):
                self._say(self._cells[row.monitor.id, stage], row, stage, state)
            self._changes[row.monitor.id].setText(_change(row))

    def _build(self, rows: Sequence[SelfTestRow], fast: tuple[bool, ...]) -> None:
        empty(self._grid)
        self._cells, self._changes = {}, {}
        heads = ("", *(STAGE_WORDS[stage] for stage in STAGES), "")
        for place, words in enumerate(heads):
            self._grid.addWidget(plain_label(words, "quiet"), 0, place)
        for line, row in enumerate(rows, start=1):
            monitor = row.monitor
            self._grid.addWidget(plain_label(monitor.words, wrap=True), line, 0)
            for place, (stage, stands) in enumerate(zip(STAGES, fast, strict=True), start=1):
                cell = plain_label("") if stands else self._button(monitor.id, stage)
                self._cells[monitor.id, stage] = cell
                self._grid.addWidget(cell, line, place)
            self._changes[monitor.id] = plain_label("", "quiet")
            self._grid.addWidget(self._changes[monitor.id], line, 3)

    def _say(
        self,
        cell: QLabel | QPushButton,
        row: SelfTestRow,
        stage: Stage,
        state: SelfTestState | None,
    ) -> None:
        cell.setText(SIGNS[state])
        if isinstance(cell, QPushButton):
            word = tr("not said") if state is None else tr(state.value)
            cell.setAccessibleName(f"{row.monitor.words}, {STAGE_WORDS[stage].lower()}: {word}")

    def _button(self, monitor: str, stage: Stage) -> QPushButton:
        button = QPushButton()
        button.setToolTip(
            tooltip(tr("Press for the next: complete, not run, not fitted, not said"))
        )
        button.setProperty("stage", stage)
        button.setProperty("monitor", monitor)
        button.clicked.connect(self._press)
        return button

    @Slot()
    def _press(self) -> None:
        if self._job_id is None:
            return
        button = self.sender()
        stage: Stage = "found" if button.property("stage") == "found" else "after repair"
        monitor = str(button.property("monitor"))
        tests: StageTests = self._kept.found if stage == "found" else self._kept.after
        following = _ROUND[(_ROUND.index(tests.by_hand.get(monitor)) + 1) % len(_ROUND)]
        self._desk.do(proof_actions.enter_self_test, self._job_id, stage, monitor, following)

    def _choose_engine(self, _compression: bool) -> object:
        self._lay()
        return True


def _change(row: SelfTestRow) -> str:
    if row.became_complete:
        return tr("complete since")
    if row.found is SelfTestState.COMPLETE and row.after is SelfTestState.NOT_RUN:
        return tr("was set back")
    return ""
