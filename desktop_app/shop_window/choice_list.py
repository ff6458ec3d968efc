"""A list to choose from that the wheel leaves alone: scrolling must not change an answer."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QWidget


class ChoiceList(QComboBox):
    """Opened by a press or a key; the wheel goes on to the page that it stands on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: Any) -> None:
        event.ignore()
