"""The readings of a pair: a row for each dimension, essential ones first, the others folded."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QEvent, QSize, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.screen.dimension_row import DimensionRow
from desktop_app.parts_compared.screen.reading_field import (
    ReadingField,
    bring_cursor,
    bring_for_another,
)
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.long_button import LongButton
from desktop_app.shop_window.saves_itself import tell_page
from desktop_app.shop_window.texts import plain_label

HEADS = (
    "",
    tr("◆ Removed"),
    tr("● Replacement"),
    tr("Instrument"),
    tr("To scale"),
    tr("Verdict"),
)


class ReadingsTable(QWidget):
    """Fields that follow each other with Enter: removed, replacement, then the next row."""

    in_hand = Signal()  # a reading is being typed
    unread = Signal(int)  # how many fields hold something that can't be read

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(4)
        self._narrow, self._wide_least, self._letters_changed = False, 0, False
        heads = [plain_label(words, "quiet", wrap=True) for words in HEADS]
        self._heads = heads
        self._lay_heads()
        self._stretch()
        self._desk = desk
        self._pair_id = pair_id
        self._essential = [one for one in kind.dimensions if one.essential]
        self._others = [one for one in kind.dimensions if not one.essential]
        self._more = LongButton()
        self._more.clicked.connect(self._turn)
        if not (self._others and self._essential):
            self._more.hide()
        self._unfolded = False
        self._shown: tuple[PairView, PairComparison, Mapping[str, Instrument]] | None = None
        self._rows: dict[str, DimensionRow] = {}
        self._next_place = self._add_rows(self._essential, 1)
        self._grid.addWidget(self._more, self._next_place, 0, 1, 3)

    def show_readings(
        self, pair: PairView, judged: PairComparison, drawer: Mapping[str, Instrument]
    ) -> None:
        """Show the readings and verdicts of the pair."""
        first, self._shown = self._shown is None, (pair, judged, drawer)
        self._show_rows()
        measured = {name for name, _ in pair.typed}
        count = sum(one.name in measured for one in self._others)
        if first and (count or not self._essential):
            self._turn()
        self._say_more(count)

    def minimumSizeHint(self) -> QSize:
        """Say what the table needs at least: both readings, and all else below or above them."""
        least = super().minimumSizeHint()
        if self._narrow:
            return least
        wide = max((row.least_narrow() for row in self._rows.values()), default=0)
        return QSize(min(least.width(), wide + self._grid.horizontalSpacing()), least.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        self._letters_changed |= event.type() == QEvent.Type.FontChange

    def event(self, event: QEvent) -> bool:
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest and self._letters_changed:
            self._letters_changed = False  # all that stands here has its letters by now
            if self._narrow:
                self._lay(narrow=False)  # how wide it has to be for that is only seen so
            self._fit()
        return done

    def _fit(self) -> None:
        if not self._narrow:
            self._wide_least = self._grid.minimumSize().width()
        if self._narrow != (self.width() < self._wide_least):
            self._lay(narrow=not self._narrow)

    def _lay(self, *, narrow: bool) -> None:
        self._narrow = narrow
        self._stretch()
        self._lay_heads()
        for row in self._rows.values():
            row.lay(self._grid, narrow=narrow)

    def _stretch(self) -> None:
        for column, stretch in enumerate(
            (1, 4, 4, 0, 0, 1) if self._narrow else (1, 4, 4, 1, 4, 1)
        ):
            self._grid.setColumnStretch(column, stretch)

    def _lay_heads(self) -> None:
        """Put the heads over their columns; on a narrow page only those of the readings."""
        _, removed, replacement, *others = self._heads
        for head in self._heads:
            self._grid.removeWidget(head)
        for column, head in enumerate(self._heads):
            if not self._narrow:
                self._grid.addWidget(head, 0, column)
        if self._narrow:
            self._grid.addWidget(removed, 0, 0, 1, 2)
            self._grid.addWidget(replacement, 0, 2, 1, 4)
        for head in others:
            head.setVisible(not self._narrow)

    def go_to(self, dimension: str) -> None:
        """Put the cursor where the next reading of a dimension belongs."""
        if dimension not in self._rows:
            self._turn()
        row = self._rows[dimension]
        for side in SIDES:
            if row.is_empty(side):
                bring_cursor(row.fields[side])
                return
        bring_for_another(row.fields["removed"])

    def _add_rows(self, dimensions: list[Dimension], place: int) -> int:
        for one in dimensions:
            row = DimensionRow(self._desk, self._pair_id, one, self)
            row.entered.connect(self._move_on)
            row.in_hand.connect(self.in_hand)
            row.read_or_not.connect(self._count_unread)
            place = row.place(self._grid, place)
            row.lay(self._grid, narrow=self._narrow)
            self._rows[one.name] = row
        return place

    def _show_rows(self) -> None:
        if self._shown is None:
            return
        pair, judged, drawer = self._shown
        for one in judged.dimensions:
            if one.name in self._rows:
                self._rows[one.name].show_row(pair, one, drawer)

    def _say_more(self, measured: int) -> None:
        sign = "▾" if self._unfolded else "▸"
        others = len(self._others)
        self._more.setText(
            tr(
                "{sign}  More dimensions: {others}, of which {measured} measured",
                sign=sign,
                others=others,
                measured=measured,
            )
        )

    @Slot()
    def _count_unread(self) -> None:
        self.unread.emit(sum(row.refused() for row in self._rows.values()))

    @Slot()
    def _turn(self) -> None:
        """Unfold the dimensions that are not essential, or fold them away."""
        self._unfolded = not self._unfolded
        if self._others and self._others[0].name not in self._rows:
            self._add_rows(self._others, self._next_place + 1)
            self._show_rows()
            tell_page(self, "part_came", self)
        for one in self._others:
            self._rows[one.name].set_shown(self._unfolded)
        self._more.setText(f"{'▾' if self._unfolded else '▸'}{self._more.text()[1:]}")

    @Slot(object)
    def _move_on(self, left: ReadingField) -> None:
        """Go to the next empty field, those to measure before those to look at.

        What was corrected on the removed part is likely to be corrected on the replacement too.
        """
        fields = [
            (row, side)
            for row in self._rows.values()
            for side in SIDES
            if row.boxes[side].isVisibleTo(self)
        ]
        here = next(i for i, (row, side) in enumerate(fields) if row.fields[side] is left)
        row, side = fields[here]
        if side == "removed" and left.corrected():
            bring = bring_for_another if left.has_more() else bring_cursor
            bring(row.fields["replacement"])
            return
        in_turn = fields[here + 1 :] + fields[:here]
        empty = [(row, side) for row, side in in_turn if row.is_empty(side)]
        by_word = row.dimension.role == "word"
        alike = [f for f in empty if by_word or f[0].dimension.role != "word"]
        for row, side in (alike or empty)[:1]:
            bring_cursor(row.fields[side])
