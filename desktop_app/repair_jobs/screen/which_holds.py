"""Beneath a field: what another desk wrote there meanwhile, and a person says which one holds."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QBoxLayout, QFrame, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField, WordsField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.which_of_two import MINE, THEIRS, both, hearing


class WhichHolds(QFrame):
    """The question of one field; hidden unless something else was written there meanwhile.

    The field is shown and saved through it: each deed carries what the field showed before the
    typing, and what is refused stays typed until a person has chosen. `theirs` says that what was
    written is kept, with its value.
    """

    theirs = Signal(object)

    def __init__(self, desk: Desk, box: Labelled) -> None:
        super().__init__()
        assert isinstance(box.field, LineField | WordsField)
        self._desk, self._field = desk, box.field
        self._shown: Any = None  # what the field showed before something was typed
        self._stands: tuple[Any, str] = (None, "")  # what is kept by now, and how it is shown
        self._refused: str | None = None  # typed, and waiting for a person
        self.setObjectName("question")
        self._words = plain_label("", wrap=True)
        row = FlowRow()
        for words, answer in ((MINE, self._keep_mine), (THEIRS, self._keep_theirs)):
            button = QPushButton(words)
            button.setAccessibleName(f"{words}: {self._field.accessibleName()}")
            button.clicked.connect(answer)
            row.addWidget(button)
        column = QVBoxLayout(self)
        column.addWidget(self._words)
        column.addLayout(row)
        place = box.layout()
        assert isinstance(place, QBoxLayout)
        place.insertWidget(place.count() - 1, self)  # before what stretches
        self.hide()

    def show_kept(self, value: Any, text: str) -> None:
        """Show what is kept and how it reads, unless something typed is not saved yet."""
        self.stands(value, text)
        self._field.show_value(text)

    def stands(self, value: Any, text: str) -> None:
        """Hear what is kept, before it is shown."""
        self._stands = value, text
        if not self._field.unsaved():
            self._shown = value
            self._put_away()

    def save(self, value: Any, deed: Callable[..., Done], *args: Any, **more: Any) -> Done | None:
        """Save `value`, what was typed, by a deed that is told what was shown; None if refused."""
        typed = self._field.typed()
        if typed == self._refused:
            return None  # nobody has said which one holds
        done = self._desk.do(hearing(deed, self._ask), *args, **more, shown=Shown(self._shown))
        if done is not None:
            self._shown = value
            self._put_away()
        return done

    def leave(self) -> None:
        """Save before another job is shown; what is refused then is told, and leaves the field."""
        self._field.save_now()
        if self._field.unsaved():
            name, typed = self._field.accessibleName(), self._field.typed()
            self._desk.told.emit(
                tr("{name}: “{typed}” was typed and is not kept.", name=name, typed=typed)
            )
        self._field.forget()
        self._put_away()

    def _ask(self, news: WrittenMeanwhile) -> None:
        self._refused, self._field.asked = self._field.typed(), True
        self._words.setText(both(news, self._refused))
        self.show()

    @Slot()
    def _keep_mine(self) -> None:
        self._shown = self._stands[0]
        self._field.setFocus()
        self._put_away()
        self._field.save_now()

    @Slot()
    def _keep_theirs(self) -> None:
        self._shown, text = self._stands
        self._field.setFocus()
        self._put_away()
        self._field.forget()
        self._field.show_value(text)
        self.theirs.emit(self._shown)

    def _put_away(self) -> None:
        self._refused, self._field.asked = None, False
        self.hide()
