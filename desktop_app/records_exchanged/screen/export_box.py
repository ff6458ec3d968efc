"""Taking everything out: a folder that can be read without this program."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFileDialog

from desktop_app.language import tr
from desktop_app.records_exchanged.export_files import ExportTold, export_everything
from desktop_app.records_exchanged.export_names import JOBS, table_file
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.new_name import new_name
from desktop_app.records_exchanged.screen.telling import Tell, walked
from desktop_app.records_exchanged.stored_export_jobs import has_returns_of_one_day
from desktop_app.shop_record.counted_words import entries_counted, jobs_counted, photos_counted
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label

_WHAT = tr(
    "All jobs as one table, every other table, the whole history and all photos, in a "
    "new folder. Any spreadsheet program reads it, without this program; brought into "
    "a new shop, nothing is lost."
)


class ExportBox(LongWorkBox):
    """One button, what its table of jobs leaves out, how far it is, and what was written where."""

    def __init__(self, desk: Desk) -> None:
        press = tr("Take everything out…")
        super().__init__(desk, tr("Take everything out"), _WHAT, press, tr("taking everything out"))
        self._desk = desk
        self._folder = Path.home()
        left_out = tr(
            "A return on the day on which the earlier job came is not in {jobs}, which has no "
            "times of day; {returns} has it.",
            jobs=JOBS,
            returns=table_file("return_link"),
        )
        self._left_out = plain_label(left_out, "quiet", wrap=True)
        self._left_out.hide()
        self.column.insertWidget(self.column.indexOf(self._begin), self._left_out)

    def look(self) -> None:
        """Say what the table of jobs leaves out, where this shop has such returns."""
        self._left_out.setVisible(bool(self._desk.ask(has_returns_of_one_day)))

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
