"""The way to the list of keys: a button above the page, and its key."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QLineEdit, QPushButton, QWidget
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
        self._selected = (0, 0)
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
                _select(had, self._selected)
        elif here:
            self._came_from, self._had_cursor = here, self._window.focusWidget()
            self._selected = _selection(self._had_cursor)
            page = self._window.page(KEYS)
            assert isinstance(page, KeysPage)
            folder = self._window.folder()
            page.show_keys(here, *keys_by_place(self._window, here), folder)
            self._window.go_to(KEYS)


def _selection(field: QWidget | None) -> tuple[int, int]:
    """Return where the cursor stands in a line, and how much is selected up to there."""
    if not isinstance(field, QLineEdit):
        return 0, 0
    selected = len(field.selectedText())
    begins_there = selected and field.selectionStart() == field.cursorPosition()
    return field.cursorPosition(), -selected if begins_there else selected


def _select(field: QWidget, selected: tuple[int, int]) -> None:
    """Put the cursor and what is selected back: a page that is come to may select all."""
    if isinstance(field, QLineEdit):
        at, length = selected
        field.setSelection(at - length, length) if length else field.setCursorPosition(at)
