"""Backing up now: the whole shop in one file, where somebody says."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFileDialog, QPushButton

from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import Tell, Telling, walked
from desktop_app.shop_record.backup import BackupMade, make_backup
from desktop_app.shop_record.backups_made import remember
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

_WHAT = (
    "The whole shop in one file, from which it comes back with all photos and its history, by the "
    "command “restore”. Best on another disk, such as a stick that you take home: a backup beside "
    "the shop burns with it. Each day one is made by itself too."
)


class BackupBox(Section):
    """One button, how far it is, and what was written where."""

    def __init__(self, desk: Desk) -> None:
        super().__init__("Back up")
        self._desk = desk
        self._folder = Path.home()
        self._under_way: Telling | None = None
        self._begin = QPushButton("Back up now…")
        self._begin.clicked.connect(self._choose)
        self._progress = ProgressLine("backing up")
        self._progress.stop_wanted.connect(self._stop)
        self._said = plain_label("", wrap=True)
        self.column.addWidget(plain_label(_WHAT, "quiet", wrap=True))
        self.column.addWidget(self._begin, alignment=Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self._progress)
        self.column.addWidget(self._said)
        self._said.hide()

    @Slot()
    def _choose(self) -> None:
        name = self._folder / f"benchwitness-{self._desk.today().isoformat()}.backup.zip"
        title, only = "Where is the backup to lie?", "Backups (*.zip)"
        # One that is there is never written over, so nobody is asked whether it may be.
        said, _ = QFileDialog.getSaveFileName(
            self, title, str(name), only, "", QFileDialog.Option.DontConfirmOverwrite
        )
        if not said or self._under_way is not None:
            return
        to, record = Path(said), self._desk.record
        self._folder = to.parent

        def work(tell: Tell) -> BackupMade:
            made = walked(make_backup(record.folder, to, record.clock()), tell)
            remember(record.folder, "file", made.manifest)
            return made

        words = f"Writing {to.name}"
        self._under_way = Telling(self._desk, self, words, work, self._wrote, self._gave_up)
        self._under_way.stepped.connect(self._progress.step)
        self._progress.begin(words)
        self._begin.setEnabled(False)
        self._said.hide()

    @Slot()
    def _stop(self) -> None:
        if self._under_way is not None:
            self._under_way.stop()

    def _wrote(self, made: BackupMade) -> None:
        manifest = made.manifest
        photos = sum(one.name.startswith("photos/") for one in manifest.members)
        lines = [
            f"Wrote {made.file}: {photos:,} photos and {manifest.entries:,} entries of the "
            f"history, {made.size / 1e6:,.1f} MB. It was read again and is whole."
        ]
        if manifest.missing_photos:
            gone = f"{len(manifest.missing_photos):,} photos are gone or damaged in the shop"
            lines.append(f"⚠ {gone}, so they are not in it; “benchwitness check” names them.")
        self._over("\n".join(lines))

    def _gave_up(self, trouble: ShopTrouble | None) -> None:
        self._over(trouble.sentence() if trouble else "Stopped. Nothing was written.")

    def _over(self, words: str) -> None:
        self._under_way = None
        self._progress.end()
        self._begin.setEnabled(True)
        self._said.setText(words)
        self._said.show()
