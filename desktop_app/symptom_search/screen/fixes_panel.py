"""What was done here before: the counts beside the found jobs, and what stands behind them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.fixes import Fix
from desktop_app.symptom_search.led_there import LedThere
from desktop_app.symptom_search.screen.fix_row import FixRow

HEADING = tr("What was done here before")
NOTE = tr(
    "Shares are of jobs whose window is over; the range holds the true share 95 times "
    "in 100. A job with two kinds of part counts under both."
)
MOST_LED = 2000  # jobs that are read for what led there, the newest
ReadLed = Callable[[Sequence[int]], LedThere]


class FixesPanel(QScrollArea):
    """A column of fixes, the most frequent first; every number opens to the jobs behind it."""

    behind_wanted = Signal(object)  # Behind

    def __init__(self, desk: Desk, read_led: ReadLed, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk, self._read_led = desk, read_led
        self.setAccessibleName(HEADING)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._section = Section("")
        self._section.column.addWidget(plain_label(HEADING, "heading", wrap=True))
        self._rows = QWidget()
        self._section.column.addWidget(self._rows)
        self._section.column.addWidget(plain_label(NOTE, "quiet", wrap=True))
        self._section.column.addStretch(1)
        self.setWidget(self._section)

    def show_fixes(self, fixes: Sequence[Fix], counted_over: str) -> None:
        """Show the fixes, under a sentence on the jobs that they were counted over."""
        rows = QWidget()
        column = QVBoxLayout(rows)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(plain_label(counted_over, "quiet", wrap=True))
        for fix in fixes:
            row = FixRow(fix)
            row.behind_wanted.connect(self.behind_wanted)
            row.led_wanted.connect(lambda row=row: self._ask_led(row))
            column.addWidget(row)
        old, self._rows = self._rows, rows
        self._section.column.replaceWidget(old, rows)
        old.hide()
        old.deleteLater()

    def _ask_led(self, row: FixRow) -> None:
        """Read beside the window what led there; other fixes may be shown by then."""
        rows, jobs = self._rows, row.fix.jobs

        def came(led: LedThere) -> None:
            if self._rows is rows:
                row.show_led(led, min(len(jobs), MOST_LED))

        self._desk.errands.run(
            tr("Reading what led there"), lambda: self._read_led(jobs[:MOST_LED]), came
        )
