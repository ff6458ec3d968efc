"""What Ctrl+Z (and redo) does while the cursor is in a field.

A field that was typed into takes back its own typing, as people know it. In a field nobody typed
into the key takes back the shop's last deed, as it does outside of fields. Left to itself, Qt gives
the key to the field in both cases, and in the second nothing would happen.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QPlainTextEdit, QWidget

_KEYS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


class UndoKey(QObject):
    """Decides whether the key belongs to the field that has the cursor or to the window."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_went)

    @Slot("QWidget*", "QWidget*")
    def _focus_went(self, left: QWidget | None, now: QWidget | None) -> None:
        if left is not None:
            left.removeEventFilter(self)
        if isinstance(now, QLineEdit | QPlainTextEdit | QComboBox):
            now.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the key from a field nobody typed into, so that it reaches the window's own undo.

        A field whose typing was taken back to its beginning keeps the key (it can do it again):
        whoever presses once too often must not take a deed back.
        """
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and any(event.matches(key) for key in _KEYS)
            and _untouched(watched)
        ):
            event.ignore()  # Qt asks the field first; a no makes the key a shortcut of the window
            return True
        return super().eventFilter(watched, event)


def _untouched(field: QObject) -> bool:
    """Tell whether a field has no typing of its own to take back or to do again."""
    if isinstance(field, QComboBox):
        line = field.lineEdit()
        return line is not None and _untouched(line)
    if isinstance(field, QLineEdit):
        return not (field.isUndoAvailable() or field.isRedoAvailable())
    if isinstance(field, QPlainTextEdit):
        document = field.document()
        return not (document.isUndoAvailable() or document.isRedoAvailable())
    return False
