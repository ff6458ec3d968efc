"""What the shop promises to do differently after a return: what, who, until when, and then."""

from __future__ import annotations

from functools import partial
from typing import Any

from desktop_app.language import tr
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.change_promised import read_day
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.judging_actions import CHANGE_DAYS
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.returns_watched.screen.typed_field import TypedField, show_words
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, WordsField
from desktop_app.shop_window.texts import plain_label

LIKE = tr("Like 2026-11-16.")


class ChangeBox(ReturnBox):
    """The words, the name and the three days of a promise, and how far it has come."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__(tr("What will be done differently?"), desk, judging)
        self._words = WordsField(tr("What will be done differently"), self._save_words, 2)
        self._by = TypedField(tr("Who does it"), str.strip, self._save_by)
        self._days = {
            name: TypedField(
                words, read_day, partial(self._save_day, name), LIKE, lambda day: day.isoformat()
            )
            for name, words in CHANGE_DAYS.items()
        }
        self._state = plain_label("", wrap=True)
        self.column.addWidget(Labelled(tr("In a sentence"), self._words))
        self.column.addWidget(FieldRows((self._by, *self._days.values()), 4, 150))
        self.column.addWidget(self._state)

    def show_return(self, judging: Judging) -> None:
        """Show the promise, and how far it has come."""
        self.take(judging)
        change = judging.change
        show_words(self._words, change.words)
        self._by.show_kept(change.by)
        for name, day in (
            ("change_due", change.due),
            ("change_done_on", change.done_on),
            ("change_check_on", change.check_on),
        ):
            self._days[name].show_kept(day)
        self._state.setText(change.state(self.desk.today()))
        self._state.setVisible(bool(self._state.text()))

    def _save_words(self, text: str) -> object:
        return self.save(self._words, actions.promise_change, text)

    def _save_by(self, name: Any) -> object:
        return self.save(self._by.line, judging_actions.name_who_changes, name)

    def _save_day(self, name: str, day: Any) -> object:
        return self.save(self._days[name].line, judging_actions.set_change_day, name, day)
