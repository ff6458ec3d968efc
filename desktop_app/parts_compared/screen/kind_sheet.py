"""One part kind as the page shows it; the shop's own can be changed in place."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.part_kinds.kind_lines import Part
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.kind_dimensions import KindDimensions
from desktop_app.parts_compared.screen.kind_lines_field import KindLinesField
from desktop_app.parts_compared.screen.new_dimension_form import NewDimensionForm
from desktop_app.parts_compared.stored_kinds import pairs_of_kind
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import LineField, WordsField
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import CautionBox, plain_label, tooltip
from desktop_app.shop_window.typing_pause import TypingPause

PARTS: tuple[tuple[Part, str], ...] = (
    ("cautions", tr("Cautions")),
    ("conditions", tr("Words for what is seen")),
    ("refit", tr("When it goes back on")),
    ("proof", tr("What proves the repair")),
    ("wrongs", tr("How a wrong part gives itself away")),
)
NAME, NEW, ALLOWED, LINES = "name", "new ", "allowed ", "lines "  # places of a draft
_NAME_READ = 20  # letters of a name that are seen while it is typed


class KindSheet(QWidget):
    """Head, cautions, what is measured, and the lists; rebuilt only for another kind."""

    copy_wanted = Signal(str)
    effect_wanted = Signal()

    def __init__(
        self, desk: Desk, kind: PartKind, *, own: bool, built_in: bool = True, copy_of: str = ""
    ) -> None:
        super().__init__()
        self._built_in = built_in
        self._copy_of = copy_of
        self._effect = plain_label("", wrap=True)
        self._effect.hide()
        self._desk = desk
        self._kind = kind
        self.name = kind.name
        self._own = own
        self._drafts = Drafts(desk.record.folder)
        self._lists = {
            part: KindLinesField(desk, kind, part, heading, own=own) for part, heading in PARTS
        }
        self._name = QLineEdit()
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        self._form = NewDimensionForm(desk, kind) if own else None
        self._dimensions = KindDimensions(desk, kind, own=own)
        self._boxed: tuple[str, ...] = ()
        self._box = QVBoxLayout()
        self._lay_out()
        self._show_cautions()
        self._fill_in()
        self._pause = TypingPause(self, self._write_draft)
        plain = [] if self._form is None else self._form.findChildren(QLineEdit)
        for line in (self._name, *plain):
            line.textChanged.connect(self._pause.typed)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        column.addWidget(self._head())
        column.addLayout(self._box)
        measured = Section(tr("What is measured"))
        measured.column.addWidget(self._dimensions)
        if self._form is not None:
            measured.column.addWidget(self._form)
        column.addWidget(measured)
        for part, section in self._lists.items():
            column.addWidget(section)
            boxed = part == "cautions" or (part == "wrongs" and not self._kind.wrongs)
            section.setVisible(self._own or not boxed)

    def can_show(self, kind: PartKind, *, own: bool) -> bool:
        """Tell whether this kind has the same places, so that only their values may differ."""
        names = [one.name for one in kind.dimensions]
        mine = [one.name for one in self._kind.dimensions]
        return (kind.id, own, names) == (self._kind.id, self._own, mine)

    def show_kind(self, kind: PartKind) -> None:
        """Show the values of the kind as it is now; what is being typed is left alone."""
        if kind != self._kind:
            self._effect.hide()  # what was said of it may hold no longer
        self._kind = kind
        self._dimensions.show_kind(kind)
        if self._form is not None:
            self._form.show_kind(kind)
        for section in self._lists.values():
            section.show_kind(kind)
        self._show_cautions()
        self._write_draft()

    def copied(self) -> None:
        """Empty the name of the new kind: it has been made."""
        self._name.clear()

    def keep_draft(self) -> None:
        """Save what can be saved, and keep what is only typed for when the kind is shown again."""
        for line in self.findChildren(LineField):
            line.save_now()
        for words in self.findChildren(WordsField):
            words.save_now()
        self._write_draft()

    def typing_rested(self, _field: LineField | WordsField) -> None:
        """Keep what a field did not take."""
        self._write_draft()

    def say_effect(self, words: str) -> None:
        """Say what the shop's own form changes."""
        self._effect.setText(words)
        self._effect.show()

    def _head(self) -> QWidget:
        kind = self._kind
        head = Section("")
        head.column.addWidget(plain_label(kind.name[:1].upper() + kind.name[1:], "title"))
        also = tr("Also: {also}.  ", also=", ".join(kind.also)) if kind.also else ""
        copy = tr("A copy of {copy_of}.  ", copy_of=self._copy_of) if self._copy_of else ""
        pairs = self._desk.ask(pairs_of_kind, kind.id) or 0
        in_record = (
            tr("1 pair in the record.")
            if pairs == 1
            else tr("{pairs} pairs in the record.", pairs=pairs)
        )
        head.column.addWidget(
            plain_label(
                tr(
                    "{copy_of}{also}System: {system}.  {in_record}",
                    copy_of=copy,
                    also=also,
                    system=tr(kind.system),
                    in_record=in_record,
                ),
                "quiet",
                wrap=True,
            )
        )
        head.column.addWidget(FieldRows((_alone(self._changing()), self._copying()), 2))
        head.column.addWidget(self._refusal)
        if self._own and self._built_in:
            weigh = QPushButton(tr("What does ours change?"))
            weigh.setToolTip(tooltip(tr("Judges every pair of this kind both ways")))
            weigh.clicked.connect(self.effect_wanted)
            line = QHBoxLayout()
            line.addWidget(weigh)
            line.addWidget(self._effect, 1)
            head.column.addLayout(line)
        return head

    def _changing(self) -> QPushButton:
        """Return the button that makes the kind the shop's own, or gives it back."""
        change = QPushButton(
            tr("Take ours off the shelf") if self._own else tr("Change it for our shop")
        )
        change.setToolTip(
            tooltip(
                tr("A built-in kind of this name comes back in its place.")
                if self._own
                else tr("Makes a copy of ours in its place; the built-in one can be had back.")
            )
        )
        change.clicked.connect(self._give_back if self._own else self._make_ours)
        return change

    def _copying(self) -> QWidget:
        """Return the name of a copy, and the button that makes it."""
        self._name.setPlaceholderText(tr("a new name"))
        self._name.setAccessibleName(tr("Name of the new kind"))
        self._name.setMaxLength(80)
        self._name.setMinimumWidth(self._name.fontMetrics().averageCharWidth() * _NAME_READ)
        make = QPushButton(tr("Copy it under this name"))
        make.clicked.connect(self._copy)
        self._name.returnPressed.connect(self._copy)
        box = QWidget()
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._name, 1)
        row.addWidget(make)
        return box

    def _show_cautions(self) -> None:
        if self._kind.cautions != self._boxed:
            self._boxed = self._kind.cautions
            empty(self._box)
            if self._boxed:
                self._box.addWidget(CautionBox(self._boxed))

    def _draft(self) -> str:
        return f"part kind {self._kind.id}"

    def _fill_in(self) -> None:
        """Fill in what was typed here before and is not kept."""
        draft = self._drafts.read(self._draft())
        self._name.setText(draft.get(NAME, ""))
        self._dimensions.fill_in(_of(draft, ALLOWED))
        if self._form is not None:
            self._form.fill_in(_of(draft, NEW))
        for part, section in self._lists.items():
            section.fill_in(draft.get(LINES + part, ""))

    def _write_draft(self) -> None:
        """Keep what is only typed; places that are not shown now keep what they had."""
        shown = {NAME}
        fields = {NAME: self._name.text()}
        if self._form is not None:
            shown |= {LINES + part for part in self._lists}
            shown |= {ALLOWED + one.name for one in self._kind.dimensions}
            fields |= {NEW + key: text for key, text in self._form.unsaved().items()}
            fields |= {ALLOWED + key: text for key, text in self._dimensions.unsaved().items()}
            fields |= {LINES + part: one.unsaved() for part, one in self._lists.items()}
        for key, text in self._drafts.read(self._draft()).items():
            if key not in shown and not (self._own and key.startswith(NEW)):
                fields.setdefault(key, text)
        self._drafts.keep(self._draft(), {key: text for key, text in fields.items() if text})

    @Slot()
    def _make_ours(self) -> None:
        words = tr("Make {name} our own", name=self._kind.name)
        self._desk.do(kind_actions.keep_own_kind, self._kind, words)

    @Slot()
    def _give_back(self) -> None:
        self._desk.do(kind_actions.give_back, self._kind)

    @Slot()
    def _copy(self) -> None:
        named = bool(self._name.text().strip())
        self._refusal.setText("" if named else tr("✎ Type a name for the new kind first."))
        self._refusal.setVisible(not named)
        if named:
            self.copy_wanted.emit(self._name.text())


def _alone(button: QPushButton) -> QWidget:
    """Return a button that is no wider than its words, however wide its place is."""
    box = QWidget()
    row = QHBoxLayout(box)
    row.setContentsMargins(0, 0, 0, 0)
    row.addWidget(button)
    row.addStretch(1)
    return box


def _of(draft: dict[str, str], place: str) -> dict[str, str]:
    """Return what a draft has for one place, by what follows its name."""
    return {key.removeprefix(place): text for key, text in draft.items() if key.startswith(place)}
