"""Pages that are only looked at: they have the cursor themselves, and keys scroll them at once."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QScrollArea, QScrollBar

from desktop_app.language import tr
from desktop_app.shop_window.keys import on_key

_TO = QScrollBar.SliderAction


def scroll_by_keys(area: QScrollArea) -> None:
    """Let what scrolls take the cursor, and Home and End lead to its ends: Qt leaves these out."""
    area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    inside = Qt.ShortcutContext.WidgetWithChildrenShortcut
    for key, does, to in (
        ("Home", tr("to the top"), _TO.SliderToMinimum),
        ("End", tr("to the end"), _TO.SliderToMaximum),
    ):
        on_key(area, key, does, partial(area.verticalScrollBar().triggerAction, to), inside)
