"""What led to a fix: what was looked at first and the codes, each number opening to its jobs."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.led_there import Led, LedThere
from desktop_app.symptom_search.screen.jobs_behind import Behind
from desktop_app.symptom_search.screen.link_button import LinkButton

FEW = 10  # jobs; with fewer of them a count says little


class LedBox(QWidget):
    """Shown under one fix; `behind_wanted` carries what stands behind the number pressed."""

    behind_wanted = Signal(object)  # Behind

    def __init__(self, fix: str, led: LedThere, read: int, of: int) -> None:
        """Take what led to a fix, read from `read` of its `of` jobs, the newest."""
        super().__init__()
        self._fix = fix
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(12, 2, 0, 6)
        self._column.setSpacing(2)
        if not led.looked_at and not led.coded:
            self._say(tr("No finding and no code is written in these jobs."))
        self._add(tr("Looked at first"), led.first_looked, led.looked_at, tr("with a finding"))
        self._add(tr("Codes found"), led.codes, led.coded, tr("with a code"))
        if 0 < max(led.looked_at, led.coded) < FEW:
            self._say(tr("Few jobs: a hint, no more."))
        if read < of:
            self._say(tr("Read from the newest {read:,} of {of:,} jobs.", read=read, of=of))

    def _add(self, heading: str, found: tuple[Led, ...], jobs: int, which: str) -> None:
        if not found:
            return
        many = jobs_counted(jobs)
        self._say(tr("{heading}, of {jobs} {which}:", heading=heading, jobs=many, which=which))
        for one in found:
            behind = Behind(f"{self._fix}: {one.words}", one.jobs)
            count = jobs_counted(len(one.jobs))
            link = LinkButton(count, f"{behind.words}: {count}")
            link.clicked.connect(lambda _on=False, behind=behind: self.behind_wanted.emit(behind))
            row = QHBoxLayout()
            row.addWidget(link)
            row.addWidget(plain_label(one.words, wrap=True), 1)
            self._column.addLayout(row)

    def _say(self, words: str) -> None:
        self._column.addWidget(plain_label(words, "quiet", wrap=True))
