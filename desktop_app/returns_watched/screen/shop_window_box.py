"""The shop's own window: what is promised where neither a job nor a part kind has its own."""

from __future__ import annotations

from PySide6.QtCore import Slot

from desktop_app.language import tr
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.screen.promise_form import PromiseForm, Stands
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.returns_watched.window_actions import promise_of_shop
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

WHAT_IT_MEANS = tr(
    "What the shop promises after a hand-over: days or calendar months, a distance, or "
    "both. An empty field is no such limit. A month ends on the same date of the next, "
    "or on its last day where it has no such date. A change holds for cars handed over "
    "from now on."
)


class ShopWindowBox(Section):
    """The shop's promise in words, and the fields to change it as a whole."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("The shop's window"))
        self._desk = desk
        self._now = plain_label("", wrap=True)
        self._form = PromiseForm(
            desk, self.accessibleName(), tr("Keep the shop's window"), self._promise
        )
        for widget in (plain_label(WHAT_IT_MEANS, "quiet", wrap=True), self._now, self._form):
            self.column.addWidget(widget)
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
        self._now.setText(tr("Now: {promise}.", promise=promise_in_words(promise, unit)))
        self._form.show_stands(Stands(tr("the shop"), promise, promise, unit))

    @Slot()
    def _promise(self) -> None:
        self._form.keep(promise_of_shop)
