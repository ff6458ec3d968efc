"""The way to the list of keys: a button above the page, and its key."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QPushButton, QWidget
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.main_window import MainWindow

KEYS, PRESSED = tr("Keys"), "F1"


def offer_keys(window: MainWindow) -> None:
    """Add the list of keys to a window."""
    button = _KeysOffered(window)
    window.add_place(KEYS, button.page, on_rail=False, beside=True)
    window.add_to_top(button, last=True)


class _KeysOffered(QPushButton):
    """Shows what works on the page that is left for it; pressed again, it leads back."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__("?")
        self._window, self._came_from = window, ""
        self._had_cursor: QWidget | None = None
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a click leaves the cursor where it is
        self.setAccessibleName(tr("All keys, and what this program is"))
        self.setToolTip(tr("All keys, and what this program is ({pressed})", pressed=PRESSED))
        self.clicked.connect(self._press)
        on_key(window, PRESSED, tr("this list, and back"), self.click)

    def page(self) -> QWidget:
        """Make the page, which Esc leaves as well."""
        from desktop_app.shop_window.keys_page import KeysPage

        page = KeysPage()
        on_key(page, "Esc", tr("back to where this list was opened"), self.click)
        return page

    @Slot()
    def _press(self) -> None:
        from desktop_app.shop_window.keys_page import KeysPage, keys_by_place

        here = self._window.here()
        if here == KEYS:
            self._window.go_to(self._came_from)
            had = self._had_cursor
            if had is not None and isValid(had) and had.isVisible():
                had.setFocus()
        elif here:
            self._came_from, self._had_cursor = here, self._window.focusWidget()
            page = self._window.page(KEYS)
            assert isinstance(page, KeysPage)
            folder = self._window.folder()
            page.show_keys(here, *keys_by_place(self._window, here), folder)
            self._window.go_to(KEYS)
