"""Caught here: the proof failed before the car left. A good sign, and always written down."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept, caught_in_words
from desktop_app.repair_jobs.screen.row_field import RowField
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.texts import plain_label


class CaughtHereRows(QWidget):
    """What was caught so far, and a line for the next; not once the car has left."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job: JobView | None = None
        self._known = QVBoxLayout()
        name, drafts = tr("The proof failed: what did it show?"), Drafts(desk.record.folder)
        self._field = RowField(name, self._add, drafts)
        self._field.setPlaceholderText(tr("The proof failed here: what did it show?"))
        button = QPushButton(tr("Caught here"))
        button.setAccessibleName(tr("Caught here: write it down"))
        button.clicked.connect(self._write)
        self._form = QWidget()
        line = QHBoxLayout(self._form)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self._field, 1)
        line.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._known)
        column.addWidget(self._form)

    def show_job(self, job: JobView, kept: ProofKept) -> None:
        """Show what was caught before the car left."""
        if self._job is None or self._job.id != job.id:
            self._field.begin(f"caught-here-{job.id}")
        self._job = job
        self._form.setVisible(job.left_at is None)
        empty(self._known)
        for one in kept.caught:
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            words = tr(
                "⊙  Caught here {on_day} {words}",
                on_day=caught_in_words(one),
                words=one.words,
            )
            row.addWidget(plain_label(words, wrap=True), 1)
            out = QPushButton("✕")
            out.setAccessibleName(tr("Take out: caught here, {words}", words=one.words))
            out.setProperty("row", one.id)
            out.clicked.connect(self._strike)
            row.addWidget(out)
            self._known.addWidget(line)

    @Slot()
    def _write(self) -> None:
        self._field.save_now()

    def _add(self, words: str) -> object:
        if self._job is None or not words.strip():
            return None
        done = self._desk.do(proof_actions.catch_here, self._job.id, words)
        if done is not None:
            self._desk.told.emit(
                tr(
                    "Caught here, and written down. How far it is proved is open again: "
                    "say it after the next try."
                )
            )
        return done

    @Slot()
    def _strike(self) -> None:
        self._desk.do(proof_actions.strike_caught, int(self.sender().property("row")))
