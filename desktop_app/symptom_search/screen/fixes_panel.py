"""What fixed it here before: the counts beside the found jobs."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.fixes import Fix

NOTE = (
    "Shares are of jobs whose window is over; the range holds the true share 95 times in 100. "
    "A job with two kinds of part counts under both."
)


class FixesPanel(QScrollArea):
    """A column of fixes, the most frequent first, each with its counts in words."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("What fixed it here before")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._section = Section("What fixed it here before")
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
            name = plain_label(fix.name, wrap=True)
            font = name.font()
            font.setBold(True)
            name.setFont(font)
            column.addSpacing(8)
            column.addWidget(name)
            column.addWidget(plain_label(fix.sentence(), wrap=True))
        old, self._rows = self._rows, rows
        self._section.column.replaceWidget(old, rows)
        old.hide()
        old.deleteLater()
