"""Waiting until typing rests, and keeping what is typed while it goes on."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QWidget

PAUSE_MS = 900  # typing that rests this long is saved
MOST_MS = 2000  # so much typing a crash may take, however steadily somebody types


class TypingPause(QTimer):
    """Calls `then` once typing rests, and `meanwhile` now and then while it goes on."""

    _goes_on = Signal()  # a signal holds nobody: who owns this is let go with it

    def __init__(
        self,
        owner: QWidget,
        then: Callable[[], object],
        meanwhile: Callable[[], object] | None = None,
        rests_ms: int = PAUSE_MS,
    ) -> None:
        super().__init__(owner)
        self.setSingleShot(True)
        self.setInterval(rests_ms)
        self.timeout.connect(then)
        self._goes_on.connect(meanwhile or then)
        self._late = QTimer(self)
        self._late.setSingleShot(True)
        self._late.setInterval(MOST_MS)
        self._late.timeout.connect(self._keep)

    @Slot()
    def typed(self) -> None:
        """Hear of a key: what rests rests from now on."""
        self.start()
        if not self._late.isActive():
            self._late.start()

    @Slot()
    def _keep(self) -> None:
        if self.isActive():  # else it rested
            self._goes_on.emit()
            self.start()  # whatever that ended: the rest is still to come
