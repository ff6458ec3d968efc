"""Checking everything: is the shop whole, and what is to be done about each thing that is not?

What can be put right by itself is mended when somebody presses, after it was said what that does.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QListWidget, QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.telling import Tell, walked
from desktop_app.shop_record.checks.problem import Checked, Problem
from desktop_app.shop_record.counted_words import entries_counted, photos_counted
from desktop_app.shop_record.step import Step
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.off_where_shut import off_where_shut
from desktop_app.shop_window.texts import plain_label

Check = Callable[[], Generator[Step, None, Checked]]
_WHAT = tr(
    "Reads everything once: the record, every row against the history, every photo, "
    "the search and the newest backup. Nothing is changed by it, and work goes on "
    "meanwhile."
)
_SHOWN = 500


@dataclass(frozen=True, slots=True)
class Mending:
    """How what was found is mended: what that will do, in words, and the doing."""

    will_do: Callable[[Checked], Sequence[str]]
    do: Callable[[Checked], Generator[Step, None, list[str]]]


class CheckBox(LongWorkBox):
    """One button, how far it is, and the list of what was found; a second one mends."""

    def __init__(self, desk: Desk, check: Check, mending: Mending) -> None:
        super().__init__(desk, tr("Check"), _WHAT, tr("Check everything"), tr("checking"))
        self._check, self._mending = check, mending
        self._checked: Checked | None = None
        self._found = QListWidget()
        self._found.setAccessibleName(tr("What the check found"))
        self._found.setWordWrap(True)
        self._found.setMinimumHeight(8 * self.fontMetrics().height())
        self._will_do = plain_label("", wrap=True)
        self._mend = QPushButton(tr("Mend this"))
        self._mend.clicked.connect(self._press_mend)
        self.column.addWidget(self._found)
        self.column.addWidget(self._will_do)
        self.column.addWidget(self._mend, alignment=Qt.AlignmentFlag.AlignLeft)
        self._hide_found()
        off_where_shut(desk, self._mend)

    def _hide_found(self) -> None:
        for widget in (self._found, self._will_do, self._mend):
            widget.hide()

    @Slot()
    def _pressed(self) -> None:
        if self._under_way is not None:
            return

        def work(tell: Tell) -> Checked:
            return walked(self._check(), tell)

        self._hide_found()
        self._start(tr("Checking everything"), work, self._say, tr("Stopped. Nothing was changed."))

    @Slot()
    def _press_mend(self) -> None:
        found = self._checked
        if self._under_way is not None or found is None:
            return

        def work(tell: Tell) -> tuple[list[str], Checked]:
            """Mend, then check again: only that tells whether it is whole now."""
            return walked(self._mending.do(found), tell), walked(self._check(), tell)

        self._hide_found()
        stopped = tr("Stopped. What was mended by then stays; check again to see what is left.")
        self._start(tr("Mending"), work, self._mended, stopped)

    def _mended(self, came: tuple[list[str], Checked]) -> None:
        done, checked = came
        self._say(checked, [tr("Mended: {what}", what=one) for one in done[:_SHOWN]])

    def _say(self, checked: Checked, before: Sequence[str] = ()) -> None:
        self._checked = checked
        self._found.clear()
        for problem in checked.problems[:_SHOWN]:
            self._found.addItem(_line(problem))
        self._found.setVisible(not checked.ok)
        will_do = self._mending.will_do(checked)
        self._will_do.setText("\n".join([tr("“Mend this” does so much:"), *will_do]))
        self._will_do.setVisible(bool(will_do))
        self._mend.setVisible(bool(will_do))
        photos = photos_counted(checked.photos_checked)
        entries = entries_counted(checked.history_entries_checked)
        whole = tr(
            "{photos} and {entries} were checked: all is whole.", photos=photos, entries=entries
        )
        not_whole = tr(
            "⚠ {photos} and {entries} were checked; this was found:",
            photos=photos,
            entries=entries,
        )
        lines = [whole if checked.ok else not_whole]
        if len(checked.problems) > _SHOWN:
            lines.append(
                tr(
                    "Of {problems:,} problems the first {shown} are shown.",
                    problems=len(checked.problems),
                    shown=_SHOWN,
                )
            )
        self._over("\n".join([*before, *lines, *checked.notes]))


def _line(problem: Problem) -> str:
    do = [tr("Something is lost."), problem.do] if problem.lost else [problem.do]
    return f"{problem.where}: {problem.what}\n{' '.join(do)}"
