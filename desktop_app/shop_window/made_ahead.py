"""Pages made before anybody goes there, a step at a time while the window is idle."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot

from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk
    from desktop_app.shop_window.main_window import MainWindow

BETWEEN_MS = 60  # what a person does meanwhile comes first


class MadeAhead(QObject):
    """Makes the pages of some places in turn; none while the shop can't be reached.

    What can't be made is told to whoever goes there.
    """

    def __init__(self, window: MainWindow, desk: Desk, names: Iterable[str]) -> None:
        super().__init__(window)
        self._window, self._desk = window, desk
        self._names = list(names)
        self._timer = QTimer(self)
        self._timer.setInterval(BETWEEN_MS)
        self._timer.timeout.connect(self._step)
        desk.closing.connect(self._timer.stop)
        self._timer.start()

    @Slot()
    def _step(self) -> None:
        if not self._names or self._desk.why_shut is not None:
            self._timer.stop()
            return
        whole = True
        with suppress(ShopTrouble):
            whole = self._window.go_on_making(self._names[0])
        if whole:
            self._names.pop(0)
