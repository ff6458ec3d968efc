"""The counter of the stories: the real window on a real shop, found by what a person sees."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from desktop_app.program import Program
from desktop_app.shop_record.record import Clock
from desktop_app.shop_window.place_names import ASK, FIRST_RULES

W = TypeVar("W", bound=QWidget)


class Counter:
    """One sitting at the counter: the window is open on a shop, and someone clicks and types."""

    def __init__(self, qtbot: QtBot, program: Program) -> None:
        self.bot = qtbot
        self.program = program
        self.window = program.window

    @property
    def page(self) -> QWidget:
        """The page that is shown now."""
        return self.window.page(self.window.here())

    def find(self, sort: type[W], name: str) -> W:
        """Return the control that is called so (or begins so), or say which ones there are."""
        shown = [w for w in self.window.findChildren(sort) if w.isVisible()]
        for alike in (str.__eq__, str.startswith):
            found = [w for w in shown if alike(w.accessibleName(), name)]
            if found:
                return found[0]
        names = sorted({w.accessibleName() for w in shown})
        raise AssertionError(f"nothing is called “{name}”; there are {names}")

    def press(self, name: str) -> None:
        """Click the button with this name or text, once it is there."""

        def there() -> None:
            assert self._buttons(name), f"no button “{name}”; there are {self._buttons('')}"

        self.bot.waitUntil(there)
        found = self._buttons(name)
        assert found[0].isEnabled(), f"“{name}” is off"
        self.bot.mouseClick(found[0], Qt.MouseButton.LeftButton)

    def button(self, name: str) -> QAbstractButton:
        """Return the button with this name or text, whether it is on or off."""
        found = self._buttons(name)
        assert found, f"no button “{name}”; there are {self._buttons('')}"
        return found[0]

    def _buttons(self, name: str) -> list[QAbstractButton]:
        shown = [b for b in self.window.findChildren(QAbstractButton) if b.isVisible()]
        exact = [b for b in shown if name in (b.accessibleName(), b.text())]
        return exact or [b for b in shown if name in b.accessibleName() or name in b.text()]

    def type_into(self, sort: type[W], name: str, text: str, *, enter: bool = False) -> None:
        """Put the cursor into a field, replace what is there, and perhaps press Enter."""
        field = self.find(sort, name)
        field.setFocus()
        field.selectAll()  # type: ignore[attr-defined]
        self.bot.keyClicks(field, text)
        if enter:
            self.bot.keyClick(field, Qt.Key.Key_Return)

    def choose(self, name: str, words: str) -> None:
        """Go down a choice by its arrow key until it says this."""
        choice = self.find(QComboBox, name)
        choice.setFocus()
        for _ in range(choice.count()):
            if choice.currentText() == words:
                return
            self.bot.keyClick(choice, Qt.Key.Key_Down)
        assert choice.currentText() == words, f"“{name}” does not offer “{words}”"

    def tab_to(self, name: str) -> QWidget:
        """Go on with the Tab key, as often as it takes, to the control of this name."""
        for _ in range(400):
            focus = self.window.focusWidget()
            if focus is not None and _called(focus).startswith(name):
                return focus
            self.bot.keyClick(focus or self.window, Qt.Key.Key_Tab)
        raise AssertionError(f"the Tab key never reaches “{name}”")

    def leave(self) -> None:
        """Leave the field that has the cursor."""
        focus = self.window.focusWidget()
        if focus is not None:
            self.bot.keyClick(focus, Qt.Key.Key_Tab)

    def close_what_lies_over(self) -> str:
        """Close the window that lies over the window, and say what it was called."""
        (over,) = (w for w in self.window.findChildren(QWidget) if w.isWindow() and w.isVisible())
        title = over.windowTitle()
        over.close()
        self.window.activateWindow()
        self.bot.waitUntil(lambda: self.window.isActiveWindow(), timeout=5000)
        return title

    def reads(self, words: str) -> bool:
        """Tell whether the page, or the notice strip, says this."""
        texts = [w.text() for w in self.window.findChildren(QLabel) if w.isVisible()]
        texts += [w.toPlainText() for w in self.window.findChildren(QPlainTextEdit)]
        return any(words in text for text in texts)

    def wait_for(self, words: str) -> None:
        """Wait until the window says this."""
        self.bot.waitUntil(lambda: self.reads(words), timeout=20_000)

    def quiet(self) -> None:
        """Wait until nothing runs beside the window."""
        desk = self.program.desk
        assert desk is not None
        self.bot.waitUntil(lambda: not desk.errands.busy(), timeout=15000)

    def go(self, place: str) -> None:
        """Press a place on the rail."""
        self.press(place)
        self.bot.waitUntil(lambda: self.window.here() == place)
        self.quiet()

    def beside(self) -> Counter:
        """Return the counter of the window that went on with another shop, once one is shown."""

        def shown() -> list[Program]:
            return [one for one in self.program.findChildren(Program) if one.window.isVisible()]

        self.bot.waitUntil(lambda: len(shown()) == 1, timeout=8000)
        there = Counter(self.bot, shown()[0])
        self.bot.waitUntil(lambda: bool(there.window.here()), timeout=10_000)
        return there

    def picture(self, folder: Path, name: str) -> None:
        """Keep a picture of the window for whoever looks at a failed story."""
        assert self.window.grab().save(str(folder / f"{name}.png"))


def _called(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QAbstractButton) else ""
    return widget.accessibleName() or text


@contextmanager
def sitting(
    qtbot: QtBot,
    folder: Path,
    now: datetime,
    backup_after_ms: int | None = None,
    *,
    ahead: bool = False,
    clock: Clock | None = None,
) -> Iterator[Counter]:
    """Open the window on a shop (made where there is none), and close it at the end."""
    if not folder.exists():
        new_place(folder, lambda: now).close()
    program = Program(folder, clock or (lambda: now), backup_after_ms, ahead=ahead)
    program.window.resize(1366, 900)
    program.start()
    qtbot.waitUntil(lambda: program.desk is not None, timeout=10000)
    if program.window.here() == FIRST_RULES:
        program.window.go_to(ASK)
    program.window.activateWindow()
    qtbot.waitUntil(lambda: program.window.isActiveWindow(), timeout=5000)
    counter = Counter(qtbot, program)
    counter.quiet()
    try:
        yield counter
    finally:
        counter.quiet()
        program.close()
        program.window.deleteLater()
