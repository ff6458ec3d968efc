"""What stands refused on the page of a job: it is to be mended before the car leaves."""

from __future__ import annotations

from PySide6.QtCore import QObject, QPoint, Signal, Slot
from PySide6.QtWidgets import QApplication, QLineEdit, QPlainTextEdit, QScrollArea, QWidget
from shiboken6 import isValid

from desktop_app.repair_jobs.hand_over import OpenAnswer, not_accepted_here
from desktop_app.shop_window.being_saved import being_saved
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, TypedIn, unsaved_fields
from desktop_app.shop_window.notice import section_of
from desktop_app.shop_window.tab_order import first_stop


class RefusedHere(QObject):
    """Looks at the fields of the page on which `section` stands, each time one of them is left."""

    changed = Signal()

    def __init__(self, desk: Desk, section: QWidget) -> None:
        super().__init__(section)
        self._desk, self._section = desk, section
        self._page: QWidget = section  # what is scrolled, once the section lies on it
        self._fields: list[TypedIn] = []
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_went)

    def answers(self) -> tuple[OpenAnswer, ...]:
        """Return what is to be mended, as it was looked up last, from the top of the page."""
        fields = (one for one in self._fields if isValid(one))
        return not_accepted_here([(one.accessibleName(), section_of(one)) for one in fields])

    def field(self, place: int) -> QWidget | None:
        """Return what takes the cursor in one of them."""
        fields = [one for one in self._fields if isValid(one)]
        return first_stop(fields[place]) if place < len(fields) else None

    def look(self, *, at_all: bool = False) -> None:
        """Look what stands refused now.

        What is being typed, and a line that is no row yet, are refused only where they were saved
        just now: `at_all`. While the server is away nothing is; what is typed waits for it.
        """
        page = self._page = self._scrolled()
        before = self._fields
        away = self._desk.record.away is not None
        self._fields = [
            one
            for one in ([] if away else unsaved_fields(page))
            if one.isVisibleTo(page) and (at_all or not _waits(one, listed=one in before))
        ]
        self._fields.sort(key=lambda one: one.mapTo(page, QPoint(0, 0)).y())

    def _scrolled(self) -> QWidget:
        """Return what is scrolled; the section alone where it lies on no page."""
        here = self._section
        while (above := here.parentWidget()) is not None:
            if isinstance(above.parentWidget(), QScrollArea):
                return above
            here = above
        return self._section

    @Slot("QWidget*", "QWidget*")
    def _focus_went(self, left: QWidget | None, _now: QWidget | None) -> None:
        if not isinstance(left, QLineEdit | QPlainTextEdit) or not isValid(self._page):
            return  # the cursor also goes with a page that ends
        if isValid(left) and self._page.isVisible() and self._page.isAncestorOf(left):
            before = self._fields
            self.look()
            if self._fields != before:
                self.changed.emit()


def _waits(field: TypedIn, *, listed: bool) -> bool:
    """Tell whether what is typed in a field is still to be saved, or is saved just now."""
    saved = being_saved()
    if saved is not None and saved[0] is field:
        return True
    if listed:
        return False
    now = QApplication.focusWidget()
    typing = now is not None and (now is field or field.isAncestorOf(now))
    return typing or (isinstance(field, LineField) and field.makes_rows)
