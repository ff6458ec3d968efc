"""Words that end in "…" where they find no room, said whole under the mouse."""

from __future__ import annotations

from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QToolTip, QWidget

from desktop_app.shop_window.texts import tooltip


def say_whole(widget: QWidget, asked: QHelpEvent, words: str) -> None:
    """Say all the words of a widget, and below them what it is for."""
    lines = (tooltip(words), widget.toolTip())
    QToolTip.showText(asked.globalPos(), "<br>".join(filter(None, lines)), widget)
