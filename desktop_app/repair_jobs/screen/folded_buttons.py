"""A button behind which others stand that find no room; their keys press them there too."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShortcut
from PySide6.QtWidgets import QMenu, QPushButton

from desktop_app.language import tr

# Qt's own arrow stays small where letters are large, and its menu cuts such words.
_LOOK = """
QPushButton::menu-indicator { subcontrol-position: center right; right: 0.3em; margin-left: 0.4em;
  width: 0px; height: 0px; border-top: 0.35em solid palette(button-text);
  border-left: 0.3em solid palette(button); border-right: 0.3em solid palette(button); }
QMenu::item { padding: 8px 1em; }
QMenu::item:selected { background: palette(highlight); color: palette(highlighted-text); }
"""


class FoldedButtons(QPushButton):
    """Hidden where nothing stands behind it; it opens a menu of what does."""

    def __init__(self) -> None:
        super().__init__(tr("More…"))
        self.setMenu(QMenu(self))
        self.setStyleSheet(_LOOK)
        self.menu().aboutToShow.connect(self._fill)
        self._folded: tuple[QPushButton, ...] = ()
        self._keys: dict[QShortcut, QPushButton] = {}
        self.hide()

    def fold(self, buttons: Sequence[QPushButton], folded: Sequence[QPushButton]) -> None:
        """Show those of some buttons that are not folded, in their places; have the others here."""
        if tuple(folded) != self._folded:
            self._folded = tuple(folded)
            for short in self._keys:
                short.setEnabled(False)  # until it is gone two would claim its keys
                short.deleteLater()
            self._keys = {}
            for one in folded:
                self._take_keys(one)
        # Each shown one lays the row out anew, which asks for this again: by then all others have
        # left it.
        for one in folded:
            one.hide()
        self.setVisible(bool(folded))
        for one in buttons:
            one.setVisible(one not in folded)

    def _take_keys(self, button: QPushButton) -> None:
        """Let its keys press a button that is hidden, whose own keys sleep so long."""
        for own in button.findChildren(
            QShortcut, options=Qt.FindChildOption.FindDirectChildrenOnly
        ):
            short = QShortcut(own.key(), self)
            short.setWhatsThis(button.accessibleName() or button.text())
            short.activated.connect(self._press)
            self._keys[short] = button

    @Slot()
    def _press(self) -> None:
        short = self.sender()
        assert isinstance(short, QShortcut)
        self._keys[short].click()

    @Slot()
    def _fill(self) -> None:
        menu = self.menu()
        menu.clear()
        for button in self._folded:
            entry = menu.addAction(button.text(), partial(self._choose, button))
            entry.setEnabled(button.isEnabled())

    def _choose(self, button: QPushButton) -> None:
        button.click()
