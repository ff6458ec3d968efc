"""The keys of the window and what each does, read off the window, so that none is left out.

Beneath them, what the words mean.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractButton, QGridLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.keys_offered import KEYS
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.scrolled_by_keys import scroll_by_keys
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.this_program import ThisProgram
from desktop_app.shop_window.words_meant import WORDS

_IN_FIELDS = {
    "Tab, Shift+Tab": tr("to the next field or button, and back"),
    tr("Enter"): tr("goes on; in a list it opens the row"),
    tr("Space"): tr("presses the button, sets or takes out the tick"),
    "Alt+Down": tr("opens a choice"),
    tr("Arrows"): tr("walk in a list and in a choice"),
    "Esc": tr("closes what lies over the page; puts the notice away"),
}


Keys = dict[str, str]  # as they are typed, and what they do


def keys_by_place(window: MainWindow, place: str) -> tuple[Keys, Keys]:
    """Return the keys that work on the page of a place, and those that work everywhere."""
    page, elsewhere = window.page(place), {*window.pages().values(), window.parts_to_come()}
    here: Keys = {}
    everywhere: Keys = {}
    for short in window.findChildren(QShortcut):
        owner = short.parent()
        if isinstance(owner, QAbstractButton) and owner.isHidden():
            continue
        above = set(_above(owner))
        if page in above:
            here |= {_typed(keys): does(short) for keys in short.keys()}  # noqa: SIM118
        elif not above & elsewhere:
            everywhere |= {_typed(keys): does(short) for keys in short.keys()}  # noqa: SIM118
    for widget in page.findChildren(QWidget):
        here |= dict(getattr(widget, "keys_said", ()))
    for action in window.actions():
        everywhere[_typed(action.shortcut())] = action.text().lstrip("↶↷ ")
    return here, everywhere


def does(short: QShortcut) -> str:
    """Return what a shortcut does: what is said of it, or what its button says."""
    owner = short.parent()
    if short.whatsThis() or not isinstance(owner, QAbstractButton):
        return short.whatsThis()
    return owner.accessibleName() or str(owner.property("place") or owner.text())


def _above(owner: QObject | None) -> Iterator[QObject]:
    while owner is not None:
        yield owner
        owner = owner.parent()


class KeysPage(ReadingPage):
    """The keys of the page one came from and of the frame; beneath them, what the program is."""

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(KEYS)
        scroll_by_keys(self)

    def came_here(self) -> None:
        """Begin at the top, where the keys are."""
        self.setFocus()
        self.verticalScrollBar().setValue(0)

    def show_keys(self, place: str, here: Keys, everywhere: Keys, folder: Path | None) -> None:
        """Show the keys of a place and of the frame; `folder` is that of the shop that is open."""
        empty(self.column)
        self.column.addWidget(plain_label(KEYS, "title"))
        for heading, keys in (
            (tr("On “{place}”", place=place), here),
            (tr("Everywhere"), everywhere),
            (tr("In fields, lists and choices"), _IN_FIELDS),
            (tr("What the words mean"), WORDS),
        ):
            if keys:
                self.column.addWidget(_listed(heading, keys))
        self.column.addWidget(ThisProgram(folder))


def _typed(keys: QKeySequence) -> str:
    return keys.toString(QKeySequence.SequenceFormat.NativeText)


def _listed(heading: str, keys: Keys) -> Section:
    section, grid = Section(heading), QGridLayout()
    grid.setHorizontalSpacing(24)
    grid.setColumnStretch(1, 1)
    for row, (typed, words) in enumerate(keys.items()):
        grid.addWidget(plain_label(typed), row, 0)
        grid.addWidget(plain_label(words[:1].upper() + words[1:], wrap=True), row, 1)
    section.column.addLayout(grid)
    return section
