"""What would happen, then bringing the rows in: nothing is written before both were pressed."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.bringing_in_actions import Tell, bring_in
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.row_reader import RowReader
from desktop_app.records_exchanged.screen.file_in_hand import FileInHand
from desktop_app.records_exchanged.screen.long_work_box import UNDER_WAY
from desktop_app.records_exchanged.screen.outcome_box import OutcomeBox, counted
from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import Telling
from desktop_app.records_exchanged.screen.turned_away import TurnedAway
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_record.counted_words import rows_counted
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

# What an import may write to; the pages that show any of it are told.
TOUCHED = frozenset(
    {"vehicle", "person", "visit", "job", "job_symptom", "job_condition", "trouble_code"}
    | {"pair", "return_link"}
)
_JOBS = 8  # job numbers offered to open


class TrialBox(Section):
    """Hidden until a file is in hand; `working(yes)` while nothing about it may be changed."""

    working = Signal(bool)
    job_wanted = Signal(int)

    def __init__(self, desk: Desk, file: FileInHand, reads: Callable[[], ReadWith]) -> None:
        super().__init__(tr("Try it, then bring it in"))
        self._desk, self._file, self._reads = desk, file, reads
        self._under_way: Telling | None = None
        self._words = ""  # of the import that is shown as brought in
        self._first = plain_label("", wrap=True)
        self._try = QPushButton(tr("See what would happen"))
        self._try.setObjectName("next")
        self._progress = ProgressLine(tr("bringing records in"))
        self._said = plain_label("", wrap=True)
        self._away = TurnedAway()
        self._bring = QPushButton()
        self._bring.setObjectName("next")
        self._outcome = OutcomeBox(desk)
        left = Qt.AlignmentFlag.AlignLeft
        self.column.addWidget(self._first)
        self.column.addWidget(self._try, alignment=left)
        for widget in (self._progress, self._said, self._away):
            self.column.addWidget(widget)
        self.column.addWidget(self._bring, alignment=left)
        self.column.addWidget(self._outcome)
        self._try.clicked.connect(partial(self._go, dry_run=True))
        self._bring.clicked.connect(partial(self._go, dry_run=False))
        self._progress.stop_wanted.connect(self._stop)
        self._outcome.job_wanted.connect(self.job_wanted)
        file.changed.connect(self._begin_anew)
        desk.changed.connect(self._hear)
        self.hide()

    @Slot()
    def _begin_anew(self) -> None:
        """What was said of the file before holds no longer."""
        self._words = ""
        self._say("")
        self._away.hide()
        self._bring.hide()
        self._outcome.hide()
        why = self._file.why_not()
        self._first.setText(why)
        self._first.setVisible(bool(why))
        off_because(self._try, why)
        self.setVisible(self._file.found is not None)

    def _say(self, words: str) -> None:
        self._said.setText(words)
        self._said.setVisible(bool(words))

    def _go(self, *, dry_run: bool) -> None:
        if self._file.why_not() or self._under_way is not None:
            return
        table, record, reads = self._file.table(), self._desk.record, self._reads

        def work(tell: Tell) -> ImportTold:
            return bring_in(record, table, reads, tell, dry_run=dry_run)

        name = table.source.name
        words = tr("Trying {file}", file=name) if dry_run else tr("Bringing {file} in", file=name)
        then = partial(self._tried if dry_run else self._brought, table)
        gave_up = partial(self._gave_up, dry_run=dry_run)
        self._under_way = Telling(self._desk, self, words, work, then, gave_up)
        self._under_way.stepped.connect(self._progress.step)
        self._progress.begin(words)
        self._progress.setFocus()  # what was pressed goes; nothing else must be pressed instead
        self._say("")
        for widget in (self._bring, self._outcome, self._away):
            widget.hide()
        off_because(self._try, UNDER_WAY)
        self.working.emit(True)

    @Slot()
    def _stop(self) -> None:
        if self._under_way is not None:
            self._under_way.stop()

    def _over(self) -> None:
        self._under_way = None
        off_because(self._try, self._file.why_not())
        self._try.setFocus()
        self._progress.end()
        self.working.emit(False)

    def _tried(self, _table: Table, told: ImportTold) -> None:
        self._over()
        number = told.added + told.updated
        rows, what = rows_counted(told.read), counted(told)
        said = [tr("What would become of {rows}: {counted}.", rows=rows, counted=what)]
        if not number:
            said.append(tr("There is nothing to bring in."))
        self._say(" ".join(said))
        self._away.show_rows(told.rejected)
        self._bring.setText(tr("Bring {rows} in", rows=rows_counted(number)))
        self._bring.setVisible(number > 0)
        if number:
            self._bring.setFocus()

    def _brought(self, table: Table, told: ImportTold) -> None:
        self._over()
        path = self._file.path
        assert path is not None
        words = tr("Import {file}", file=table.source.name)
        self._outcome.show_outcome(told, table, path, _first_numbers(table, told))
        self._away.show_rows(told.rejected)
        self._desk.errands.run(tr("Keeping the map of the file"), self._file.keeping())
        self._desk.changed.emit(Done(words, TOUCHED, None))
        self._words = words

    def _gave_up(self, trouble: ShopTrouble | None, *, dry_run: bool) -> None:
        self._over()
        stopped = tr("Stopped.") if dry_run else tr("Stopped. Nothing of the file was brought in.")
        self._say(trouble.sentence() if trouble else stopped)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        """After the import was undone, or done again, what is said of it holds no longer."""
        if self._words and done.words == self._words and done.seq is not None:
            words = self._words
            self._begin_anew()
            self._say(tr("“{deed}” was undone or done again since.", deed=words))


def _first_numbers(table: Table, told: ImportTold) -> list[str]:
    """Return the first job numbers of the file whose rows were not turned away."""
    reader, away = RowReader(table.found), {one.row for one in told.rejected}
    read = [reader.read(row, list(cells)) for row, cells in table.found.first_rows]
    taken = [one.job_number for one in read if isinstance(one, JobRow) and one.row not in away]
    return list(dict.fromkeys(taken))[:_JOBS]
