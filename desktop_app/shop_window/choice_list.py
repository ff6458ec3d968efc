"""A list to choose from that the wheel leaves alone: scrolling must not change an answer."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QChildEvent, QEvent, Qt
from PySide6.QtWidgets import QComboBox, QFrame, QStyledItemDelegate, QWidget


class ChoiceList(QComboBox):
    """Opened by a press or a key; the wheel goes on to the page that it stands on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

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
