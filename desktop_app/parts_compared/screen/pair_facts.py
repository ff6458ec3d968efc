"""The facts about a pair: where the new part comes from, its numbers, what became of the old."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QComboBox, QGridLayout, QWidget

from desktop_app.language import marked, tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.number_offer import FIELD_WORDS
from desktop_app.parts_compared.pair_view import ORIGINS, PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_numbers import numbers_differ
from desktop_app.parts_compared.screen.number_offers import NumberOffers
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField, put_into
from desktop_app.shop_window.kept_choice import KeptChoiceField

FATES = (
    marked("kept on the bench"),
    marked("kept for the customer"),
    marked("given to the customer"),
    marked("sent back as core"),
    marked("sent to the supplier"),
    marked("thrown away"),
)
LINES = (
    ("supplier", tr("Supplier"), 0, 1),
    ("lot", tr("Lot or date code"), 0, 2),
    *((name, words, 1, column) for column, (name, words) in enumerate(FIELD_WORDS.items())),
    ("position", tr("Position"), 3, 2),
)
_TOP = Qt.AlignmentFlag.AlignTop


class PairFacts(QWidget):
    """Fields that save themselves; only the origin must be answered before the car leaves."""

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self._desk = desk
        self._pair_id = pair_id
        self._kind = kind
        self._origin = KeptChoiceField(
            desk,
            tr("origin of the new part, {name}", name=kind.name),
            [(None, tr("not said yet")), *ORIGINS],
            self._save_origin,
        )
        fate = tr("fate of the old part, {name}", name=kind.name)
        self._fate = KeptChoiceField(desk, fate, [], self._save_fate)
        self._fates: tuple[str, ...] = ()
        self._fitted = KeptChoiceField(
            desk,
            tr("fitted or stopped, {name}", name=kind.name),
            [(True, tr("fitted")), (False, tr("stopped before fitting"))],
            self._save_fitted,
        )
        for choice in (self._origin, self._fate, self._fitted):  # as wide as its column, no wider
            choice.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            choice.setMinimumContentsLength(12)
        self._origin_box = Labelled(tr("Where is the new one from?"), self._origin)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.addWidget(self._origin_box, 0, 0, _TOP)
        self._lines: dict[str, LineField] = {}
        self._boxes: dict[str, Labelled] = {}
        for name, words, row, column in LINES:
            line = LineField(f"{words.lower()}, {kind.name}", partial(self._save_line, name))
            line.returnPressed.connect(self._go_on)
            self._lines[name] = line
            self._boxes[name] = Labelled(words, line)
            grid.addWidget(self._boxes[name], row, column, _TOP)
        self._offers = NumberOffers(desk)
        self._offers.put_in.connect(self._put_number)
        grid.addWidget(self._offers, 2, 0, 1, 3)
        grid.addWidget(Labelled(tr("What became of the old one?"), self._fate), 3, 0, _TOP)
        grid.addWidget(Labelled(tr("Did it go on?"), self._fitted), 3, 1, _TOP)
        for column in range(3):
            grid.setColumnStretch(column, 1)

    def show_facts(self, pair: PairView) -> None:
        """Show what is written about the pair."""
        self._origin.show_value(pair.origin)
        asked = "" if pair.origin or not pair.fitted else tr("✎ To be said before the car leaves.")
        self._origin_box.hint(asked)
        for name, line in self._lines.items():
            kept = getattr(pair, name)
            line.show_value(self._place(line, kept) if name == "position" else kept)
        differ = numbers_differ(pair.number_on_box, pair.number_on_part)
        self._boxes["number_on_part"].hint(f"≠ {differ}" if differ else "")
        fates = FATES if not pair.fate or pair.fate in FATES else (*FATES, pair.fate)
        if fates != self._fates:
            self._fates = fates
            self._fate.set_choices([("", tr("not said")), *((one, tr(one)) for one in fates)])
        self._fate.show_value(pair.fate)
        self._fitted.show_value(pair.fitted)
        self._offers.show_pair(pair)

    def _place(self, line: LineField, kept: str) -> str:
        """Return the position as people see it; whoever is typing it just now goes on so."""
        typed = line.text()
        return typed if self._kind.place_kept(typed) == kept else self._kind.place_said(kept)

    def first_field(self) -> QWidget:
        """Return the field that a new pair begins with."""
        return self._origin

    def origin_field(self) -> QWidget:
        """Return the field that says where the new part comes from."""
        return self._origin

    def fitted_field(self) -> QWidget:
        """Return the field that says whether the new part went on."""
        return self._fitted

    @Slot()
    def _go_on(self) -> None:
        """Enter leads to the next of the lines."""
        lines = list(self._lines.values())
        here = next(place for place, line in enumerate(lines) if line is self.sender())
        lines[(here + 1) % len(lines)].setFocus()

    @Slot(str, str)
    def _put_number(self, name: str, number: str) -> None:
        """Put a number in that was pressed; what was typed meanwhile is kept first, and shown."""
        line = self._lines[name]
        if put_into(line, number):
            self._offers.settle(number)
            line.setFocus()

    def _save_line(self, name: str, words: str) -> object:
        kept = self._kind.place_kept(words) if name == "position" else words
        return self._desk.do(actions.write_about_pair, self._pair_id, name, kept)

    def _save_origin(self, origin: Any) -> object:
        return self._desk.do(actions.say_origin, self._pair_id, origin)

    def _save_fate(self, fate: Any) -> object:
        return self._desk.do(actions.write_about_pair, self._pair_id, "fate", fate)

    def _save_fitted(self, fitted: Any) -> object:
        return self._desk.do(actions.say_fitted, self._pair_id, fitted=bool(fitted))
