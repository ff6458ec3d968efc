"""Keys that press a button at once."""

from __future__ import annotations

from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractButton


def press_by(button: QAbstractButton, keys: str | QKeySequence.StandardKey) -> None:
    """Let keys press a button wherever the cursor is in its window.

    A button's own shortcut would press it a tenth of a second late; what is typed next would go
    to the page that is about to be left.
    """
    shortcut = QShortcut(QKeySequence(keys), button)
    shortcut.activated.connect(button.click)
