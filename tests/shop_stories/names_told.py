"""What a screen reader would have no name for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QWidget


def nameless(window: QWidget) -> list[str]:
    """Return the controls of a window that Tab stops at and that have no name."""
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or not widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            continue
        if widget.focusProxy() is not None:  # that one has the focus, and is looked at itself
            continue
        accessible = QAccessible.queryAccessibleInterface(widget)
        if accessible is None or not accessible.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found
