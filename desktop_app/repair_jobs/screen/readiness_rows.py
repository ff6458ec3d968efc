"""The car's own tests: entered one by one or typed as four bytes, before and after."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.screen.readiness_table import ReadinessTable
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.self_tests import SelfTestsRead, bytes_typed, decode
from desktop_app.repair_jobs.self_tests_compared import STAGE_WORDS, STAGES, Stage
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.texts import plain_label

_IN_WORDS = tr(
    "As scan tools show them in words: complete (ready), not run (not ready) or not fitted "
    "(not supported)."
)
_AS_BYTES = tr(
    "Or, where a tool shows the car's raw answer: its four bytes. They fill the list by themselves."
)


class ReadinessRows(QWidget):
    """A table of the tests, and two fields for the bytes of mode 01 PID 01 that fill it."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._kept = ProofKept()
        self._fields: dict[Stage, LineField] = {}
        self._boxes: dict[Stage, Labelled] = {}
        self._holds: dict[Stage, WhichHolds] = {}
        self._table = ReadinessTable(desk)
        self._table.hide()
        self._open = QPushButton(tr("One by one"))
        self._open.setCheckable(True)
        self._open.toggled.connect(self._show_table)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(
            plain_label(tr("The car's own tests. One that has not run has not passed."), wrap=True)
        )
        row = QHBoxLayout()
        row.addWidget(self._open)
        row.addWidget(plain_label(_IN_WORDS, "quiet", wrap=True), 1)
        column.addLayout(row)
        column.addWidget(self._table)
        column.addWidget(plain_label(_AS_BYTES, "quiet", wrap=True))
        grid = QGridLayout()
        for place, stage in enumerate(STAGES):
            name = tr("{stage}: bytes of mode 01 PID 01", stage=STAGE_WORDS[stage])
            field = LineField(name, self._saver(stage))
            field.setPlaceholderText("41 01 00 07 E5 00")
            field.textEdited.connect(self._hint)
            self._fields[stage] = field
            self._boxes[stage] = Labelled(name, field)
            self._holds[stage] = WhichHolds(desk, self._boxes[stage])
            grid.addWidget(self._boxes[stage], 0, place)
        column.addLayout(grid)

    def show_job(self, job: JobView, kept: ProofKept) -> None:
        """Show what was read of the car's own tests."""
        if self._job is not None and self._job.id != job.id:
            for one in self._holds.values():
                one.leave()
            self._open.setChecked(False)
        self._job = job
        self._kept = kept
        for stage, tests in zip(STAGES, (kept.found, kept.after), strict=True):
            self._holds[stage].show_kept(tests.typed, tests.typed)
        self._hint()
        self._table.show_job(job, kept)
        if kept.found.states or kept.after.states:
            self._open.setChecked(True)

    @Slot()
    def _hint(self) -> None:
        """Say what the bytes begin with, but where some are refused just now."""
        for stage, tests in zip(STAGES, (self._kept.found, self._kept.after), strict=True):
            if not self._fields[stage].unsaved():
                self._boxes[stage].hint(_lamp_words(tests.read) if tests.read else "")

    def _saver(self, stage: Stage) -> Callable[[str], object]:
        def save(text: str) -> object:
            if self._job is None:
                return None
            said = ""
            try:
                if text.strip():
                    said = _lamp_words(decode(bytes_typed(text)))
            except ShopTrouble as trouble:
                self._boxes[stage].refuse(trouble.sentence())
                return None
            self._boxes[stage].refuse("")
            self._boxes[stage].hint(said)
            deed = proof_actions.type_self_tests
            return self._holds[stage].save(text.strip(), deed, self._job.id, stage, text)

        return save

    @Slot(bool)
    def _show_table(self, shown: bool) -> None:
        self._table.setVisible(shown)


def _lamp_words(read: SelfTestsRead) -> str:
    lamp = tr("lamp on") if read.lamp_on else tr("lamp off")
    codes = tr("1 code") if read.codes == 1 else tr("{count} codes", count=read.codes)
    codes = codes if read.codes else tr("no codes")
    engine = tr("compression ignition") if read.compression else tr("spark ignition")
    return f"{lamp}, {codes}, {engine}"
