"""A list to choose from that the wheel leaves alone: scrolling must not change an answer."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QChildEvent, QEvent, QSize, Qt
from PySide6.QtWidgets import QComboBox, QFrame, QStyledItemDelegate, QWidget

SPARE = 4  # pixels that words take beyond what the style reckons with


class ChoiceList(QComboBox):
    """Opened by a press or a key; the wheel goes on to the page that it stands on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def sizeHint(self) -> QSize:
        return self._roomy(super().sizeHint())

    def minimumSizeHint(self) -> QSize:
        return self._roomy(super().minimumSizeHint())

    def _roomy(self, hint: QSize) -> QSize:
        """Return a width in which the words are read whole."""
        return hint + QSize(SPARE, 0)

    def childEvent(self, event: QChildEvent) -> None:
        super().childEvent(event)
        made = event.type() == QEvent.Type.ChildPolished
        if made and isinstance(opens := event.child(), QFrame):
            # Qt asks the style about what opens when it makes it, with the first entry, and what
            # it noted for that stays for good: the style leaves it out where notes are taken away,
            # unless it has a style sheet of its own. An empty one will do.
            opens.setStyleSheet("*{}")
            opens.ensurePolished()
            # Qt's own knows no height of a row.
            self.setItemDelegate(QStyledItemDelegate(self))

    def wheelEvent(self, event: Any) -> None:
        event.ignore()
