"""Bringing what is worked on into sight, where the page is longer than the window."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager, nullcontext

from PySide6.QtWidgets import QScrollArea, QWidget


def page_of(widget: QWidget) -> QScrollArea | None:
    """Return the page that scrolls what a widget stands on; None where nothing does."""
    above = widget.parentWidget()
    while above is not None and not isinstance(above, QScrollArea):
        above = above.parentWidget()
    return above


def bring_up(widget: QWidget, beside: int = 50, below: int = 150) -> None:
    """Scroll the page until a widget is seen with so many pixels of room around it."""
    page = page_of(widget)
    if page is not None:
        page.ensureWidgetVisible(widget, beside, below)


@contextmanager
def held_in_sight(widget: QWidget | None) -> Iterator[None]:
    """Lay everything out anew with a widget where it is seen now on its page, if it has one."""
    page = None if widget is None else page_of(widget)
    if page is None:
        yield
        return
    from desktop_app.shop_window.page import ReadingPage

    with page.held_still() if isinstance(page, ReadingPage) else nullcontext():
        yield
