"""The program started anew in place of itself, for what holds only from its start on."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QWidget

_WANTED = "started anew"


def start_anew(window: QWidget) -> bool:
    """Close the window and have the program started anew after it; False where it stays open.

    A window that would lose something says so and stays.
    """
    application = QApplication.instance()
    assert application is not None
    closed = window.close()
    application.setProperty(_WANTED, closed)
    return closed


def is_wanted() -> bool:
    """Whether the window was closed to be opened anew."""
    application = QApplication.instance()
    return application is not None and bool(application.property(_WANTED))
