"""Backing up now: the whole shop in one file, where somebody says."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFileDialog

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.telling import Tell, walked
from desktop_app.shop_record.backups.backup import BackupMade, make_backup
from desktop_app.shop_record.backups.backups_made import remember
from desktop_app.shop_record.counted_words import entries_counted, photos_counted
from desktop_app.shop_window.desk import Desk

_WHAT = tr(
    "The whole shop in one file, from which it comes back with all photos and its "
    "history. Best on another disk, such as a stick that you take home: a backup "
    "beside the shop burns with it. Each day one is made by itself too."
)


class BackupBox(LongWorkBox):
    """One button, how far it is, and what was written where."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, tr("Back up"), _WHAT, tr("Back up now…"), tr("backing up"))
        self._desk = desk
        self._folder = Path.home()

    @Slot()
    def _pressed(self) -> None:
        name = self._folder / f"benchwitness-{self._desk.today().isoformat()}.backup.zip"
        title, only = tr("Where is the backup to lie?"), tr("Backups (*.zip)")
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

        self._start(tr("Writing {file}", file=to.name), work, self._wrote)

    def _wrote(self, made: BackupMade) -> None:
        manifest = made.manifest
        lines = [
            tr(
                "Wrote {file}: {photos} and {entries}, {size:,.1f} MB. It was read again and is "
                "whole.",
                file=made.file,
                photos=photos_counted(manifest.photos()),
                entries=entries_counted(manifest.entries),
                size=made.size / 1e6,
            )
        ]
        if manifest.missing_photos:
            lines.append(
                tr(
                    "⚠ Gone or damaged in the shop, so not in it: {photos}; “benchwitness check” "
                    "names what is missing.",
                    photos=photos_counted(len(manifest.missing_photos)),
                )
            )
        self._over("\n".join(lines))
