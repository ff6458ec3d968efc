"""Proof: how far the repair was proved before the car leaves."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QPushButton, QWidget

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import CODES_READ, RECORDED_LEVELS, ProofLevel
from desktop_app.repair_jobs.proof_checks import maker_first, proof_checks
from desktop_app.repair_jobs.screen.check_list import CheckList
from desktop_app.repair_jobs.screen.code_rows import CodeRows
from desktop_app.repair_jobs.typed_entry import read_distance
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField, WordsField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip


class ProofSection(Section):
    """The checks of the system, the codes read afterwards, and the level reached."""

    def __init__(self, desk: Desk) -> None:
        super().__init__("Proof")
        self._desk = desk
        self._job: JobView | None = None
        self._first = plain_label(maker_first(), "quiet", wrap=True)
        self._list = CheckList(desk, "proof")
        self._codes = CodeRows(desk, "after repair")
        self._enough = plain_label("", "quiet", wrap=True)
        self._means = plain_label("", wrap=True)
        self._levels = QButtonGroup(self)
        self._levels.setExclusive(True)
        self._distance = LineField("Driven", self._save_distance)
        self._distance_box = Labelled("Driven", self._distance)
        self._words = WordsField("What was tried, and what was not", self._save_words, 2)
        self.column.addWidget(self._first)
        self.column.addWidget(self._list)
        self.column.addWidget(self._enough)
        self.column.addWidget(plain_label("Codes read after the repair"))
        self.column.addWidget(self._codes)
        self.column.addWidget(plain_label("How far was it proved?"))
        self.column.addWidget(self._level_row())
        self.column.addWidget(self._means)
        grid = QGridLayout()
        grid.addWidget(self._distance_box, 0, 0)
        grid.addWidget(Labelled("What was tried, and what was not", self._words), 0, 1)
        grid.setColumnStretch(1, 3)
        self.column.addLayout(grid)

    def show_job(self, job: JobView) -> None:
        """Show what was proved on a job."""
        if self._job is not None and self._job.id != job.id:
            self._distance.save_now()
            self._words.save_now()
        self._job = job
        checks = proof_checks(job.system)
        self._list.show_checks(
            job, [(words, False) for words in (*checks.bay, CODES_READ, *checks.road)]
        )
        self._enough.setText(f"Enough when: {checks.enough}")
        self._codes.show_job(job)
        for button in self._levels.buttons():
            chosen = self._levels.id(button) == job.proof_level
            if chosen != button.isChecked():
                self._levels.setExclusive(False)
                button.setChecked(chosen)
                self._levels.setExclusive(True)
        self._means.setText("" if job.proof_level is None else ProofLevel(job.proof_level).means)
        distance = job.proof_distance
        self._distance.show_value("" if distance is None else f"{distance:g}")
        self._distance_box.hint("km" if job.vehicle.odometer_unit == "km" else "miles")
        self._words.show_value(job.proof_words)

    def _level_row(self) -> QWidget:
        box = QWidget()
        row = FlowRow(box)
        for level in RECORDED_LEVELS:
            button = QPushButton(f"{int(level)}  {level.word}")
            button.setCheckable(True)
            button.setToolTip(tooltip(level.means))
            button.setAccessibleName(f"Proved: {level.word}")
            self._levels.addButton(button, int(level))
            row.addWidget(button)
        self._levels.idClicked.connect(self._say_level)
        return box

    @Slot(int)
    def _say_level(self, level: int) -> None:
        if self._job is not None:
            self._desk.do(actions.say_proof, self._job.id, level)

    def _save_words(self, words: str) -> object:
        if self._job is None:
            return None
        return self._desk.do(actions.write_proof, self._job.id, words, self._job.proof_distance)

    def _save_distance(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            distance = read_distance(text)
        except ShopTrouble as trouble:
            self._distance_box.hint(trouble.sentence())
            return None
        return self._desk.do(actions.write_proof, self._job.id, self._job.proof_words, distance)
