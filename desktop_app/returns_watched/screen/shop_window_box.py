"""The shop's own window: what is promised where neither a job nor a part kind has its own."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton

from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.screen.promise_fields import PromiseFields
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.returns_watched.window_actions import promise_of_shop
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

WHAT_IT_MEANS = (
    "What the shop promises after a hand-over: days or calendar months, a distance, or both. An "
    "empty field is no such limit. A month ends on the same date of the next, or on its last day "
    "where it has no such date. A change holds for cars handed over from now on."
)


class ShopWindowBox(Section):
    """The shop's promise in words, and the fields to change it as a whole."""

    def __init__(self, desk: Desk) -> None:
        super().__init__("The shop's window")
        self._desk = desk
        self._shown: object = None
        self._now = plain_label("", wrap=True)
        self._fields = PromiseFields()
        self._told = plain_label("", wrap=True)
        keep = QPushButton("Keep the shop's window")
        keep.clicked.connect(self._promise)
        row = QHBoxLayout()
        row.addWidget(keep)
        row.addStretch(1)
        for widget in (plain_label(WHAT_IT_MEANS, "quiet", wrap=True), self._now, self._fields):
            self.column.addWidget(widget)
        self.column.addLayout(row)
        self.column.addWidget(self._told)
        desk.changed.connect(self._hear)
        self._show()

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if "setting" in done.touched:
            self._show()

    def _show(self) -> None:
        rules = self._desk.rules
        unit = rules.unit_of_distance
        promise = shop_promise(rules)
        self._now.setText(f"Now: {promise_in_words(promise, unit)}.")
        if self._shown != (promise, unit):  # else what is typed here stays
            self._shown = (promise, unit)
            self._fields.show_unit(unit)
            self._fields.show_promise(promise)

    @Slot()
    def _promise(self) -> None:
        try:
            promise = self._fields.typed()
        except ShopTrouble as trouble:
            self._told.setText(trouble.sentence())
            return
        if self._desk.do(promise_of_shop, promise) is not None:
            words = promise_in_words(promise, self._desk.rules.unit_of_distance)
            self._told.setText(f"Kept, from now on: {words}.")
