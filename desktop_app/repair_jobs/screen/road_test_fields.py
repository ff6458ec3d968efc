"""The drive: how far, what was tried, how often it used to come, and what that is worth."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure, shown
from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.distance import unit_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import drive_said, unit_of
from desktop_app.repair_jobs.provocation import read_provoked
from desktop_app.repair_jobs.road_test import EVERY_UNITS, EVERY_WORDS, EveryUnit, FaultEvery
from desktop_app.repair_jobs.road_test_words import LIMIT, read_every
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.typed_entry import read_distance
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField, WordsField
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.texts import plain_label

PROVOKE_LIKE = tr("like 37 in 10 min, then 0 in 10 min; provoked the same way both times")


class RoadTestFields(QWidget):
    """Fields that save themselves, and beneath them what a quiet drive of that length proves."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._distance = LineField(tr("Driven"), self._save_distance)
        self._distance_box = Labelled(tr("Driven without it"), self._distance)
        self._words = WordsField(tr("What was tried, and what was not"), self._save_words, 2)
        words_box = Labelled(tr("What was tried, and what was not"), self._words)
        self._every = LineField(tr("It came about once in"), self._save_every)
        self._every_box = Labelled(tr("It came about once in"), self._every)
        choices = [(unit, EVERY_WORDS[unit]) for unit in EVERY_UNITS]
        self._unit = KeptChoiceField(
            desk, tr("It came about once in: unit"), choices, self._save_unit
        )
        self._provoked = LineField(tr("Made to happen on purpose"), self._save_provoked)
        self._provoked_box = Labelled(tr("Made to happen on purpose"), self._provoked, PROVOKE_LIKE)
        self._holds = WhichHolds(desk, words_box)
        self._far, self._often, self._on_purpose = (
            WhichHolds(desk, box)
            for box in (self._distance_box, self._every_box, self._provoked_box)
        )
        self._often.theirs.connect(self._show_unit)
        self._worth = plain_label("", wrap=True)
        self._limit = plain_label(LIMIT, "quiet", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        grid = QGridLayout()
        grid.addWidget(self._distance_box, 0, 0)
        grid.addWidget(words_box, 0, 1, 1, 2)
        grid.addWidget(self._every_box, 1, 0)
        grid.addWidget(Labelled(tr("of what"), self._unit), 1, 1)
        grid.addWidget(self._provoked_box, 1, 2)
        for place, stretch in enumerate((1, 1, 2)):
            grid.setColumnStretch(place, stretch)
        column.addLayout(grid)
        column.addWidget(self._worth)
        column.addWidget(self._limit)

    def show_job(self, job: JobView, kept: ProofKept) -> None:
        """Show the drive of a job and what it is worth."""
        if self._job is not None and self._job.id != job.id:
            for field in (self._far, self._often, self._on_purpose, self._holds):
                field.leave()
        if self._job is None or self._job.id != job.id:
            self._unit.show_value(unit_of(job), job.id)
        self._job = job
        distance = job.proof_distance
        far = "" if distance is None else shown(f"{distance:,.2f}".rstrip("0").rstrip("."))
        self._far.show_kept(distance, far)
        self._holds.show_kept(job.proof_words, job.proof_words)
        self._show_every(kept)
        provoked = "" if kept.provoked is None else kept.provoked.shown()
        self._on_purpose.show_kept(kept.provoked, provoked)
        self._say_what_is_accepted(job)
        self._worth.setText("\n".join(drive_said(job, kept)))
        self._worth.setVisible(bool(self._worth.text()))
        self._limit.setVisible(kept.every is not None)

    def _show_every(self, kept: ProofKept) -> None:
        """Show how often it came; the unit goes with the number, also with one half typed."""
        every = kept.every
        if not self._every.unsaved():
            self._show_unit(every)
        self._often.show_kept(every, "" if every is None else figure(every.number, "g"))

    @Slot(object)
    def _show_unit(self, every: FaultEvery | None) -> None:
        if every is not None:
            self._unit.show_value(every.unit, self._job and self._job.id)
        elif self._unit.waits() and self._job is not None:  # its number is gone meanwhile
            self._unit.show_value(unit_of(self._job), self._job.id)

    def _say_what_is_accepted(self, job: JobView) -> None:
        self._distance_box.hint(unit_words(unit_of(job)))
        self._every_box.hint(tr("as the customer tells it"))

    def _save_words(self, words: str) -> object:
        if self._job is None:
            return None
        return self._holds.save(words, proof_actions.write_tried, self._job.id, words)

    def _save_distance(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            distance = read_distance(text, unit_of(self._job))
        except ShopTrouble as trouble:
            self._distance_box.refuse(trouble.sentence())
            return None
        self._distance_box.refuse("")
        return self._far.save(distance, proof_actions.write_distance, self._job.id, distance)

    def _save_every(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            number = read_every(text)
        except ShopTrouble as trouble:
            self._every_box.refuse(trouble.sentence())
            return None
        self._every_box.refuse("")
        unit: EveryUnit = self._unit.currentData()
        every = None if number is None else FaultEvery(number, unit)
        deed = proof_actions.say_fault_every
        return self._often.save(every, deed, self._job.id, number, unit)

    def _save_unit(self, _unit: EveryUnit) -> object:
        if self._every.unsaved() or not self._every.text().strip():
            self._every.save_now()
            return True
        return self._save_every(self._every.text())

    def _save_provoked(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            provoked = read_provoked(text) if text.strip() else None
        except ShopTrouble as trouble:
            self._provoked_box.refuse(trouble.sentence())
            return None
        self._provoked_box.refuse("")
        return self._on_purpose.save(provoked, proof_actions.write_provoked, self._job.id, provoked)
