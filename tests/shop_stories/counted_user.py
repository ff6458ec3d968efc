"""A person at the counter whose actions, keys and seconds are counted.

The seconds are those of the keystroke-level model of S. K. Card, T. P. Moran and A. Newell ("The
keystroke-level model for user performance time with interactive systems", Communications of the
ACM 23, 1980; "The Psychology of Human-Computer Interaction", 1983; both recalled, not copied), so
that no figure hangs on how quick this computer is. The model knows hands and one thought before
each step: reading, talking and holding a calliper come on top.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Literal, TypeVar

from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QComboBox, QFrame, QLineEdit, QScrollArea, QWidget

from tests.shop_stories.counter import Counter

KEY = 0.28  # seconds a key, of somebody who types now and then
POINT = 1.1  # to a thing on the screen
HOME = 0.4  # the hand from the keys to the mouse, or back
BUTTON = 0.1  # of the mouse pressed, or let go
THINK = 1.35  # before each action
CONTROL = Qt.KeyboardModifier.ControlModifier
NO_MODIFIER = Qt.KeyboardModifier.NoModifier
LEFT = Qt.MouseButton.LeftButton

Hand = Literal["keys", "mouse", ""]
W = TypeVar("W", bound=QWidget)


@dataclass
class Entry:
    """One entry of the day: what is asked of it, and what it took."""

    clock: str
    what: str
    seconds_asked: float
    actions_asked: int | None = None
    actions: int = 0
    keys: int = 0
    seconds: float = 0.0

    def is_met(self) -> bool:
        """Tell whether it stays within its figures."""
        few = self.actions_asked is None or self.actions <= self.actions_asked
        return few and self.seconds <= self.seconds_asked

    def row(self) -> str:
        """Return it as a row of the table."""
        most = ""
        if self.actions_asked is not None:
            most = f"{self.actions_asked} action{'s' * (self.actions_asked > 1)}, "
        return (
            f"| {self.clock} | {self.what} | {self.actions} | {self.keys} | "
            f"{self.seconds:.1f} s | {most}{self.seconds_asked:g} s |"
        )


HEAD = ("| clock | entry | actions | keys | seconds | asked |", "|---|---|---|---|---|---|")


def table(day: Sequence[Entry]) -> str:
    """Return the day as a table."""
    return "\n".join((*HEAD, *(entry.row() for entry in day)))


class CountedUser:
    """Clicks, types and drops through a counter, and counts it for the entry that is open.

    A click, a shortcut, a field typed into, a file dropped and a turn of the wheel are one action
    each; a click that only puts the cursor into a field is one too.
    """

    def __init__(self, at: Counter) -> None:
        self.at = at
        self.day: list[Entry] = []
        self._hand: Hand = ""

    @contextmanager
    def entry(
        self, clock: str, what: str, seconds: float, actions: int | None = None
    ) -> Iterator[Entry]:
        """Count what is done meanwhile; where the hands are at its beginning is not known."""
        self.day.append(Entry(clock, what, seconds, actions))
        self._hand = ""
        yield self.day[-1]
        self.at.quiet()

    def click(self, name: str) -> None:
        """Press a button with the mouse."""
        self.at.bot.waitUntil(lambda: bool(self.at._buttons(name)))
        self._reach(self.at.button(name))
        self._count(THINK + self._to("mouse") + POINT + 2 * BUTTON)
        self.at.press(name)

    def shortcut(self, key: Qt.Key, *, control: bool = True) -> None:
        """Press a key, with Ctrl or alone, wherever the cursor is."""
        pressed = 2 if control else 1
        self._count(THINK + self._to("keys") + pressed * KEY, keys=pressed)
        focus = self.at.window.focusWidget() or self.at.window
        self.at.bot.keyClick(focus, key, CONTROL if control else NO_MODIFIER)

    def type_into(self, sort: type[W], name: str, text: str, *, enter: bool = False) -> None:
        """Type into a field; where the cursor is elsewhere, click into it first."""
        field = self.at.find(sort, name)
        thought = THINK
        if not field.hasFocus():
            self._reach(field)
            self._count(thought + self._to("mouse") + POINT + 2 * BUTTON)
            self.at.bot.mouseClick(_pressed_on(field), LEFT)
            thought = 0.0
            assert field.hasFocus(), f"a click on “{name}” does not put the cursor into it"
        keys = len(text) + sum(one.isupper() for one in text) + enter  # with Shift
        self._count(thought + self._to("keys") + keys * KEY, keys=keys)
        self.at.bot.keyClicks(field, text)
        _laid_out()
        assert _middle_is_seen(field), f"“{name}” is out of sight while it is typed into"
        if enter:
            self._press(Qt.Key.Key_Return)

    def go_on(self, name: str, key: Qt.Key = Qt.Key.Key_Return) -> None:
        """Press one key more, without a new thought, that leads to the control of this name."""
        self._seconds(KEY, keys=1)
        self._press(key)
        focus = self.at.window.focusWidget()
        here = "nothing" if focus is None else focus.accessibleName()
        assert here.startswith(name), f"the cursor is at “{here}”, not at “{name}”"

    def _press(self, key: Qt.Key) -> None:
        focus = self.at.window.focusWidget()
        assert focus is not None
        self.at.bot.keyClick(focus, key)

    def choose(self, name: str, words: str) -> None:
        """Open a choice with the mouse and press one of its lines: two actions."""
        choice = self.at.find(QComboBox, name)
        self._reach(choice)
        self._count(THINK + self._to("mouse") + POINT + 2 * BUTTON)
        self.at.bot.mouseClick(choice, LEFT)
        lines = choice.view()
        self.at.bot.waitUntil(lines.isVisible)
        line = lines.visualRect(choice.model().index(choice.findText(words), 0)).center()
        self._count(POINT + 2 * BUTTON)
        self.at.bot.mouseMove(lines.viewport(), line)
        self.at.bot.mouseClick(lines.viewport(), LEFT, pos=line)
        assert choice.currentText() == words, f"“{name}” does not take “{words}”"

    def drop(self, names: Sequence[str], file: Path) -> None:
        """Drag a file out of its folder onto the first of these that is seen, and let it go."""
        _laid_out()
        shown = [one for one in self.at.window.findChildren(QFrame) if one.isVisible()]
        places = [one for name in names for one in shown if one.accessibleName().startswith(name)]
        place = next((one for one in places if _middle_is_seen(one)), places[0])
        self._reach(place)
        self._count(THINK + self._to("mouse") + 2 * (POINT + BUTTON))
        mime, middle = QMimeData(), place.rect().center()
        mime.setUrls([QUrl.fromLocalFile(str(file))])
        under = place.childAt(middle) or place  # Qt hands it on to whoever takes drops
        where = under.mapFrom(place, middle)
        copy = Qt.DropAction.CopyAction
        enter = QDragEnterEvent(where, copy, mime, LEFT, NO_MODIFIER)
        QApplication.sendEvent(under, enter)
        assert enter.isAccepted()
        let_go = QDropEvent(QPointF(where), copy, mime, LEFT, NO_MODIFIER)
        QApplication.sendEvent(under, let_go)
        assert let_go.isAccepted()
        self.at.quiet()

    def _reach(self, widget: QWidget) -> None:
        """Turn the wheel until it is seen, where it is not: one action more."""
        _laid_out()
        if _middle_is_seen(widget):
            return
        self._count(THINK + self._to("mouse") + POINT)
        above = widget.parentWidget()
        while above is not None and not isinstance(above, QScrollArea):
            above = above.parentWidget()
        assert above is not None, f"“{widget.accessibleName()}” is not seen"
        above.ensureWidgetVisible(widget, 50, 80)
        _laid_out()
        assert _middle_is_seen(widget), f"“{widget.accessibleName()}” is not reached"

    def _to(self, hand: Hand) -> float:
        moved, self._hand = self._hand != hand, hand
        return HOME if moved else 0.0

    def _count(self, seconds: float, keys: int = 0) -> None:
        self.day[-1].actions += 1
        self._seconds(seconds, keys)

    def _seconds(self, seconds: float, keys: int = 0) -> None:
        self.day[-1].keys += keys
        self.day[-1].seconds += seconds


def _laid_out() -> None:
    for _ in range(4):  # what got its width asks for another height
        QApplication.processEvents()


def _middle_is_seen(widget: QWidget) -> bool:
    middle = widget.rect().center()
    there = widget.childAt(middle) or widget  # what lies on it hides it from Qt, and from nobody
    return there.visibleRegion().contains(there.mapFrom(widget, middle))


def _pressed_on(field: QWidget) -> QWidget:
    """Return what a click on a field lands on: a text field has a page inside its frame."""
    inside = getattr(field, "viewport", None)
    return field if isinstance(field, QLineEdit) or inside is None else inside()
