"""Checking everything: is the shop whole, and what is to be done about each thing that is not?"""

from __future__ import annotations

from collections.abc import Callable, Generator

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QListWidget

from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.telling import Tell, walked
from desktop_app.shop_record.problem import Checked, Problem
from desktop_app.shop_record.step import Step
from desktop_app.shop_window.desk import Desk

Check = Callable[[], Generator[Step, None, Checked]]
_WHAT = (
    "Reads everything once: the record, every row against the history, every photo, the search and "
    "the newest backup. Nothing is changed by it, and work goes on meanwhile."
)
_SHOWN = 500


class CheckBox(LongWorkBox):
    """One button, how far it is, and the list of what was found."""

    def __init__(self, desk: Desk, check: Check) -> None:
        super().__init__(desk, "Check", _WHAT, "Check everything", "checking")
        self._check = check
        self._found = QListWidget()
        self._found.setAccessibleName("What the check found")
        self._found.setWordWrap(True)
        self._found.setMinimumHeight(8 * self.fontMetrics().height())
        self.column.addWidget(self._found)
        self._found.hide()

    @Slot()
    def _pressed(self) -> None:
        if self._under_way is not None:
            return

        def work(tell: Tell) -> Checked:
            return walked(self._check(), tell)

        self._found.hide()
        stopped = "Stopped. Nothing was changed."
        self._start("Checking everything", work, self._say, stopped)

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


def _line(problem: Problem) -> str:
    lost = "Something is lost. " if problem.lost else ""
    return f"{problem.where}: {problem.what}\n{lost}{problem.do}"
