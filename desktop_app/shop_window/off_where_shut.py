"""Controls that write are off in a shop that takes no writing, and their tooltip says why."""

from __future__ import annotations

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QWidget

from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, WordsField, unsaved_fields
from desktop_app.shop_window.texts import tooltip


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
        why = self._desk.why_shut
        if why is not None and not typed_in(self._widget):
            self._widget.setEnabled(False)
            self._widget.setToolTip(tooltip(f"{why.what} {why.kept}".strip()))


def typed_in(box: QWidget) -> bool:
    """Tell whether somebody typed something in a box that is not kept."""
    lines = [one for one in box.findChildren(QLineEdit) if not isinstance(one, LineField)]
    texts = [one for one in box.findChildren(QPlainTextEdit) if not isinstance(one, WordsField)]
    return bool(
        unsaved_fields(box)
        or any(one.isModified() and one.text() for one in lines)
        or any(one.document().isModified() and one.toPlainText() for one in texts)
    )
