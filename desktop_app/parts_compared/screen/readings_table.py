"""The readings of a pair: a row for each dimension, essential ones first, the others folded."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.instrument import Instrument
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.screen.dimension_row import DimensionRow
from desktop_app.parts_compared.screen.reading_field import ReadingField
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label

HEADS = ("", "◆ Removed", "● Replacement", "Instrument", "To scale", "Verdict")


class ReadingsTable(QWidget):
    """Fields that follow each other with Enter: removed, replacement, then the next row."""

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(4)
        for column, words in enumerate(HEADS):
            self._grid.addWidget(plain_label(words, "quiet"), 0, column)
        for column, stretch in enumerate((2, 2, 2, 2, 5, 3)):
            self._grid.setColumnStretch(column, stretch)
        essential = [one for one in kind.dimensions if one.essential]
        others = [one for one in kind.dimensions if not one.essential]
        self._more = QPushButton()
        self._more.setCheckable(True)
        self._more.toggled.connect(self._fold)
        self._fresh = True
        self._rows: dict[str, DimensionRow] = {}
        self._folded: list[DimensionRow] = []
        place = 1
        for one in (*essential, *others):
            if others and one is others[0]:
                self._grid.addWidget(self._more, place, 0, 1, 3)
                place += 1
            row = DimensionRow(desk, pair_id, one, self)
            row.entered.connect(self._move_on)
            place = row.place(self._grid, place)
            self._rows[one.name] = row
            if not one.essential:
                self._folded.append(row)
        self._more.setVisible(bool(others))
        self._fold(not essential)

    def show_readings(
        self, pair: PairView, judged: PairComparison, drawer: Mapping[str, Instrument]
    ) -> None:
        """Show the readings and verdicts of the pair."""
        for one in judged.dimensions:
            self._rows[one.name].show_row(pair, one, drawer)
        measured = {name for name, _ in pair.typed}
        hidden = [row.dimension.name for row in self._folded]
        if self._fresh and measured & set(hidden):
            self._more.setChecked(True)
        self._fresh = False
        count = len(measured & set(hidden))
        self._more.setText(f"More dimensions: {len(hidden)}, of which {count} measured")

    def go_to(self, dimension: str) -> None:
        """Put the cursor where the next reading of a dimension belongs."""
        row = self._rows[dimension]
        if row in self._folded:
            self._more.setChecked(True)
        for side in SIDES:
            if row.is_empty(side):
                row.fields[side].setFocus(Qt.FocusReason.TabFocusReason)
                return
        row.fields["removed"].take_another()

    @Slot(bool)
    def _fold(self, shown: bool) -> None:
        for row in self._folded:
            row.set_shown(shown)

    @Slot(object)
    def _move_on(self, left: ReadingField) -> None:
        """Go to the next empty field, those to measure before those to look at."""
        fields = [
            (row, side)
            for row in self._rows.values()
            for side in SIDES
            if row.boxes[side].isVisibleTo(self)
        ]
        here = next(i for i, (row, side) in enumerate(fields) if row.fields[side] is left)
        in_turn = fields[here + 1 :] + fields[:here]
        empty = [(row, side) for row, side in in_turn if row.is_empty(side)]
        by_word = fields[here][0].dimension.role == "word"
        alike = [f for f in empty if by_word or f[0].dimension.role != "word"]
        for row, side in (alike or empty)[:1]:
            row.fields[side].setFocus(Qt.FocusReason.TabFocusReason)
