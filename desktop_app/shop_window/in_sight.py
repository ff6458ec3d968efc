"""Bringing what is worked on into sight, where the page is longer than the window."""

from __future__ import annotations

from PySide6.QtWidgets import QScrollArea, QWidget


def bring_up(widget: QWidget) -> None:
    """Scroll the page until a widget is seen with some room around it."""
    above = widget.parentWidget()
    while above is not None and not isinstance(above, QScrollArea):
        above = above.parentWidget()
    if above is not None:
        above.ensureWidgetVisible(widget, 50, 150)
