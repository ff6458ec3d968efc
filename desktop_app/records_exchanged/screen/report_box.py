"""If something went wrong: what can be sent to who looks after the program, shown before."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFileDialog, QPlainTextEdit, QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.telling import Tell
from desktop_app.shop_record.own_program.problem_report import (
    make_report,
    report_text,
    write_report,
)
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk

_WHAT = tr(
    "A report for whoever looks after the program: its version, settings that are "
    "numbers or choices, and where in the program it went wrong. No customer, car, "
    "person or place is in it. It is shown here first, and sent by nobody but you."
)


class ReportBox(LongWorkBox):
    """One button shows the report, and then a second one writes what is shown into a file."""

    def __init__(self, desk: Desk) -> None:
        press = tr("Show the report")
        super().__init__(
            desk, tr("If something went wrong"), _WHAT, press, tr("looking through the log")
        )
        self._desk = desk
        self._pieces: dict[str, str] = {}
        self._folder = Path.home()
        self._shown = QPlainTextEdit()
        self._shown.setReadOnly(True)
        self._shown.setAccessibleName(tr("What the report says"))
        self._shown.setTabChangesFocus(True)
        self._shown.setMinimumHeight(14 * self.fontMetrics().height())
        self._write = QPushButton(tr("Write it into a file…"))
        self._write.clicked.connect(self._press_write)
        self.column.addWidget(self._shown)
        self.column.addWidget(self._write, alignment=Qt.AlignmentFlag.AlignLeft)
        self._shown.hide()
        self._write.hide()

    @Slot()
    def _pressed(self) -> None:
        if self._under_way is not None:
            return
        folder, rules = self._desk.record.folder, self._desk.rules

        def work(_tell: Tell) -> dict[str, str]:
            return make_report(folder, rules)

        self._start(tr("Putting the report together"), work, self._show)

    def _show(self, pieces: dict[str, str]) -> None:
        self._pieces = pieces
        self._shown.setPlainText(report_text(pieces))
        self._shown.show()
        self._write.show()
        self._over(tr("This is all that is in it."))

    @Slot()
    def _press_write(self) -> None:
        name = self._folder / f"benchwitness-report-{self._desk.today().isoformat()}.zip"
        said, _ = QFileDialog.getSaveFileName(
            self, tr("Where is the report to lie?"), str(name), tr("Reports (*.zip)")
        )
        if not said:
            return
        to = Path(said)
        self._folder = to.parent
        try:
            write_report(self._pieces, to)  # some kilobytes
        except ShopTrouble as trouble:
            self._over(trouble.sentence())
            return
        self._over(tr("Wrote {file}.", file=to))
