"""What is dragged here is copied; its source is never told that it moved."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QDropEvent


def take_a_copy(event: QDropEvent) -> None:
    """Accept a drag or a drop as a copy, whatever was proposed: originals stay where they are."""
    event.setDropAction(Qt.DropAction.CopyAction)
    event.accept()
