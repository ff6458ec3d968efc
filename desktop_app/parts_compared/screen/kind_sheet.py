"""One part kind as the page shows it; the shop's own can be changed in place."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.part_kinds.own_kind import with_lines
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.kind_dimensions import KindDimensions
from desktop_app.parts_compared.screen.new_dimension_form import NewDimensionForm
from desktop_app.parts_compared.stored_kinds import pairs_of_kind
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, WordsField
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import CautionBox, plain_label, tooltip

PARTS = (
    ("conditions", "Words for what is seen"),
    ("refit", "When it goes back on"),
    ("proof", "What proves the repair"),
)


class KindSheet(QWidget):
    """Head, cautions, what is measured, and the lists; rebuilt only for another kind."""

    copy_wanted = Signal(str)
    effect_wanted = Signal()

    def __init__(self, desk: Desk, kind: PartKind, *, own: bool, built_in: bool = True) -> None:
        super().__init__()
        self._built_in = built_in
        self._effect = plain_label("", wrap=True)
        self._effect.hide()
        self._desk = desk
        self._kind = kind
        self._own = own
        self._lines: dict[str, WordsField] = {}
        self._name = QLineEdit()
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        self._form: NewDimensionForm | None = None
        self._dimensions = KindDimensions(desk, kind, own=own)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        column.addWidget(self._head())
        if kind.cautions:
            column.addWidget(CautionBox(kind.cautions))
        measured = Section("What is measured")
        measured.column.addWidget(self._dimensions)
        if own:
            self._form = NewDimensionForm(desk, kind)
            measured.column.addWidget(self._form)
        column.addWidget(measured)
        for part, heading in PARTS:
            column.addWidget(self._part(part, heading))
        wrongs = Section("How a wrong part gives itself away")
        for wrong in kind.wrongs:
            wrongs.column.addWidget(plain_label(f"–  {wrong.say}", wrap=True))
        wrongs.setVisible(bool(kind.wrongs))
        column.addWidget(wrongs)

    def can_show(self, kind: PartKind, *, own: bool) -> bool:
        """Tell whether this kind has the same places, so that only their values may differ."""
        names = [one.name for one in kind.dimensions]
        mine = [one.name for one in self._kind.dimensions]
        return (kind.id, own, names) == (self._kind.id, self._own, mine)

    def show_kind(self, kind: PartKind) -> None:
        """Show the values of the kind as it is now; what is being typed is left alone."""
        self._kind = kind
        self._dimensions.show_kind(kind)
        if self._form is not None:
            self._form.show_kind(kind)
        for part, field in self._lines.items():
            field.show_value(_lines_of(kind, part))

    def say_effect(self, words: str) -> None:
        """Say what the shop's own form changes."""
        self._effect.setText(words)
        self._effect.show()

    def _head(self) -> QWidget:
        kind = self._kind
        head = Section("")
        head.column.addWidget(plain_label(kind.name[:1].upper() + kind.name[1:], "title"))
        also = f"Also: {', '.join(kind.also)}.  " if kind.also else ""
        pairs = self._desk.ask(pairs_of_kind, kind.id) or 0
        noun = "pair" if pairs == 1 else "pairs"
        head.column.addWidget(
            plain_label(
                f"{also}System: {kind.system}.  {pairs} {noun} in the record.", "quiet", wrap=True
            )
        )
        row = QHBoxLayout()
        change = QPushButton("Take ours off the shelf" if self._own else "Change it for our shop")
        change.setToolTip(
            tooltip(
                "A built-in kind of this name comes back in its place."
                if self._own
                else "Makes a copy of ours in its place; the built-in one can be had back."
            )
        )
        change.clicked.connect(self._give_back if self._own else self._make_ours)
        self._name.setPlaceholderText("name of the new kind")
        self._name.setAccessibleName("Name of the new kind")
        self._name.setMaxLength(80)
        copy = QPushButton("Copy it under this name")
        copy.clicked.connect(self._copy)
        self._name.returnPressed.connect(self._copy)
        row.addWidget(change)
        row.addStretch(1)
        row.addWidget(self._name, 2)
        row.addWidget(copy)
        head.column.addLayout(row)
        head.column.addWidget(self._refusal)
        if self._own and self._built_in:
            weigh = QPushButton("What does ours change?")
            weigh.setToolTip(tooltip("Judges every pair of this kind both ways"))
            weigh.clicked.connect(self.effect_wanted)
            line = QHBoxLayout()
            line.addWidget(weigh)
            line.addWidget(self._effect, 1)
            head.column.addLayout(line)
        return head

    def _part(self, part: str, heading: str) -> QWidget:
        section = Section(heading)
        if self._own:
            field = WordsField(heading, partial(self._save_lines, part), 5)
            field.show_value(_lines_of(self._kind, part))
            self._lines[part] = field
            section.column.addWidget(Labelled("One a line", field))
            return section
        for line in _shown_lines(self._kind, part):
            section.column.addWidget(plain_label(line, wrap=True))
        return section

    def _save_lines(self, part: str, text: str) -> object:
        try:
            changed = with_lines(self._kind, part, text)
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return None
        return self._desk.do(kind_actions.keep_own_kind, changed)

    @Slot()
    def _make_ours(self) -> None:
        words = f"Make {self._kind.name} our own"
        self._desk.do(kind_actions.keep_own_kind, self._kind, words)

    @Slot()
    def _give_back(self) -> None:
        self._desk.do(kind_actions.give_back, self._kind)

    @Slot()
    def _copy(self) -> None:
        named = bool(self._name.text().strip())
        self._refusal.setText("" if named else "✎ Type a name for the new kind first.")
        self._refusal.setVisible(not named)
        if named:
            self.copy_wanted.emit(self._name.text())


def _lines_of(kind: PartKind, part: str) -> str:
    if part == "conditions":
        return "\n".join(one.term for one in kind.conditions)
    return "\n".join(one.say for one in (kind.refit if part == "refit" else kind.proof))


def _shown_lines(kind: PartKind, part: str) -> list[str]:
    if part == "conditions":
        return [f"{one.term}: {one.means}" if one.means else one.term for one in kind.conditions]
    if part == "refit":
        return [f"⚠  {one.say}" if one.hurt else f"–  {one.say}" for one in kind.refit]
    return [f"–  {one.say} ({one.level.replace('-', ' ')})" for one in kind.proof]
