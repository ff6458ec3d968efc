"""Garbage is looked for on the window's thread alone: what belongs to a window must end there.

The interpreter looks for it wherever something is made, on any thread; widgets that it finds on
another one take the window down with them.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer, Slot

EACH_MS = 400


def watch_garbage(parent: QObject) -> None:
    """Begin to look for garbage, past what starting has made, where that was put off till now."""
    if not gc.isenabled() and parent.findChild(WindowGarbage) is None:
        gc.freeze()
        WindowGarbage(parent)


class WindowGarbage(QObject):
    """Looks now and then, as much as the interpreter itself would have looked by then."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        gc.disable()
        self._timer = QTimer(self)
        self._timer.setInterval(EACH_MS)
        self._timer.timeout.connect(self.look)
        self._timer.start()

    @Slot()
    def look(self) -> None:
        """Look through the youngest, and through the older ones where many have come together."""
        made, rounds, long_rounds = gc.get_count()
        most, most_rounds, most_long = gc.get_threshold()
        if made > most:
            gc.collect(0)
        if rounds > most_rounds:
            gc.collect(1)
        if long_rounds > most_long:
            gc.collect(2)
