"""One dimension on the bench: readings of both parts, the drawing, the verdict and its sentence."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.in_shop_unit import name_with_unit, typed_shown
from desktop_app.parts_compared.instruments.instrument import Instrument, tool_words
from desktop_app.parts_compared.instruments.row_tools import row_tools
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.readings_typed import (
    Typed,
    as_field,
    read_readings,
    split_from_marks,
)
from desktop_app.parts_compared.screen.against_box import ExplainBox, LimitBox
from desktop_app.parts_compared.screen.dimension_drawing import DimensionDrawing
from desktop_app.parts_compared.screen.dimension_name import DimensionName
from desktop_app.parts_compared.screen.dimension_verdict_label import VerdictLabel
from desktop_app.parts_compared.screen.drawn_values import drawn_values
from desktop_app.parts_compared.screen.reading_field import (
    ReadingBox,
    ReadingField,
    WordField,
)
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField
from desktop_app.shop_window.texts import plain_label, tooltip

SEVERAL = tr("Type several readings of it with semicolons between: first; second; third.")
INSTRUMENT, DRAWING, VERDICT = 3, 4, 5  # columns of the grid


class DimensionRow(QObject):
    """The widgets of one dimension in a grid's columns, and what happens in them."""

    entered = Signal(object)  # the ReadingField that was left with Enter
    in_hand = Signal()  # one of its fields is being used
    read_or_not = Signal()  # something typed was refused, or is mended

    def __init__(self, desk: Desk, pair_id: int, dimension: Dimension, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self._pair_id = pair_id
        self.dimension = dimension
        self._pair: PairView | None = None
        self._looked_at = dimension.unit == "word" or dimension.role == "count"
        self._refused: dict[Side, str] = {}
        self._explain: ExplainBox | None = None
        self._limit: LimitBox | None = None
        self.boxes: dict[Side, QWidget] = {}
        self.fields: dict[Side, ReadingField] = {}
        for side in SIDES:
            self._add_field(side)
        self._tool = ChoiceField(
            tr("instrument, {label}", label=dimension.label), [], self._take_instrument
        )
        self._tool.setToolTip(
            tooltip(tr("For both parts: what one instrument gets wrong cancels."))
        )
        self._tool.setSizeAdjustPolicy(
            ChoiceField.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._tool.setMinimumContentsLength(8)
        self._shown_tool: QWidget = self._tool
        if self._looked_at:
            self._shown_tool = plain_label(tool_words(dimension.instrument), "quiet")
        self._choices: tuple[tuple[str | None, str], ...] = ()
        self._picked: str | None = None
        self._drawing = DimensionDrawing(dimension.label)
        self._verdict = VerdictLabel()
        how = dimension.how if self._looked_at else f"{dimension.how} {SEVERAL}".strip()
        self._how = plain_label(how, "quiet", wrap=True)
        self._sentence = plain_label("", wrap=True)
        self._refusal = plain_label("", wrap=True)
        self._under = QWidget()
        self._name = DimensionName()
        self._row = 0
        self._widgets: list[QWidget] = []

    def place(self, grid: QGridLayout, row: int) -> int:
        """Put the widgets into the grid from a row on; return the next free row.

        The rows that stay empty are for a narrow page.
        """
        one, self._row = self.dimension, row
        self._name.setToolTip(tooltip(one.how))
        tool = self._shown_tool
        boxes = (self.boxes[side] for side in SIDES)
        across = (self._name, *boxes, tool, self._drawing, self._verdict)
        for column, widget in enumerate(across):
            grid.addWidget(widget, row + 1, column)
        below = QVBoxLayout(self._under)
        below.setContentsMargins(0, 0, 0, 8)
        below.setSpacing(4)
        for words in (self._refusal, self._how, self._sentence):
            words.hide()
            below.addWidget(words)
        if one.role == "limit":
            self._limit = LimitBox(self._desk, self._pair_id, one)
            below.addWidget(self._limit)
        grid.addWidget(self._under, row + 4, 1, 1, 5)
        self._widgets = [*across, self._under]
        return row + 5

    def lay(self, grid: QGridLayout, *, narrow: bool) -> None:
        """Lay everything in one row, or what finds no room there below it on a narrow page.

        There the dimension stands above its readings, and each side has half of the width.
        """
        row, left, right = self._row, (0, 1, 2), (2, 1, 4)
        removed, replacement = (self.boxes[side] for side in SIDES)
        places: dict[QWidget, tuple[int, ...]] = {
            self._name: (row, 0, 1, 6) if narrow else (row + 1, 0),
            removed: (row + 1, *left) if narrow else (row + 1, 1),
            replacement: (row + 1, *right) if narrow else (row + 1, 2),
            self._shown_tool: (row + 2, *left) if narrow else (row + 1, INSTRUMENT),
            self._verdict: (row + 2, *right) if narrow else (row + 1, VERDICT),
            self._drawing: (row + 3, *left) if narrow else (row + 1, DRAWING),
            self._under: (row + 4, 0, 1, 6) if narrow else (row + 4, 1, 1, 5),
        }
        for widget, place in places.items():
            grid.removeWidget(widget)
            grid.addWidget(widget, *place)

    def least_narrow(self) -> int:
        """Return the least width of the readings beside each other, all else below or above."""
        widest = max(
            *(self.boxes[side].minimumSizeHint().width() for side in SIDES),
            *(one.minimumSizeHint().width() for one in (self._shown_tool, self._drawing)),
            self._verdict.minimumSizeHint().width(),
        )
        return max(2 * widest, self._name.minimumSizeHint().width())

    def show_row(
        self, pair: PairView, one: DimensionComparison, drawer: Mapping[str, Instrument]
    ) -> None:
        """Show the readings and what follows from them."""
        self._pair = pair
        name = self.dimension.name
        self._name.setText(name_with_unit(self.dimension, self._desk.rules.length_unit))
        for side in SIDES:
            self.fields[side].show_value(as_field(self._typed(pair, side)))
            box = self.boxes[side]
            if isinstance(box, ReadingBox):
                box.show_marks(pair.marks.get((name, side), ()))
        self._show_tools(pair, drawer)
        self._drawing.show_values(drawn_values(one, self._desk.rules.length_unit))
        self._verdict.show_verdict(one)
        self._verdict.setAccessibleName(
            tr("verdict on {label}: {verdict}", label=one.label, verdict=tr(one.verdict))
        )
        nothing = one.removed is None and one.replacement is None
        missing = one.verdict == "not measured" and self.dimension.role != "limit"
        self._say(self._sentence, "" if nothing or missing else one.sentence)
        if self._limit is not None:
            self._limit.show_limit(next((m for m in pair.limits if m.dimension == name), None))
        self._show_explanation(pair, one)

    def _typed(self, pair: PairView, side: Side) -> list[str]:
        unit = self._desk.rules.length_unit
        kept = pair.typed.get((self.dimension.name, side), ())
        shown = [typed_shown(one, self.dimension, unit) for one in kept]
        return [self.dimension.word_said(one) for one in shown]

    def set_shown(self, shown: bool) -> None:
        """Show or fold away the whole row."""
        for widget in self._widgets:
            if widget.isHidden() == shown:
                widget.setVisible(shown)

    def is_empty(self, side: Side) -> bool:
        """Whether nothing is written in the field of a side."""
        return not self.fields[side].text().strip()

    def _add_field(self, side: Side) -> None:
        one = self.dimension
        save = self._save_removed if side == "removed" else self._save_replacement
        name = f"{one.label}, {tr(side)}"
        if one.role == "word":
            box = WordField(name, tuple(one.word_said(word) for word in one.choices), save)
            self.boxes[side], field = box, box.line
        else:
            field = ReadingField(name, save)
            self.boxes[side] = ReadingBox(field)
        self.fields[side] = field
        if one.role in ("word", "count"):
            self.boxes[side].setMinimumWidth(80)
        field.entered.connect(self._enter)
        field.came_in.connect(self._say_how)
        field.came_in.connect(self.in_hand)
        field.editingFinished.connect(self._hide_how)

    def _save_removed(self, text: str) -> object:
        return self._save("removed", text)

    def _save_replacement(self, text: str) -> object:
        return self._save("replacement", text)

    def _save(self, side: Side, said: str) -> object:
        unit = self._desk.rules.length_unit
        text = self.dimension.word_kept(said)
        try:
            wanted = read_readings(text, self.dimension, unit)
            self._ask_for_tool(side, wanted)
        except ShopTrouble as trouble:
            said = trouble.sentence()
            self._refuse(
                side,
                tr("✎ On the removed part: {trouble}", trouble=said)
                if side == "removed"
                else tr("✎ On the replacement: {trouble}", trouble=said),
            )
            return None
        self._refuse(side, "")
        return self._write(side, text, self._chosen_tool(side))

    def refused(self) -> int:
        """Return how many sides hold something that can't be read."""
        return sum(bool(words) for words in self._refused.values())

    def _refuse(self, side: Side, words: str) -> None:
        self._refused[side] = words
        self._say(self._refusal, "\n".join(one for one in self._refused.values() if one))
        self.read_or_not.emit()

    def _write(self, side: Side, text: str, tool: str) -> object:
        return self._desk.do(
            actions.write_readings,
            *(self._pair_id, self.dimension, side, text, tool, self._desk.rules.length_unit),
        )

    def _ask_for_tool(self, side: Side, wanted: Sequence[Typed]) -> None:
        """Raise a ShopTrouble where something is typed beside marks, and nobody said with what."""
        if self._pair is None or self._looked_at or self._chosen_tool(side):
            return
        here = self.dimension.name, side
        of_each = zip(self._pair.typed.get(here, ()), self._pair.marks.get(here, ()), strict=False)
        marked = [text for text, mark in of_each if mark is not None]
        _, beside = split_from_marks(wanted, marked)
        if beside:
            raise ShopTrouble(
                tr("With what was {reading} read?", reading=beside[0][2]),
                kept=tr("The readings from marks stay as they are."),
                do=tr("Choose the instrument in this row, and it is written down."),
            )

    def _chosen_tool(self, side: Side) -> str:
        if self._looked_at:
            return ""
        chosen = self._tool.currentData()
        if chosen is None and self._pair is not None:
            chosen = self._pair.tool_of_typed(self.dimension.name, side)
        return str(chosen or "")

    def _take_instrument(self, tool: str | None) -> object:
        """Let what is typed count for the instrument chosen now, written already or waiting."""
        self._picked = tool
        pair = self._pair
        for side in SIDES if pair is not None and tool is not None else ():
            used = pair.tool_of_typed(self.dimension.name, side) if pair else None
            if pair and used is not None and used != tool:
                self._write(side, as_field(self._typed(pair, side)), str(tool))
        for field in self.fields.values() if tool is not None else ():
            field.save_now()
        return tool

    def _show_tools(self, pair: PairView, drawer: Mapping[str, Instrument]) -> None:
        name = self.dimension.name
        typed = tuple(tool for side in SIDES if (tool := pair.tool_of_typed(name, side)))
        marks = any((name, side) in pair.marks for side in SIDES)
        tools = row_tools(self.dimension, drawer, typed, marks=marks, picked=self._picked)
        if typed:
            self._picked = tools.shown
        if tools.choices != self._choices:
            self._choices = tools.choices
            self._tool.set_choices(list(tools.choices))
        self._tool.show_value(tools.shown)

    def _show_explanation(self, pair: PairView, one: DimensionComparison) -> None:
        wanted = one.settled_against or one.verdict == "explained"
        if wanted and self._explain is None:
            self._explain = ExplainBox(self._desk, self._pair_id, self.dimension)
            layout = self._under.layout()
            assert layout is not None
            layout.addWidget(self._explain)
        if self._explain is not None:
            kept = next((e for e in pair.explained if e.dimension == self.dimension.name), None)
            self._explain.show_explanation(kept)
            self._explain.setVisible(wanted or self._explain.in_use())

    def _say(self, label: QLabel, words: str) -> None:
        label.setText(words)
        label.setVisible(bool(words))

    @Slot()
    def _enter(self) -> None:
        self.entered.emit(self.sender())

    @Slot()
    def _say_how(self) -> None:
        self._how.setVisible(bool(self._how.text()))

    @Slot()
    def _hide_how(self) -> None:
        if not any(field.hasFocus() for field in self.fields.values()):
            self._how.hide()
