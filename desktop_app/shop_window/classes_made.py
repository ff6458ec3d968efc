"""PySide6's classes of Qt, made a few at a time while the window is idle, and on its own thread.

Each is made when it is first named, and all of a sort at once when something is met that Qt made
by itself, which holds the window. A thread beside it that loads a place's modules would make them
too: two threads that make classes at the same time can end the program.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from time import perf_counter
from typing import TYPE_CHECKING

from PySide6 import QtCore, QtGui, QtWidgets
from PySide6.QtCore import QObject, QTimer, Signal, Slot

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk

AT_ONCE_SECONDS = 0.004


class ClassesMade(QObject):
    """Makes them all, and says when they are there."""

    whole = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._made = _one_by_one()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._go_on)
        self._timer.start(1)

    @Slot()
    def stop(self) -> None:
        """Leave the others to whoever names them."""
        self._timer.stop()

    @Slot()
    def _go_on(self) -> None:
        begun = perf_counter()
        for _ in self._made:
            if perf_counter() - begun > AT_ONCE_SECONDS:
                return
        self._timer.stop()
        self.whole.emit()


def make_classes(desk: Desk, then: Callable[[], None]) -> None:
    """Make them while a shop is open, and go on with `then` once they are there."""
    classes = ClassesMade(desk)
    classes.whole.connect(then)
    desk.closing.connect(classes.stop)


def _one_by_one() -> Iterator[object]:
    for module in (QtCore, QtGui, QtWidgets):
        for each in dir(module):
            yield getattr(module, each)
