"""One thing that was done here before: its counts in words, each number opening to its jobs."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.fixes import Fix
from desktop_app.symptom_search.led_there import LedThere
from desktop_app.symptom_search.screen.jobs_behind import Behind
from desktop_app.symptom_search.screen.led_box import LedBox
from desktop_app.symptom_search.screen.link_button import LinkButton


class FixRow(QWidget):
    """A fix with the ways to what stands behind it; `led_wanted` asks for what led to it."""

    behind_wanted = Signal(object)  # Behind
    led_wanted = Signal()

    def __init__(self, fix: Fix) -> None:
        super().__init__()
        self.fix = fix
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 8, 0, 0)
        self._column.setSpacing(2)
        name = plain_label(fix.name, wrap=True)
        font = name.font()
        font.setBold(True)
        name.setFont(font)
        self._column.addWidget(name)
        self._column.addWidget(plain_label(fix.sentence(), wrap=True))
        self._links = QWidget()
        self._line = FlowRow(self._links, 0)
        self._add_link(jobs_counted(len(fix.jobs)), fix.jobs)
        self._add_link(tr("{number:,} settled", number=fix.settled), fix.settled_jobs)
        self._add_link(tr("{number:,} came back", number=fix.came_back), fix.back_jobs)
        self._led = LinkButton(tr("What led there"), tr("{fix}: what led there", fix=fix.name))
        self._led.clicked.connect(self._ask)
        self._line.addWidget(self._led)
        self._column.addWidget(self._links)

    def show_led(self, led: LedThere, read: int) -> None:
        """Show what led there, read from so many of the jobs."""
        box = LedBox(self.fix.name, led, read, len(self.fix.jobs))
        box.behind_wanted.connect(self.behind_wanted)
        self._column.addWidget(box)

    def _add_link(self, words: str, jobs: Sequence[int]) -> None:
        if not jobs:
            return
        behind = Behind(f"{self.fix.name}: {words}", jobs)
        link = LinkButton(words, behind.words)
        link.clicked.connect(lambda: self.behind_wanted.emit(behind))
        self._line.addWidget(link)

    @Slot()
    def _ask(self) -> None:
        off_because(self._led, tr("What led there stands below."))
        self.led_wanted.emit()
