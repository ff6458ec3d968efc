"""How high a short list is."""

from __future__ import annotations

from PySide6.QtWidgets import QListView


def show_lines(view: QListView, lines: int) -> None:
    """Give a list the height of so many lines of its own letters."""
    view.setFixedHeight(lines * (view.fontMetrics().height() + 2) + 2 * view.frameWidth() + 2)
