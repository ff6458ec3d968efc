"""The pages of the places: each made when it is first wanted, or a step at a time before that."""

from __future__ import annotations

from collections.abc import Callable, Generator

from PySide6.QtWidgets import QStackedWidget, QWidget

# Makes a page, and hands over each part where the page is long in the making.
Steps = Generator[QWidget, None, QWidget]
Make = Callable[[], QWidget | Steps]


class PagesMade:
    """The pages that are whole, by the name of their place; each lies on the stack then."""

    def __init__(self, stack: QStackedWidget) -> None:
        self.whole: dict[str, QWidget] = {}
        self._stack = stack
        # Parts of a page to come: without a parent they would outlive a window that is closed,
        # for whatever thread looks for garbage to end them.
        self._parts = QWidget(stack)
        self._parts.hide()
        self._makers: dict[str, Make] = {}
        self._half: dict[str, Steps] = {}

    def __contains__(self, name: str) -> bool:
        """Tell whether it is known how to make a page."""
        return name in self._makers

    def add(self, name: str, make: Make) -> None:
        """Add a place by what makes its page."""
        self._makers[name] = make

    def page(self, name: str) -> QWidget:
        """Return a page, made now as far as it is not made yet."""
        while not self.go_on_making(name):
            pass
        return self.whole[name]

    def go_on_making(self, name: str) -> bool:
        """Take the next step in making a page; tell whether it is whole.

        Where that raises, nothing is left of it, and the next step begins anew.
        """
        if name in self.whole:
            return True
        half = self._half.pop(name, None) or _steps(self._makers[name])
        try:
            next(half).setParent(self._parts)
        except StopIteration as end:
            self.whole[name] = end.value
            self._stack.addWidget(end.value)
            return True
        self._half[name] = half
        return False

    def drop(self, name: str) -> None:
        """Let a page go, or what is made of it, so that it is made anew."""
        self.whole.pop(name, None)
        self._half.pop(name, None)


def _steps(make: Make) -> Steps:
    made = make()
    if isinstance(made, QWidget):
        return made
    return (yield from made)
