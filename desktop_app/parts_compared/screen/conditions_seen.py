"""What was seen on the two parts: the kind's terms as buttons, and notes in own words."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import WordsField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.texts import plain_label, tooltip


class ConditionsSeen(QWidget):
    """Two halves, removed and replacement; each term is a button to press when it is seen."""

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self._desk = desk
        self._pair_id = pair_id
        self._kind = kind
        self._rows: dict[Side, FlowRow] = {}
        self._boxes: dict[Side, QWidget] = {}
        self._buttons: dict[Side, dict[str, QPushButton]] = {}
        self._notes: dict[Side, WordsField] = {
            "removed": WordsField(
                tr("note on the removed part, {name}", name=kind.name), self._note_removed, 2
            ),
            "replacement": WordsField(
                tr("note on the replacement, {name}", name=kind.name), self._note_replacement, 2
            ),
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(FieldRows([self._half(side) for side in SIDES], 2))

    def show_conditions(self, pair: PairView) -> None:
        """Show which terms were seen, and the notes."""
        for side in SIDES:
            seen = pair.terms(side)
            for term in seen:
                self._button(side, term)
            for term, button in self._buttons[side].items():
                button.setChecked(term in seen)
                button.setText(f"{'✓' if term in seen else '○'}  {self._kind.term_words(term)}")
            self._boxes[side].updateGeometry()
        self._notes["removed"].show_value(pair.note_removed)
        self._notes["replacement"].show_value(pair.note_replacement)

    def _half(self, side: Side) -> QWidget:
        box = QWidget()
        half = QVBoxLayout(box)
        half.setContentsMargins(0, 0, 0, 0)
        words = (
            tr("Seen on the removed part") if side == "removed" else tr("Seen on the replacement")
        )
        half.addWidget(plain_label(f"{SIDE_SIGNS[side]} {words}", wrap=True))
        self._boxes[side] = QWidget()
        self._rows[side] = FlowRow(self._boxes[side])
        self._buttons[side] = {}
        for condition in self._kind.conditions:
            self._button(side, condition.term)
        half.addWidget(self._boxes[side])
        self._notes[side].setPlaceholderText(tr("In own words"))
        half.addWidget(self._notes[side])
        half.addStretch(1)
        return box

    def _button(self, side: Side, term: str) -> QPushButton:
        found = self._buttons[side].get(term)
        if found is not None:
            return found
        button = QPushButton(self._kind.term_words(term))
        button.setCheckable(True)
        button.setAccessibleName(f"{button.text()}, {tr(side)}")
        known = self._kind.condition(term)
        if known is not None and known.means:
            button.setToolTip(tooltip(known.means))
        button.setProperty("side", side)
        button.setProperty("term", term)
        button.clicked.connect(self._press)
        self._buttons[side][term] = button
        self._rows[side].addWidget(button)
        return button

    @Slot()
    def _press(self) -> None:
        button = self.sender()
        assert isinstance(button, QPushButton)
        side: Side = button.property("side")
        seen, term = button.isChecked(), str(button.property("term"))
        if self._desk.do(actions.see_condition, self._pair_id, side, term, seen=seen) is None:
            put_back(button, not seen)

    def _note_removed(self, words: str) -> object:
        return self._desk.do(actions.write_about_pair, self._pair_id, "note_removed", words)

    def _note_replacement(self, words: str) -> object:
        return self._desk.do(actions.write_about_pair, self._pair_id, "note_replacement", words)
