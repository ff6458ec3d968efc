"""What a field of one line and one of several have in common: they save what is typed in them."""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.being_saved import saving

if TYPE_CHECKING:
    from desktop_app.shop_window.fields import Save, TypedIn
    from desktop_app.shop_window.typing_pause import TypingPause


class SavesItself:
    """Saves through `save(text)`; a refusal leaves the text where it is."""

    makes_rows = False  # whether each saving adds a row to a list
    in_form = False  # whether it is a line of a form that keeps its own draft
    asked = False  # whether a person is asked which holds: this, or what another desk wrote
    _save: Save
    _pause: TypingPause
    _kept = ""

    def typed(self) -> str:
        """Return what stands in the field."""
        raise NotImplementedError

    def put(self, text: str) -> None:
        """Put a text into the field, with no undo there that would bring back another."""
        raise NotImplementedError

    def unsaved(self) -> bool:
        """Tell whether something typed here is not kept yet."""
        return self.typed() != self._kept

    def forget(self) -> None:
        """Empty the field and what it knows to be kept: the same words typed again are news."""
        self._pause.stop()
        self._kept = ""
        self.put("")

    @Slot()
    def save_now(self) -> None:
        """Save what was typed, if it differs from what is kept; tell the page what came of it."""
        self._pause.stop()
        field, text = cast("TypedIn", self), self.typed()
        if text != self._kept:
            with saving(field, text):
                if self._save(text) is not None:
                    self._kept = self.typed()
        tell_page(field, "typing_rested", field)

    def keep_meanwhile(self) -> None:
        """Let the page keep what is typed and not saved yet, while typing goes on."""
        field = cast("TypedIn", self)
        tell_page(field, "typing_rested", field)


def tell_page(widget: QWidget, hears: str, about: QWidget) -> None:
    """Tell the page on which a widget stands, if it has a method `hears` for that."""
    above = widget.parentWidget()
    while above is not None and not hasattr(above, hears):
        above = above.parentWidget()
    if above is not None:
        getattr(above, hears)(about)
