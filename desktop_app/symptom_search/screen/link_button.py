"""A number or a few words that open what stands behind them."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget

_LOOK = """
QPushButton { border: 1px solid transparent; background: transparent; color: palette(link);
  text-decoration: underline; padding: 4px 12px 4px 0; }
QPushButton:hover { border-color: palette(highlight); }
QPushButton:focus { border: 2px solid palette(highlight); }
"""


class LinkButton(QPushButton):
    """Looks like a link, is reached and pressed like a button; `name` says what it opens."""

    def __init__(self, words: str, name: str, parent: QWidget | None = None) -> None:
        super().__init__(words.replace("&", "&&"), parent)
        self.setAccessibleName(name)
        self.setStyleSheet(_LOOK)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
