"""The fields in which a promise is typed: days or months, distance, and what ends it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import promise_typed, shown_distance
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.line_draft import LineDraft

RULES = (("first", tr("whichever ends first")), ("both", tr("when both have ended")))


class PromiseFields(QWidget):
    """A promise as it is typed; an empty field is no such limit."""

    def __init__(self) -> None:
        super().__init__()
        self._unit: DistanceUnit = "mi"
        self._days, self._months, self._far = QLineEdit(), QLineEdit(), QLineEdit()
        self._rule = ChoiceList()
        for field in (self._days, self._months, self._far):
            field.setMaxLength(12)
        for value, words in RULES:
            self._rule.addItem(words, value)
        self._far_box = Labelled(tr("Distance"), self._far)
        boxes = (
            Labelled(tr("Days"), self._days, tr("or months")),
            Labelled(tr("Months"), self._months, tr("by the calendar")),
            self._far_box,
            Labelled(tr("The window ends"), self._rule),
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(FieldRows(boxes, len(boxes)))

    def show_unit(self, unit: DistanceUnit) -> None:
        """Say in which unit the distance is typed."""
        self._unit = unit
        self._far_box.hint("km" if unit == "km" else tr("miles"))

    def show_promise(self, promise: Promise) -> None:
        """Show a promise in place of what was typed."""
        for field, value in ((self._days, promise.days), (self._months, promise.months)):
            field.setText("" if value is None else str(value))
        miles = promise.miles
        self._far.setText("" if miles is None else figure(shown_distance(miles, self._unit), ","))
        self._rule.setCurrentIndex(max(0, self._rule.findData(promise.rule)))

    def typed(self) -> Promise:
        """Return the promise that was typed. Raises ShopTrouble where it is none."""
        words = (self._days.text(), self._months.text(), self._far.text())
        return promise_typed(*words, self._rule.currentData(), self._unit)

    def text(self) -> str:
        """Return what stands in the fields, right or not."""
        fields = (self._days, self._months, self._far)
        words = [f"{one.accessibleName()} {one.text()}" for one in fields if one.text()]
        return ", ".join([*words, self._rule.currentText()])

    def draft(self, drafts: Drafts, waits: Callable[[], bool]) -> LineDraft:
        """Return what keeps the fields over a crash, as long as they wait to be kept."""
        lines = {"days": self._days, "months": self._months, "far": self._far}
        return LineDraft(self, drafts, lines, {"rule": self._rule}, waits)

    def begin(self) -> None:
        """Put the cursor where the typing begins."""
        self._days.setFocus()
