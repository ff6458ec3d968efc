"""Where a window was left, and how large: it comes back so, as far as the screens leave room."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QSettings, QSize
from PySide6.QtWidgets import QApplication, QWidget

_USUAL = QSize(1280, 820)
_FRAME = QSize(16, 48)  # pixels, around a window
_PLACE, _SIZE = "window/geometry", "window/size"


def put_in_place(window: QWidget, memory: QSettings | None) -> None:
    """Give a window that is not shown yet the place and size in which the last one was left.

    On a screen of quite another width Qt restores nothing: the size alone is kept then.
    """
    place = memory.value(_PLACE) if memory is not None else None
    if isinstance(place, QByteArray) and window.restoreGeometry(place):
        return
    size = memory.value(_SIZE) if memory is not None else None
    wanted = size if isinstance(size, QSize) and size.isValid() else _USUAL
    window.resize(wanted.boundedTo(_room()))


def keep_place(window: QWidget, memory: QSettings | None) -> None:
    """Remember where a window is, and how large it is where it is not maximized."""
    if memory is not None:
        memory.setValue(_PLACE, window.saveGeometry())
        memory.setValue(_SIZE, window.normalGeometry().size())
        memory.sync()  # now: a program may be ended right after its window was closed


def _room() -> QSize:
    """Return what a screen leaves for a window with its frame; there may be none."""
    screen = QApplication.primaryScreen()
    return screen.availableSize() - _FRAME if screen is not None else _USUAL
