"""Taking everything out: a folder that can be read without this program."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFileDialog, QPushButton

from desktop_app.records_exchanged.export_actions import ExportTold, export_everything
from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import Tell, Telling, walked
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

_WHAT = (
    "All jobs as one table, every other table, the whole history and all photos, in a new folder. "
    "Any spreadsheet program reads it, without this program; brought into a new shop, nothing is "
    "lost."
)


class ExportBox(Section):
    """One button, how far it is, and what was written where."""

    def __init__(self, desk: Desk) -> None:
        super().__init__("Take everything out")
        self._desk = desk
        self._folder = Path.home()
        self._under_way: Telling | None = None
        self._begin = QPushButton("Take everything out…")
        self._begin.clicked.connect(self._choose)
        self._progress = ProgressLine("taking everything out")
        self._progress.stop_wanted.connect(self._stop)
        self._said = plain_label("", wrap=True)
        self.column.addWidget(plain_label(_WHAT, "quiet", wrap=True))
        self.column.addWidget(self._begin, alignment=Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self._progress)
        self.column.addWidget(self._said)
        self._said.hide()

    @Slot()
    def _choose(self) -> None:
        title = "Where is the new folder to lie?"
        name = QFileDialog.getExistingDirectory(self, title, str(self._folder))
        if not name or self._under_way is not None:
            return
        self._folder = Path(name)
        to = _new_name(self._folder, f"benchwitness-{self._desk.today().isoformat()}")
        record = self._desk.record

        def work(tell: Tell) -> ExportTold:
            return walked(export_everything(record, to), tell)

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

    def _wrote(self, told: ExportTold) -> None:
        lines = [
            f"Wrote {told.jobs:,} jobs, {told.photos:,} photos and {told.history_entries:,} "
            f"entries of the history, {told.bytes_written / 1e6:,.1f} MB, into {told.folder}.",
            "README.txt there says what is what. It can be read without this program.",
        ]
        if told.missing:
            lines.append(f"⚠ Gone or damaged, so not written: {', '.join(told.missing[:20])}.")
        self._over("\n".join(lines))

    def _gave_up(self, trouble: ShopTrouble | None) -> None:
        self._over(trouble.sentence() if trouble else "Stopped. Nothing was written.")

    def _over(self, words: str) -> None:
        self._under_way = None
        self._progress.end()
        self._begin.setEnabled(True)
        self._said.setText(words)
        self._said.show()


def _new_name(folder: Path, name: str) -> Path:
    """Return a name in the folder that nothing has yet."""
    to, number = folder / name, 1
    while to.exists():
        number += 1
        to = folder / f"{name}-{number}"
    return to
