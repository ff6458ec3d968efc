"""A former export brought back: all of it into a new shop."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import Tell, Telling, walked
from desktop_app.records_exchanged.stored_export import kept_tables
from desktop_app.records_exchanged.whole_actions import BroughtBack, bring_back
from desktop_app.shop_record.counted_words import entries_counted, jobs_counted, photos_counted
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label


class WholeBox(Section):
    """Hidden until the folder of an export was chosen while the shop is still empty."""

    working = Signal(bool)

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("An export of a whole shop"))
        self._desk = desk
        self._folder: Path | None = None
        self._under_way: Telling | None = None
        self._said = plain_label("", wrap=True)
        self._bring = QPushButton(tr("Bring everything back"))
        self._bring.setObjectName("next")
        self._bring.clicked.connect(self._go)
        self._progress = ProgressLine(tr("bringing everything back"))
        self._progress.stop_wanted.connect(self._stop)
        self.column.addWidget(self._said)
        self.column.addWidget(self._bring, alignment=Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self._progress)
        self.hide()

    def offer(self, folder: Path) -> None:
        """Offer to bring back what lies in a folder."""
        self._folder = folder
        self._said.setText(
            tr(
                "{folder} holds a whole shop. Nothing is written in this one yet, so "
                "everything can come back: jobs, photos, rules and the history as it was. "
                "Each file is held against its checksum; all of it is brought back or "
                "nothing.",
                folder=folder.name,
            )
        )
        self._bring.show()
        self.show()

    @Slot()
    def _go(self) -> None:
        folder, record = self._folder, self._desk.record
        if folder is None or self._under_way is not None:
            return

        def work(tell: Tell) -> BroughtBack:
            return walked(bring_back(record, folder), tell)

        words = tr("Bringing {folder} back", folder=folder.name)
        self._under_way = Telling(self._desk, self, words, work, self._brought, self._gave_up)
        self._under_way.stepped.connect(self._progress.step)
        self._progress.begin(words)
        self._bring.hide()
        self.working.emit(True)

    @Slot()
    def _stop(self) -> None:
        if self._under_way is not None:
            self._under_way.stop()

    def _brought(self, told: BroughtBack) -> None:
        self._over(
            tr(
                "Everything is back as it was: {jobs}, {photos}, {entries}.",
                jobs=jobs_counted(told.rows["job"]),
                photos=photos_counted(told.photos),
                entries=entries_counted(told.history_entries),
            )
        )
        touched = frozenset(table.name for table in kept_tables())
        self._desk.changed.emit(Done(tr("Brought back an export"), touched, None))

    def _gave_up(self, trouble: ShopTrouble | None) -> None:
        self._over(trouble.sentence() if trouble else tr("Stopped. Nothing was brought back."))
        self._bring.show()

    def _over(self, words: str) -> None:
        self._under_way = None
        self._progress.end()
        self._said.setText(words)
        self.working.emit(False)
