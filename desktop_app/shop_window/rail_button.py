"""A button of the rail, which stands in bold where its place is shown."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QPushButton


class RailButton(QPushButton):
    """Keeps room for its words in bold, in which they stand where its place is shown."""

    def sizeHint(self) -> QSize:
        hint, bold = super().sizeHint(), self.font()
        bold.setBold(True)
        more = QFontMetrics(bold).horizontalAdvance(self.text())
        more -= self.fontMetrics().horizontalAdvance(self.text())
        return QSize(hint.width() + max(0, more), hint.height())
