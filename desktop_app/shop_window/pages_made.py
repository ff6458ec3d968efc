"""The pages of the places: each made when it is first wanted, or a step at a time before that."""

from __future__ import annotations

from collections.abc import Callable, Generator

from PySide6.QtWidgets import QStackedWidget, QWidget
from shiboken6 import isValid

# Makes a page, and hands over each part where the page is long in the making.
Steps = Generator[QWidget, None, QWidget]
Make = Callable[[], QWidget | Steps]


class _Half:
    """A page of which some parts are made.

    The parts lie on the window meanwhile: without a parent they would outlive one that is closed,
    for whatever thread looks for garbage to end them.
    """

    def __init__(self, steps: Steps, parts: QWidget) -> None:
        self._steps, self._parts = steps, parts
        self._made: list[QWidget] = []

    def step(self) -> QWidget | None:
        """Make the next part; return the page once it is whole."""
        try:
            part = next(self._steps)
        except StopIteration as end:
            page: QWidget = end.value
            return page
        part.setParent(self._parts)
        self._made.append(part)
        return None

    def drop(self) -> None:
        """Let the parts go."""
        self._steps.close()
        for part in self._made:
            if isValid(part):
                part.deleteLater()


class PagesMade:
    """The pages that are whole, by the name of their place; each lies on the stack then."""

    def __init__(self, stack: QStackedWidget) -> None:
        self.whole: dict[str, QWidget] = {}
        self.parts = QWidget(stack)  # of pages to come; nothing in it works yet
        self.parts.hide()
        self._stack = stack
        self._makers: dict[str, Make] = {}
        self._half: dict[str, _Half] = {}
        self._wanted: set[str] = set()  # what somebody asked for stays

    def __contains__(self, name: str) -> bool:
        """Tell whether it is known how to make a page."""
        return name in self._makers

    def add(self, name: str, make: Make) -> None:
        """Add a place by what makes its page."""
        self._makers[name] = make

    def page(self, name: str) -> QWidget:
        """Return a page, made now as far as it is not made yet."""
        self._wanted.add(name)
        while not self.go_on_making(name):
            pass
        return self.whole[name]

    def go_on_making(self, name: str) -> bool:
        """Take the next step in making a page; tell whether it is whole.

        Where that raises, nothing is left of it, and the next step begins anew.
        """
        if name in self.whole:
            return True
        half = self._half.pop(name, None) or _Half(_steps(self._makers[name]), self.parts)
        try:
            page = half.step()
        except BaseException:
            half.drop()
            raise
        if page is None:
            self._half[name] = half
            return False
        self.whole[name] = page
        self._stack.addWidget(page)
        return True

    def drop(self, name: str) -> None:
        """Let a page go, or what is made of it, so that it is made anew."""
        half = self._half.pop(name, None)
        if half is not None:
            half.drop()
        page = self.whole.pop(name, None)
        if page is not None:
            self._stack.removeWidget(page)
            page.deleteLater()

    def drop_unwanted(self) -> None:
        """Let go what nobody has asked for so far."""
        for name in {*self.whole, *self._half} - self._wanted:
            self.drop(name)

    def drop_all(self) -> None:
        """Let everything go: the window is closed."""
        self._wanted.clear()
        self.drop_unwanted()


def _steps(make: Make) -> Steps:
    made = make()
    if isinstance(made, QWidget):
        return made
    return (yield from made)
