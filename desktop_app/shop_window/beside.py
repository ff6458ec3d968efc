"""A few words beside a control, for a moment: over the page, so that nothing on it moves."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QTimer
from PySide6.QtWidgets import QLabel, QWidget

from desktop_app.shop_window.texts import plain_label

STAYS_MS = 8000
WIDE = 380
NAME = "beside"
STRIP = "notice"  # at the foot of the window, where what is said beside a control leads


def say_beside(widget: QWidget, words: str) -> None:
    """Say something beneath a control, in place of what was said so before; else above it."""
    window = widget.window()
    for before in window.findChildren(QLabel, NAME):
        before.hide()
        before.deleteLater()
    label = plain_label(words, NAME, wrap=True)
    label.setParent(window)
    label.setFixedWidth(min(WIDE, window.width()))
    label.adjustSize()
    below = widget.mapTo(window, QPoint(0, widget.height()))
    above = below.y() - widget.height() - label.height()
    label.move(
        max(0, min(below.x(), window.width() - label.width())),
        max(0, below.y() if below.y() + label.height() <= _foot(window) else above),
    )
    label.show()
    label.raise_()
    from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent

    # Nothing gets the focus here: a screen reader reads it only where it is announced.
    QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(label, words))
    QTimer.singleShot(STAYS_MS, label, label.deleteLater)


def _foot(window: QWidget) -> int:
    """Return the height down to which nothing lies that is to be read besides."""
    strips = window.findChildren(QWidget, STRIP)
    seen = (one.mapTo(window, QPoint(0, 0)).y() for one in strips if one.isVisible())
    return min(seen, default=window.height())
