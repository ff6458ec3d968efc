"""Taking everything out: a folder that can be read without this program."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFileDialog

from desktop_app.language import tr
from desktop_app.records_exchanged.export_actions import ExportTold, export_everything
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.new_name import new_name
from desktop_app.records_exchanged.screen.telling import Tell, walked
from desktop_app.shop_record.counted_words import entries_counted, jobs_counted, photos_counted
from desktop_app.shop_window.desk import Desk

_WHAT = tr(
    "All jobs as one table, every other table, the whole history and all photos, in a "
    "new folder. Any spreadsheet program reads it, without this program; brought into "
    "a new shop, nothing is lost."
)


class ExportBox(LongWorkBox):
    """One button, how far it is, and what was written where."""

    def __init__(self, desk: Desk) -> None:
        press = tr("Take everything out…")
        super().__init__(desk, tr("Take everything out"), _WHAT, press, tr("taking everything out"))
        self._desk = desk
        self._folder = Path.home()

    @Slot()
    def _pressed(self) -> None:
        title = tr("Where is the new folder to lie?")
        name = QFileDialog.getExistingDirectory(self, title, str(self._folder))
        if not name or self._under_way is not None:
            return
        self._folder = Path(name)
        to = new_name(self._folder, f"benchwitness-{self._desk.today().isoformat()}")
        record = self._desk.record

        def work(tell: Tell) -> ExportTold:
            return walked(export_everything(record, to), tell)

        self._start(tr("Writing {file}", file=to.name), work, self._wrote)

    def _wrote(self, told: ExportTold) -> None:
        lines = [
            tr(
                "Wrote {jobs}, {photos} and {entries}, {size:,.1f} MB, into {folder}.",
                jobs=jobs_counted(told.jobs),
                photos=photos_counted(told.photos),
                entries=entries_counted(told.history_entries),
                size=told.bytes_written / 1e6,
                folder=told.folder,
            ),
            tr("README.txt there says what is what. It can be read without this program."),
        ]
        if told.missing:
            lines.append(
                tr(
                    "⚠ Gone or damaged, so not written: {missing}.",
                    missing=", ".join(told.missing[:20]),
                )
            )
        self._over("\n".join(lines))
