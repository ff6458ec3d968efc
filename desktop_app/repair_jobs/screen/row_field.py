"""A line that becomes a row of a list: with Enter, and when its job or its page is left."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit

from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import LineField, Save
from desktop_app.shop_window.line_draft import LineDraft


class RowField(LineField):
    """Hands what was typed to `save` and is empty again; a refusal brings the words back.

    A rest in typing does not save it: half a sentence would become a row. With `drafts` it is
    kept as a draft then. Enter in an empty one says `no_more`.
    """

    no_more = Signal()
    makes_rows = True

    def __init__(self, name: str, save: Save, drafts: Drafts | None = None) -> None:
        super().__init__(name, self._add)
        self._add_row = save
        self._draft = None if drafts is None else LineDraft(self, drafts, {"typed": self})

    def begin(self, form: str) -> None:
        """Be the line of another form: what stands in it goes to the one before."""
        self.save_now()
        self.setText("")  # and no undo here that would bring it back
        if self._draft is not None:
            self._draft.begin(form)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        no_more = not self.text() and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        super().keyPressEvent(event)
        if no_more:
            self.no_more.emit()

    @Slot()
    def save_now(self) -> None:
        """Hand on what was typed; what stands in the field after that is a new row."""
        super().save_now()
        self._kept = ""
        if self._draft is not None:
            self._draft.keep()

    @Slot(str)
    def _wait_for_rest(self, _typed: str) -> None:
        pass

    def _add(self, text: str) -> object:
        self.setText("")  # first: what is saved lets the page show itself again; and no undo here
        added = self._add_row(text)
        if added is None:
            self.setText(text)
        return added

    def focusOutEvent(self, event: QFocusEvent) -> None:
        QLineEdit.focusOutEvent(self, event)
