"""Fields that save themselves: when they are left, and a moment after the last key."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.shop_record.question import kept_words
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.saves_itself import SavesItself, tell_page
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.typed_together import TypedTogether
from desktop_app.shop_window.typing_pause import TypingPause
from desktop_app.shop_window.words_edit import WordsEdit

LONGEST_LINE = 1000  # letters; what is longer belongs into a field of several lines

Save = Callable[[str], object]


class LineField(SavesItself, QLineEdit):
    """One line that saves itself through `save(text)`; a refusal leaves the text where it is."""

    def __init__(self, name: str, save: Save, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setMaxLength(LONGEST_LINE)
        self._save = save
        self._pause = TypingPause(self, self.save_now, self.keep_meanwhile)
        self.textEdited.connect(self._wait_for_rest)
        self.returnPressed.connect(self.save_now)

    def typed(self) -> str:
        """Return what stands in the field."""
        return self.text()

    def put(self, text: str) -> None:
        """Put a text into the field, with no undo there that would bring back another."""
        self.setText(text)

    def show_value(self, text: str) -> None:
        """Show what is kept, unless something typed here is not saved yet."""
        if self.text() == self._kept and text != self._kept:
            at, end = self.cursorPosition(), len(self._kept)
            self.setText(text)
            self.setCursorPosition(len(text) if at >= end else min(at, len(text)))
        elif self.text() != self._kept:
            return
        self._kept = text

    @Slot(str)
    def _wait_for_rest(self, _typed: str) -> None:
        self._pause.typed()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.hasFocus():
            tell_page(self, "line_entered", self)  # nothing led on from here: it may say where to

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.save_now()
        super().focusOutEvent(event)


class WordsField(SavesItself, WordsEdit):
    """Several lines that save themselves; Tab leaves the field."""

    def __init__(self, name: str, save: Save, lines: int = 3) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setFixedHeight(self.fontMetrics().lineSpacing() * lines + 22)
        self._save = save
        self._pause = TypingPause(self, self.save_now, self.keep_meanwhile)
        self.textChanged.connect(self._typed)

    def typed(self) -> str:
        """Return what stands in the field."""
        return self.toPlainText()

    def put(self, text: str) -> None:
        """Put a text into the field, with no undo there that would bring back another."""
        self.setPlainText(text)

    def show_value(self, text: str) -> None:
        """Show what is kept, unless something typed here is not saved yet."""
        if self.toPlainText() != self._kept:
            return
        self._kept = text
        if self.toPlainText() != text:
            cursor = self.textCursor()
            at, at_end = cursor.position(), cursor.atEnd()
            self.setPlainText(text)
            cursor = self.textCursor()  # the text of another desk must not move whoever stands here
            length = self.document().characterCount() - 1
            cursor.setPosition(length if at_end else min(at, length))
            self.setTextCursor(cursor)

    @Slot()
    def _typed(self) -> None:
        if self.toPlainText() != self._kept:
            self._pause.typed()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.save_now()
        super().focusOutEvent(event)


def put_into(field: LineField, text: str) -> bool:
    """Put a text into a field as if it had been typed, and save it; True where that was done.

    What a person typed and did not save yet is never overwritten: it is saved instead.
    """
    if field.unsaved():
        field.save_now()
        return False
    field.setText(text)
    field.save_now()
    return True


TypedIn = LineField | WordsField | TypedTogether


class ChoiceField(ChoiceList):
    """A choice of (value, words) that saves itself; an empty first line means "not said"."""

    def __init__(
        self,
        name: str,
        choices: list[tuple[Any, str]],
        save: Callable[[Any], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._save = save
        self.set_choices(choices)
        self.activated.connect(self._chosen)

    def set_choices(self, choices: list[tuple[Any, str]]) -> None:
        """Replace what can be chosen."""
        self.clear()
        for value, words in choices:
            self.addItem(words, value)

    def show_value(self, value: Any) -> None:
        """Show the kept value."""
        index = next((i for i in range(self.count()) if self.itemData(i) == value), 0)
        self.setCurrentIndex(index)

    @Slot(int)
    def _chosen(self, index: int) -> None:
        self._save(self.itemData(index))


class ThreeWay(QPushButton):
    """A big button with three states: not asked, happens, never happens. Each press goes on."""

    turned = Signal(object)  # True, False or None
    SIGNS = {None: "○", True: "●", False: "⊘"}  # noqa: RUF012 - read only
    WORDS = {None: tr("not asked"), True: tr("happens"), False: tr("never")}  # noqa: RUF012

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._state: bool | None = None
        self.show_value(None)
        self.clicked.connect(self._next)

    def show_value(self, state: bool | None) -> None:
        """Show a state: True happens, False never, None not asked."""
        self._state = state
        self.setText(f"{self.SIGNS[state]}  {self._words}")
        self.setAccessibleName(f"{self._words}: {self.WORDS[state]}")

    @Slot()
    def _next(self) -> None:
        following = {None: True, True: False, False: None}[self._state]
        ThreeWay.show_value(self, following)
        self.turned.emit(following)


class Tick(QPushButton):
    """A big yes-or-no button: an empty or a full circle before its words."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self.setCheckable(True)
        self.toggled.connect(self._show)
        self._show(False)

    @Slot(bool)
    def _show(self, yes: bool) -> None:
        self.setText(f"{'●' if yes else '○'}  {self._words}")
        said = tr("yes") if yes else tr("not said")
        self.setAccessibleName(f"{self._words}: {said}")


