"""Records In and Out: old tables brought in, an export brought back, everything taken out."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtGui import QDragEnterEvent, QDropEvent

from desktop_app.language import tr
from desktop_app.records_exchanged.export_names import JOBS, JOBS_LACK
from desktop_app.records_exchanged.screen.backup_box import BackupBox
from desktop_app.records_exchanged.screen.columns_box import ColumnsBox
from desktop_app.records_exchanged.screen.export_box import ExportBox
from desktop_app.records_exchanged.screen.file_box import FileBox
from desktop_app.records_exchanged.screen.file_in_hand import FileInHand
from desktop_app.records_exchanged.screen.long_work_box import UNDER_WAY
from desktop_app.records_exchanged.screen.questions_box import QuestionsBox
from desktop_app.records_exchanged.screen.restore_box import BackupsToShow, RestoreBox
from desktop_app.records_exchanged.screen.trial_box import TrialBox
from desktop_app.records_exchanged.screen.whole_box import WholeBox
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.records_exchanged.whole_actions import is_new
from desktop_app.records_exchanged.whole_folder_files import is_export
from desktop_app.shop_record.backups.backups_found import backup_folders
from desktop_app.shop_record.backups.restore_drill import last_drill
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.copied_by_drop import take_a_copy
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.off_where_shut import off_where_shut, why_shut
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.place_names import RECORDS
from desktop_app.shop_window.texts import plain_label


class RecordsPage(ReadingPage):
    """The steps stand under each other in their order; each is there once it can be taken.

    `reads` gives what the words of a row are read with.
    """

    job_wanted = Signal(int)
    shop_wanted = Signal(object)  # Path: another shop, which was brought back, is to be opened

    def __init__(self, desk: Desk, reads: Callable[[], ReadWith]) -> None:
        super().__init__()
        self._desk = desk
        self._file = FileInHand(desk, self)
        self._box = FileBox(self._file)
        self._whole = WholeBox(desk)
        columns, questions = ColumnsBox(desk, self._file), QuestionsBox(self._file)
        self._trial = TrialBox(desk, self._file, reads)
        self._steps = (self._box, columns, questions)
        self.column.addWidget(plain_label(RECORDS, "title"))
        self._restore = RestoreBox(desk, self._backups, desk.now)
        self._restore.open_wanted.connect(self.shop_wanted)
        self._export = ExportBox(desk)
        outward = (self._export, BackupBox(desk), self._restore)
        for box in (*self._steps, self._trial, self._whole, *outward):
            self.column.addWidget(box)
        off_where_shut(desk, *self._steps, self._trial, self._whole)
        self._busy = False
        self._box.chosen.connect(self.take)
        self._trial.working.connect(self._lock)
        self._whole.working.connect(self._lock)
        self._trial.job_wanted.connect(self.job_wanted)
        self.setAcceptDrops(True)

    def came_here(self) -> None:
        """Look again which backups there are, and what an export says beside its button."""
        self._restore.look()
        self._export.look()

    def show_backups(self) -> None:
        """Bring up the box from which a backup comes back."""
        self.settle()
        self.bring_up(self._restore)

    def _backups(self) -> BackupsToShow:
        record = self._desk.record
        return BackupsToShow(backup_folders(record), last_drill(record.folder))

    @Slot(object)
    def take(self, path: Path) -> None:
        """Take a file in hand, or the folder of an export."""
        if self._busy:
            self._desk.told.emit(tr("Wait for what is under way, or stop it, before another file."))
            return
        self._whole.hide()
        if not path.is_dir():
            self._file.take(path)
        elif not is_export(path):
            self._desk.told.emit(
                ShopTrouble(
                    tr(
                        "{folder} is a folder, and not one that everything was taken out into.",
                        folder=path.name,
                    ),
                    do=tr("Choose a table (CSV, text, XLSX), or the folder of an export."),
                )
            )
        elif is_new(self._desk.record):
            self._whole.offer(path)
        else:
            said = tr(
                "Something is written in this shop already: only {file} of it is read.", file=JOBS
            )
            self._desk.told.emit(f"{said} {JOBS_LACK}")
            self._file.take(path / JOBS)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasUrls():
            take_a_copy(event)

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        if paths:
            self.take(paths[0])
        if len(paths) != 1:
            self._desk.told.emit(tr("One file at a time is read: the first of what was dropped."))
        take_a_copy(event)

    @Slot(bool)
    def _lock(self, yes: bool) -> None:
        """Let nothing about the file be changed while it is tried or brought in."""
        self._busy = yes
        for box in self._steps:
            off_because(box, why_shut(self._desk) or (UNDER_WAY if yes else ""))
        if self._trial.isVisible():
            QTimer.singleShot(0, self, self._show_trial)  # once what came of it stands there

    @Slot()
    def _show_trial(self) -> None:
        self.settle()
        self.bring_up(self._trial)
