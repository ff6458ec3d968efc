"""Windows by part kind: what the shop promises for one kind, changed or given back."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.screen.promise_form import PromiseForm, Stands
from desktop_app.returns_watched.stored_windows import read_kind_windows, shop_promise
from desktop_app.returns_watched.window_actions import promise_for_kind
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

WHAT_IT_MEANS = tr(
    "A part kind may have a window of its own. Of several parts in one job the longest "
    "counts. A change holds for cars handed over from now on; jobs that have left keep "
    "the window that they were handed over with."
)
NO_KIND = tr("Choose a part kind first.")


class KindWindowsBox(Section):
    """The kinds with a promise of their own, and a form for one kind."""

    def __init__(self, desk: Desk, kinds: Callable[[], Mapping[str, PartKind]]) -> None:
        super().__init__(tr("Windows by part kind"))
        self._desk, self._kinds = desk, kinds
        self._promises: dict[str, Promise] = {}
        self._shop = plain_label("", wrap=True)
        self._list = QVBoxLayout()
        self._kind = ChoiceList()
        self._form = PromiseForm(
            desk, self.accessibleName(), tr("Keep this promise"), self._promise
        )
        self.column.addWidget(plain_label(WHAT_IT_MEANS, "quiet", wrap=True))
        self.column.addWidget(self._shop)
        self.column.addLayout(self._list)
        row = QHBoxLayout()
        row.addWidget(Labelled(tr("Part kind"), self._kind))
        row.addStretch(1)
        self.column.addLayout(row)
        self.column.addWidget(self._form)
        self._kind.activated.connect(self._fill)
        desk.changed.connect(self._hear)
        self._show()

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & {"kind_window", "setting", "own_kind"}:
            self._show()

    def _show(self) -> None:
        self._promises = self._desk.ask(read_kind_windows) or {}
        shop = promise_in_words(shop_promise(self._desk.rules), self._unit())
        self._shop.setText(tr("All other kinds have the shop's promise: {shop}.", shop=shop))
        empty(self._list)
        for kind in sorted(self._promises, key=self._name):
            self._list.addWidget(self._row(kind))
        self._offer_kinds()
        if self._kind.currentData():
            self._show_promise()
        else:
            self._form.show_unit(self._unit())
            off_because(self._form, NO_KIND)

    def _offer_kinds(self) -> None:
        chosen = self._kind.currentData()
        self._kind.clear()
        self._kind.addItem(tr("choose a part kind"), "")
        for kind in sorted({*self._kinds(), *self._promises}, key=self._name):
            self._kind.addItem(self._name(kind), kind)
        self._choose(chosen)

    def _row(self, kind: str) -> QWidget:
        row = QWidget()
        grid = QGridLayout(row)
        grid.setContentsMargins(0, 0, 0, 0)
        words = promise_in_words(self._promises[kind], self._unit())
        grid.addWidget(plain_label(f"{self._name(kind)}: {words}", wrap=True), 0, 0)
        grid.setColumnStretch(0, 1)
        for column, (words, deed) in enumerate(
            (
                (tr("Change"), self._change),
                (tr("Give back to the shop's promise"), self._give_back),
            ),
            1,
        ):
            button = QPushButton(words)
            button.setAccessibleName(f"{words}: {self._name(kind)}")
            button.setProperty("kind", kind)
            button.clicked.connect(deed)
            grid.addWidget(button, 0, column)
        return row

    def _name(self, kind: str) -> str:
        known = self._kinds().get(kind)
        return known.name if known is not None else kind.replace("-", " ")

    def _unit(self) -> DistanceUnit:
        return self._desk.rules.unit_of_distance

    @Slot()
    def _change(self) -> None:
        self._choose(self.sender().property("kind"))
        self._fill()
        self._form.begin()

    @Slot()
    def _give_back(self) -> None:
        kind = self.sender().property("kind")
        shown = Shown(self._promises.get(kind))
        if self._desk.do(promise_for_kind, kind, None, shown) is not None:
            if self._form.about() == kind:
                self._form.go_on_from_there()
            self._form.tell(
                tr("{name} has the shop's promise again, from now on.", name=self._name(kind))
            )

    @Slot()
    def _fill(self) -> None:
        """Keep what was typed for another kind, then show what the chosen one is promised now."""
        before, wanted = self._form.about(), self._kind.currentData()
        if before and before != wanted and self._form.unsaved():
            self._choose(before)  # what comes of the keeping is shown with its own kind
            self._form.save_now()
            if self._form.unsaved():
                return  # refused or asked about: it says so, and waits for a person
            self._choose(wanted)
        else:
            self._form.tell("")
        self._form.forget()
        self._show_promise()

    def _choose(self, kind: str) -> None:
        self._kind.setCurrentIndex(max(0, self._kind.findData(kind)))

    def _show_promise(self) -> None:
        kind = str(self._kind.currentData())
        off_because(self._form, "" if kind else NO_KIND)
        self._form.setAccessibleName(f"{self.accessibleName()}, {self._name(kind)}")
        own = self._promises.get(kind)
        holds = own or shop_promise(self._desk.rules)
        self._form.show_stands(Stands(kind, own, holds, self._unit()))

    @Slot()
    def _promise(self) -> None:
        kind = str(self._kind.currentData())
        if kind:
            told = tr("Kept for {name}", name=self._name(kind))
            self._form.keep(promise_for_kind, kind, told=told)
