"""What an import came to: the counts, the backup, how it is taken back, and its jobs to open."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.records_exchanged.bringing_in_actions import write_turned_away
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.screen.telling import Tell, Telling
from desktop_app.repair_jobs.stored_reading import job_by_number
from desktop_app.shop_record.counted_words import rows_counted
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label


class OutcomeBox(QWidget):
    """Hidden until something was brought in; `job_wanted` opens one of its jobs."""

    job_wanted = Signal(int)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._table: Table | None = None
        self._told = ImportTold()
        self._source = Path()
        self._said = plain_label("", wrap=True)
        self._saved = plain_label("", wrap=True)
        self._save = QPushButton(tr("Save the rows that were turned away…"))
        self._save.clicked.connect(self._choose)
        self._jobs = QWidget()
        self._row = FlowRow(self._jobs)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._said)
        column.addWidget(self._jobs)
        column.addWidget(self._save, alignment=Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self._saved)
        self.hide()

    def show_outcome(
        self, told: ImportTold, table: Table, source: Path, numbers: Sequence[str]
    ) -> None:
        """Say what became of the rows; `numbers` are the first job numbers of the file."""
        self._told = told
        self._table, self._source = table, source
        wrote = bool(told.added or told.updated)
        lines = [
            tr(
                "{rows} read: {counted}.",
                rows=rows_counted(told.read),
                counted=counted(told),
            )
        ]
        if wrote:
            lines.append(
                tr(
                    "Undo takes all of it back: “{deed}”.",
                    deed=tr("Import {file}", file=source.name),
                )
            )
        if told.backup is not None:
            lines.append(tr("The shop as it was before lies in {place}.", place=told.backup))
        self._said.setText("\n".join(lines))
        self._row.clear()
        for number in numbers:
            button = QPushButton(number)
            button.setAccessibleName(tr("Open job {number}", number=number))
            button.clicked.connect(partial(self._open, number))
            self._row.addWidget(button)
            button.show()
        self._jobs.setVisible(bool(numbers))
        self._save.setVisible(bool(told.rejected))
        self._saved.hide()
        self.show()

    def _open(self, number: str) -> None:
        job = self._desk.ask(job_by_number, number)
        if job is None:
            self._desk.told.emit(tr("There is no job {number} any more.", number=number))
        else:
            self.job_wanted.emit(job)

    @Slot()
    def _choose(self) -> None:
        proposed = self._source.with_name(f"{self._source.stem}.rejected.csv")
        form = tr("Table (*.csv)")
        name, _ = QFileDialog.getSaveFileName(self, tr("Rows turned away"), str(proposed), form)
        table, told, source = self._table, self._told, self._source
        if not name or table is None:
            return
        to = Path(name) if Path(name).suffix else Path(name).with_suffix(".csv")

        def work(tell: Tell) -> None:
            tell(Step(0, 0, tr("Writing {file}", file=to.name)))
            write_turned_away(table, told, source, to)

        words = tr(
            "They lie in {file}. Mend them there and choose that file: it is read like this one.",
            file=to,
        )
        Telling(
            self._desk,
            self,
            tr("Write {file}", file=to.name),
            work,
            lambda _: self._say(words),
            self._not_saved,
        )

    def _not_saved(self, trouble: ShopTrouble | None) -> None:
        self._say(trouble.sentence() if trouble else tr("Stopped; nothing was written."))

    def _say(self, words: str) -> None:
        self._saved.setText(words)
        self._saved.show()


def counted(told: ImportTold) -> str:
    """Return what became of the rows, in numbers."""
    return tr(
        "{added:,} new, {updated:,} changed, {unchanged:,} as they were, {refused:,} turned away",
        added=told.added,
        updated=told.updated,
        unchanged=told.unchanged,
        refused=told.refused,
    )
