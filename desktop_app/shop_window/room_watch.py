"""Whether the letters leave room: a page that is too narrow for them lies in another way."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QWidget

_CHANGES = (QEvent.Type.Resize, QEvent.Type.FontChange)


class RoomWatch(QObject):
    """Tells a widget that it is narrower than so many letters, or not, when either changes."""

    def __init__(self, widget: QWidget, letters: int, lay: Callable[[bool], object]) -> None:
        super().__init__(widget)
        self._widget, self._letters, self._lay = widget, letters, lay
        widget.installEventFilter(self)

    def look(self) -> None:
        """Tell it now."""
        letter = self._widget.fontMetrics().averageCharWidth()
        self._lay(self._widget.width() < self._letters * letter)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Look when the size or the letters have changed."""
        if event.type() in _CHANGES:
            self.look()
        return False
