"""Controls that write are off in a shop that takes no writing, and their tooltip says why."""

from __future__ import annotations

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QWidget

from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, WordsField, unsaved_fields
from desktop_app.shop_window.off_because import off_because


def off_where_shut(desk: Desk, *widgets: QWidget) -> None:
    """Put controls, or boxes of them, off once the shop takes no writing; at once where it is so.

    A box in which something is typed that is kept nowhere stays on, so that it can be copied out:
    whoever presses there is refused in words.
    """
    for widget in widgets:
        _OffWhereShut(desk, widget)


class _OffWhereShut(QObject):
    def __init__(self, desk: Desk, widget: QWidget) -> None:
        super().__init__(widget)
        self._desk, self._widget = desk, widget
        desk.was_shut.connect(self._look)
        self._look()

    @Slot()
    def _look(self) -> None:
        why = why_shut(self._desk)
        if why and not typed_in(self._widget):
            off_because(self._widget, why)


def why_shut(desk: Desk) -> str:
    """Return why nothing can be written into the shop; "" where it can."""
    why = desk.why_shut
    return "" if why is None else f"{why.what} {why.kept}".strip()


def typed_in(box: QWidget) -> bool:
    """Tell whether somebody typed something in a box that is not kept."""
    lines = [one for one in box.findChildren(QLineEdit) if not isinstance(one, LineField)]
    texts = [one for one in box.findChildren(QPlainTextEdit) if not isinstance(one, WordsField)]
    return bool(
        unsaved_fields(box)
        or any(one.isModified() and one.text() for one in lines)
        or any(one.document().isModified() and one.toPlainText() for one in texts)
    )