class QuestionLine(QFrame):
    """A question about an odd entry, beneath its field; the entry itself is already kept.

    Most fields never ask, so what is shown is made with the first question.
    """

    kept = Signal(str)  # the words under which the answer is kept

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("question")
        self._asked = ""
        self._label: QLabel | None = None
        self.hide()

    def ask(self, question: str | None) -> None:
        """Show a question, or nothing."""
        self._asked = question or ""
        if question and self._label is None:
            self._lay_out()
        if self._label is not None:
            self._label.setText(self._asked)
            self._keep.setAccessibleName(tr("Right as typed: {question}", question=self._asked))
        self.setVisible(bool(question))

    def question(self) -> str:
        """Return what is asked now, or an empty string."""
        return self._asked

    def _lay_out(self) -> None:
        self._label = plain_label("", wrap=True)
        self._keep = QPushButton(tr("Right as typed"))
        self._keep.clicked.connect(self._press)
        column = QVBoxLayout(self)
        column.addWidget(self._label)
        row = QHBoxLayout()
        row.addWidget(self._keep)
        row.addStretch(1)
        column.addLayout(row)

    @Slot()
    def _press(self) -> None:
        self.kept.emit(kept_words(self._asked))
        self.hide()


class Labelled(QWidget):
    """A field under its name, with a line beneath for what is accepted, refused or asked.

    What was refused or is missing is said until the field is mended, whatever else is shown
    meanwhile. The name takes two lines where it has to.
    """

    def __init__(
        self,
        name: str,
        field: QWidget,
        hint: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.field = field
        self.question = QuestionLine()
        self._hint = plain_label(hint, "quiet", wrap=True)
        self._accepts, self._refused, self._missing = hint, "", ""
        label = plain_label(name, wrap=True)
        label.setBuddy(field)
        if not field.accessibleName():
            field.setAccessibleName(name)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(label)
        column.addWidget(field)
        column.addWidget(self._hint)
        self._hint.setVisible(bool(hint))  # in its place first: alone it would be a window
        column.addWidget(self.question)
        column.addStretch(1)
        if isinstance(field, LineField):
            field.textChanged.connect(self._mended)

    def hint(self, words: str) -> None:
        """Say something beneath the field, such as what it accepts."""
        self._accepts = words
        self._show()

    def refuse(self, words: str) -> None:
        """Say why what stands in the field is not accepted; empty where it is."""
        self._refused = words
        self._show()

    def ask_for(self, words: str) -> None:
        """Mark the field as the one that is asked for, and say so beneath it; empty: no more."""
        if words == self._missing:
            return
        self._missing = words
        self.field.setAccessibleDescription(words)
        self.field.setProperty("missing", bool(words))
        _style_anew(self.field)
        self._show()

    @Slot()
    def _mended(self) -> None:
        if self._refused and isinstance(self.field, LineField) and not self.field.unsaved():
            self.refuse("")

    def _show(self) -> None:
        asked = self._missing or self._refused
        words = f"✎ {asked}" if asked else self._accepts
        look = "" if words.startswith("✎") else "quiet"  # what is to be mended is not greyed
        if look != self._hint.objectName():
            self._hint.setObjectName(look)
            _style_anew(self._hint)
        self._hint.setText(words)
        self._hint.setVisible(bool(words))


def _style_anew(widget: QWidget) -> None:
    """Let the style see that a widget has another property or name."""
    widget.style().unpolish(widget)
    widget.style().polish(widget)


def save_everything(page: QWidget, *, rows: bool = True) -> None:
    """Save what is still only typed, in every field of a page; lines for rows only with `rows`."""
    keep = getattr(page, "keep_draft", None)
    if keep is not None:
        keep()
    for field in _fields(page):
        if rows or not (isinstance(field, LineField) and field.makes_rows):
            field.save_now()


def refused_fields(page: QWidget) -> list[str]:
    """Return the names of fields that hold something that was not accepted."""
    return [field.accessibleName() for field in unsaved_fields(page)]


def unsaved_fields(page: QWidget) -> list[TypedIn]:
    """Return the fields of a page that hold something that was not accepted."""
    return [field for field in _fields(page) if field.unsaved()]


def single_fields(page: QWidget) -> list[LineField | WordsField]:
    """Return the fields of a page that are saved each by itself."""
    lines: list[LineField | WordsField] = list(page.findChildren(LineField))
    return [*lines, *page.findChildren(WordsField)]


def _fields(page: QWidget) -> list[TypedIn]:
    return [*single_fields(page), *page.findChildren(TypedTogether)]
