"""A line that is read as an amount, hours, a day; what is refused stays, with what is accepted."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from desktop_app.figures_shown import shown
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.fields import Labelled, LineField, WordsField

Read = Callable[[str], Any]
NO_NAME = "\u00a0"  # over a button, so that it stands in line with the fields beside it


class TypedField(Labelled):
    """A named line with a hint beneath; `save` gets what `read` makes of the words."""

    def __init__(
        self,
        name: str,
        read: Read,
        save: Callable[[Any], object],
        hint: str = "",
        shown: Callable[[Any], str] = str,
    ) -> None:
        self.line = LineField(name, self._save)
        super().__init__(name, self.line, hint)
        self._read, self._save_value = read, save
        self._shown = shown

    def show_kept(self, value: Any) -> None:
        """Show what is kept; words that say the same already are left as they were typed."""
        try:
            same = self._read(self.line.text()) == value
        except ShopTrouble:
            same = False
        words = "" if value is None else self._shown(value)
        self.line.show_value(self.line.text() if same else words)

    def _save(self, text: str) -> object:
        try:
            value = self._read(text)
        except ShopTrouble as trouble:
            self.refuse(trouble.sentence())
            return None
        self.refuse("")
        return self._save_value(value)


def show_words(field: WordsField, kept: str) -> None:
    """Show kept words, but leave spaces that were typed around them."""
    if field.toPlainText().strip() != kept.strip():
        field.show_value(kept)


def amount_text(cents: int) -> str:
    """Return cents as their field shows them: "120.50"."""
    return shown(f"{cents // 100}.{cents % 100:02d}")
