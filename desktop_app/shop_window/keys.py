"""Keys that do something at once; each says what, so that the list of keys is whole."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractButton, QWidget

Keys = str | QKeySequence.StandardKey | Qt.Key


class _Press(QShortcut):
    """Presses the button that it belongs to.

    Connected to the button's own `click` each would leave something behind when its button goes.
    """

    def __init__(self, keys: QKeySequence, button: QAbstractButton) -> None:
        super().__init__(keys, button)
        self.activated.connect(self._press)

    @Slot()
    def _press(self) -> None:
        button = self.parent()
        assert isinstance(button, QAbstractButton)
        button.click()


def press_by(button: QAbstractButton, keys: str | QKeySequence.StandardKey) -> None:
    """Let keys press a button wherever the cursor is in its window.

    A button's own shortcut would press it a tenth of a second late; what is typed next would go
    to the page that is about to be left.
    """
    _Press(QKeySequence(keys), button)


def on_key(
    widget: QWidget,
    keys: Keys,
    does: str,
    slot: Callable[[], object],
    where: Qt.ShortcutContext = Qt.ShortcutContext.WindowShortcut,
) -> None:
    """Let keys do what no button stands for; `does` says it in the list of keys."""
    shortcut = QShortcut(QKeySequence(keys), widget)
    shortcut.setContext(where)
    shortcut.setWhatsThis(does)
    shortcut.activated.connect(slot)
