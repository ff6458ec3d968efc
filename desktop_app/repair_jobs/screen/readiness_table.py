"""A table of the car's own tests: as found, after the repair, and what changed between."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

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
        rows = side_by_side(self._kept.found, self._kept.after, bool(self._engine.currentData()))
        fast = tuple(stage.read is not None for stage in (self._kept.found, self._kept.after))
        if (rows, fast) == self._shown:
            return
        # A pressed button keeps the focus when its table is built anew.
        held = self.focusWidget()
        held_name = str(held.property("cell") or "") if held is not None else ""
        self._shown = (rows, fast)
        empty(self._grid)
        heads = ("", *(STAGE_WORDS[stage] for stage in STAGES), "")
        for place, words in enumerate(heads):
            self._grid.addWidget(plain_label(words, "quiet"), 0, place)
        for line, row in enumerate(rows, start=1):
            self._grid.addWidget(plain_label(row.monitor.words, wrap=True), line, 0)
            states = zip(STAGES, (row.found, row.after), fast, strict=True)
            for place, (stage, state, stands) in enumerate(states, start=1):
                self._grid.addWidget(self._cell(row, stage, state, stands), line, place)
            self._grid.addWidget(plain_label(_change(row), "quiet"), line, 3)
        for button in self._rows.findChildren(QPushButton):
            if held_name and not button.isHidden() and button.property("cell") == held_name:
                button.setFocus()

    def _cell(
        self, row: SelfTestRow, stage: Stage, state: SelfTestState | None, stands: bool
    ) -> QWidget:
        if stands:
            return plain_label(SIGNS[state])
        button = QPushButton(SIGNS[state])
        word = tr("not said") if state is None else tr(state.value)
        button.setAccessibleName(f"{row.monitor.words}, {STAGE_WORDS[stage].lower()}: {word}")
        button.setToolTip(
            tooltip(tr("Press for the next: complete, not run, not fitted, not said"))
        )
        button.setProperty("stage", stage)
        button.setProperty("monitor", row.monitor.id)
        button.setProperty("cell", f"{stage}/{row.monitor.id}")
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
