"""The order in which Tab goes through a page: as it is laid out, whenever its parts were made."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QComboBox, QGridLayout, QLayout, QScrollArea, QWidget
from shiboken6 import isValid

NEVER_FIRST = "never_first"  # a property of what undoes work: Tab reaches it, a jump doesn't


def stops(page: QWidget) -> list[QWidget]:
    """Return the widgets of a page that Tab stops at, in the order of its layouts."""
    return list(_stops_in(page))


def first_stop(page: QWidget) -> QWidget | None:
    """Return where a jump to a page begins: the first stop that can do no harm."""
    return next((one for one in _stops_in(page) if not one.property(NEVER_FIRST)), None)


def takes_tab(widget: QWidget) -> bool:
    """Tell whether Tab can stop at a widget now."""
    return (
        widget.isVisible()
        and widget.isEnabled()
        and bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
    )


def next_stop(page: QWidget, onward: bool) -> QWidget | None:
    """Return the widget that follows the one with the focus, or None at the page's end."""
    order = stops(page)
    here = next((i for i, one in enumerate(order) if _has_focus(one)), None)
    if here is None:
        return None
    there = here + (1 if onward else -1)
    return order[there] if 0 <= there < len(order) else None


def laid_after(page: QWidget, widget: QWidget) -> list[QWidget]:
    """Return what is laid out after a widget of a page, its nearest neighbours first.

    Only the layouts around it are looked through: the stops of a whole page take their time.
    """
    after: list[QWidget] = []
    here = widget
    while here is not page and (above := here.parentWidget()) is not None:
        layout = above.layout()
        beside = [] if layout is None else list(_widgets_of(layout))
        after += beside[beside.index(here) + 1 :] if here in beside else []
        here = above
    return after


def first_of(widgets: Iterable[QWidget]) -> QWidget | None:
    """Return the first stop in what is still seen of some widgets."""
    stops = (first_stop(one) for one in widgets if isValid(one) and one.isVisible())
    return next((one for one in stops if one is not None), None)


def after_gone(page: QWidget) -> QWidget | None:
    """Return what follows the widget with the focus where that one goes just now."""
    gone = QApplication.focusWidget()
    if gone is None or takes_tab(gone) or not page.isAncestorOf(gone):
        return None
    return first_of(laid_after(page, gone))


def next_round(whole: QWidget, onward: bool) -> QWidget | None:
    """Return what follows as `next_stop` does, from the end to the beginning too.

    None where what has the focus is not laid out in it.
    """
    order = stops(whole)
    here = next((i for i, one in enumerate(order) if _has_focus(one)), None)
    return None if here is None else order[(here + (1 if onward else -1)) % len(order)]


def _has_focus(widget: QWidget) -> bool:
    proxy = widget.focusProxy()
    return widget.hasFocus() or (proxy is not None and proxy.hasFocus())


def _stops_in(widget: QWidget) -> Iterator[QWidget]:
    if takes_tab(widget):
        yield widget
    if isinstance(widget, QComboBox):  # its line is part of it
        return
    if isinstance(widget, QScrollArea):
        inside = widget.widget()
        if inside is not None:
            yield from _stops_in(inside)
        return
    layout = widget.layout()
    if layout is not None:
        yield from _stops_of(layout)


def _stops_of(layout: QLayout) -> Iterator[QWidget]:
    for thing in _laid_out(layout):
        if isinstance(thing, QLayout):
            yield from _stops_of(thing)
        elif not thing.isHidden():
            yield from _stops_in(thing)


def _widgets_of(layout: QLayout) -> Iterator[QWidget]:
    for thing in _laid_out(layout):
        if isinstance(thing, QLayout):
            yield from _widgets_of(thing)
        else:
            yield thing


def _laid_out(layout: QLayout) -> list[QWidget | QLayout]:
    """Return what a layout holds in reading order: a grid row by row.

    It is never asked for its items: Qt ends those with their widgets and tells Python nothing of
    it, and what is made at their addresses later, such as a line of a list, takes the window down.
    """
    owner = layout.parentWidget()
    widgets = [] if owner is None else owner.children()
    placed: list[tuple[int, QWidget | QLayout]] = [
        (layout.indexOf(one), one) for one in widgets if isinstance(one, QWidget)
    ]
    placed += [(layout.indexOf(one), one) for one in layout.children() if isinstance(one, QLayout)]
    found = [(place, one) for place, one in placed if place >= 0]
    if isinstance(layout, QGridLayout):
        found.sort(key=lambda one: tuple(layout.getItemPosition(one[0]))[:2])  # type: ignore[arg-type]
    else:
        found.sort(key=lambda one: one[0])
    return [one for _, one in found]
