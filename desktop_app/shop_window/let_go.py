"""Letting a widget go that is on a page: it lives until the event loop comes to delete it."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

_going: list[QWidget] = []


def let_go(widget: QWidget) -> None:
    """Take a widget off its page and let the event loop delete it.

    Without a parent it would be deleted with the last name for it: inside its own signal, or by
    the garbage collector in an errand's thread. It is held until the event loop has deleted it.
    """
    _going[:] = [one for one in _going if isValid(one)]
    _going.append(widget)
    widget.hide()
    widget.setParent(None)
    widget.deleteLater()
