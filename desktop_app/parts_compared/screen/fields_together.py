"""Fields that are kept together: what one of them lacks keeps the others from being saved."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout

from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.line_draft import LineDraft
from desktop_app.shop_window.texts import plain_label


class FieldsTogether(QFrame):
    """A row of named line fields with one save and one line beneath for what is still missing."""

    def __init__(
        self,
        names: list[tuple[str, str]],
        save: Callable[[list[str]], object],
        drafts: Drafts,
        form: str,
    ) -> None:
        """Take (words above, accessible name) of each field, and the save of all their texts.

        What lacks something, and so is not kept, is the draft `form` until it is whole.
        """
        super().__init__()
        self._save_all = save
        self._saving = False
        self.fields = [LineField(name, self._save) for _, name in names]
        lines = {str(place): field for place, field in enumerate(self.fields)}
        self._draft = LineDraft(self, drafts, lines)
        self._form: str | None = form
        self._said = plain_label("", "quiet", wrap=True)
        self._said.hide()
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        for place, ((words, _), field) in enumerate(zip(names, self.fields, strict=True)):
            # where only one name takes two lines, the fields still stand in a row
            grid.addWidget(Labelled(words, field), 0, place, Qt.AlignmentFlag.AlignBottom)
        grid.addWidget(self._said, 1, 0, 1, len(names))

    def show_texts(self, texts: list[str]) -> None:
        """Show what is kept in each field; the space before the next word is left standing."""
        for field, text in zip(self.fields, texts, strict=True):
            if not (field.hasFocus() and field.text().strip() == text):
                field.show_value(text)
        if self._form is not None:  # once the fields know what is kept; the draft differs from it
            self._draft.begin(self._form)
            self._form = None

    def say(self, words: str) -> None:
        """Say beneath the fields what is missing or accepted."""
        self._said.setText(words)
        self._said.setVisible(bool(words))

    def in_use(self) -> bool:
        """Whether somebody is writing here."""
        return any(field.hasFocus() for field in self.fields)

    def _save(self, _text: str) -> object:
        kept = self._save_all([field.text() for field in self.fields])
        if kept is not None and not self._saving:
            self._saving = True
            for field in self.fields:
                field.save_now()  # the others were kept with it, and now know it
            self._saving = False
            self._draft.look_again()
        return kept
