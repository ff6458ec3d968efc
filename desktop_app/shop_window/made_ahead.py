"""Pages made before anybody goes there, a step at a time while the window is idle."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.place_names import FIRST_RULES

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk
    from desktop_app.shop_window.main_window import MainWindow

BETWEEN_MS = 60  # what a person does meanwhile comes first
REST_MS = 1_500  # after a rule of the house was changed: mostly another one is, too


class MadeAhead(QObject):
    """Makes the pages of some places in turn; what can't be made is told to whoever goes there.

    It rests while the shop's server is away, and while a new shop is set up.
    """

    def __init__(self, window: MainWindow, desk: Desk, names: Iterable[str]) -> None:
        super().__init__(window)
        self._window, self._desk = window, desk
        self._names = tuple(dict.fromkeys(names))
        self._left = list(self._names)
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._step)
        desk.closing.connect(self._timer.stop)
        self._timer.start(BETWEEN_MS)

    def begin_anew(self) -> None:
        """Make again, after a rest, what was let go meanwhile."""
        self._left = list(self._names)
        self._timer.start(REST_MS)

    @Slot()
    def _step(self) -> None:
        self._timer.setInterval(BETWEEN_MS)
        self._left = [name for name in self._left if not self._window.has_page(name)]
        if not self._left or self._desk.why_shut is not None:
            self._timer.stop()
        elif self._desk.record.away is None and self._window.here() != FIRST_RULES:
            name = self._left.pop(0)
            with suppress(ShopTrouble):
                if not self._window.go_on_making(name):
                    self._left.insert(0, name)
