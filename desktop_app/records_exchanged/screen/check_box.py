"""Checking everything: is the shop whole, and what is to be done about each thing that is not?"""

from __future__ import annotations

from collections.abc import Callable, Generator

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QListWidget, QPushButton

from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import Tell, Telling, walked
from desktop_app.shop_record.problem import Checked, Problem
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

Check = Callable[[], Generator[Step, None, Checked]]
_WHAT = (
    "Reads everything once: the record, every row against the history, every photo, the search and "
    "the newest backup. Nothing is changed by it, and work goes on meanwhile."
)
_SHOWN = 500


class CheckBox(Section):
    """One button, how far it is, and the list of what was found."""

    def __init__(self, desk: Desk, check: Check) -> None:
        super().__init__("Check")
        self._desk, self._check = desk, check
        self._under_way: Telling | None = None
        self._begin = QPushButton("Check everything")
        self._begin.clicked.connect(self._look)
        self._progress = ProgressLine("checking")
        self._progress.stop_wanted.connect(self._stop)
        self._said = plain_label("", wrap=True)
        self._found = QListWidget()
        self._found.setAccessibleName("What the check found")
        self._found.setWordWrap(True)
        self._found.setMinimumHeight(8 * self.fontMetrics().height())
        self.column.addWidget(plain_label(_WHAT, "quiet", wrap=True))
        self.column.addWidget(self._begin, alignment=Qt.AlignmentFlag.AlignLeft)
        for widget in (self._progress, self._said, self._found):
            self.column.addWidget(widget)
        self._said.hide()
        self._found.hide()

    @Slot()
    def _look(self) -> None:
        if self._under_way is not None:
            return

        def work(tell: Tell) -> Checked:
            return walked(self._check(), tell)

        words = "Checking everything"
        self._under_way = Telling(self._desk, self, words, work, self._say, self._gave_up)
        self._under_way.stepped.connect(self._progress.step)
        self._progress.begin(words)
        self._begin.setEnabled(False)
        self._said.hide()
        self._found.hide()

    @Slot()
    def _stop(self) -> None:
        if self._under_way is not None:
            self._under_way.stop()

    def _say(self, checked: Checked) -> None:
        self._found.clear()
        for problem in checked.problems[:_SHOWN]:
            self._found.addItem(_line(problem))
        self._found.setVisible(not checked.ok)
        looked = (
            f"{checked.photos_checked:,} photos and {checked.history_entries_checked:,} entries of "
            "the history were checked"
        )
        lines = [f"{looked}: all is whole." if checked.ok else f"⚠ {looked}; this was found:"]
        if len(checked.problems) > _SHOWN:
            lines.append(f"Of {len(checked.problems):,} problems the first {_SHOWN} are shown.")
        self._over("\n".join([*lines, *checked.notes]))

    def _gave_up(self, trouble: ShopTrouble | None) -> None:
        self._over(trouble.sentence() if trouble else "Stopped. Nothing was changed.")

    def _over(self, words: str) -> None:
        self._under_way = None
        self._progress.end()
        self._begin.setEnabled(True)
        self._said.setText(words)
        self._said.show()


def _line(problem: Problem) -> str:
    lost = "Something is lost. " if problem.lost else ""
    return f"{problem.where}: {problem.what}\n{lost}{problem.do}"
