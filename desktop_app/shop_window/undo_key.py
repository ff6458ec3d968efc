"""The undo key in a field: its own typing first; in one nobody typed into, the window's last deed.

Qt's fields keep the key to themselves even where they have nothing to undo, and say nothing.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QPlainTextEdit, QWidget

_KEYS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


class UndoKey(QObject):
    """Watches the field that has the cursor, in whatever window of the program."""

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
        """Let the key go on to the window where the field has nothing to undo or to do again.

        What was undone in a field to its beginning is not gone on with elsewhere.
        """
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and any(event.matches(key) for key in _KEYS)
            and _untouched(watched)
        ):
            event.ignore()
            return True
        return super().eventFilter(watched, event)


def _untouched(field: QObject) -> bool:
    """Tell whether nothing was typed into a field since its text was put there."""
    if isinstance(field, QComboBox):
        line = field.lineEdit()
        return line is not None and _untouched(line)
    if isinstance(field, QLineEdit):
        return not (field.isUndoAvailable() or field.isRedoAvailable())
    if isinstance(field, QPlainTextEdit):
        document = field.document()
        return not (document.isUndoAvailable() or document.isRedoAvailable())
    return False
