"""Choosing a part kind by typing a piece of its name, or by pressing it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import kind_called, kinds_meant
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.line_draft import LineDraft
from desktop_app.shop_window.texts import plain_label, tooltip

KEYS = "Ctrl+L"


class KindChoice(QWidget):
    """Kind, position, and the button that lays the two parts side by side."""

    wanted = Signal(str, str)  # the kind's id, the position

    def __init__(self, kinds: Mapping[str, PartKind], drafts: Drafts) -> None:
        super().__init__()
        self._kinds = kinds
        self._kind = _line(tr("Part kind"), tr("distributor rotor, pads, plug …"))
        self._position = _line(tr("Position of the part"), tr("front left, cylinder 3 …"))
        self._kind.textChanged.connect(self._offer)
        typed = {"kind": self._kind, "position": self._position}
        self._draft = LineDraft(self, drafts, typed)
        self._all = QPushButton(tr("All kinds"))
        self._all.clicked.connect(self._offer_all)
        button = QPushButton(tr("Lay old and new side by side"))
        button.setToolTip(
            tooltip(tr("To the part kind, from anywhere on this page: {keys}", keys=KEYS))
        )
        on_key(self, KEYS, tr("to the kind of a new pair of parts"), self._begin)
        for pressed in (button.clicked, self._kind.returnPressed, self._position.returnPressed):
            pressed.connect(self._lay)
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        self._kinds_box, self._kinds_row = _row()
        self._sides_box, self._sides_row = _row()
        which = _beside(Labelled(tr("Part kind"), self._kind), self._all)
        where = _beside(Labelled(tr("Position"), self._position), button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(FieldRows((which, where), 2))
        for below in (self._kinds_box, self._sides_box, self._refusal):
            column.addWidget(below)

    def begin(self, job_id: int) -> None:
        """Be the fields of another job; what was typed for each comes back with it."""
        self.keep_draft()
        self._empty()
        self._draft.begin(f"new-pair-{job_id}")

    def clear(self) -> None:
        """Empty the fields for the next pair."""
        self._empty()
        self.keep_draft()

    def keep_draft(self) -> None:
        """Keep what is typed and not laid side by side yet."""
        self._draft.keep()

    def _empty(self) -> None:
        self._kind.setText("")  # and no undo here that would bring it back
        self._position.setText("")
        self._say("")

    @Slot()
    def _begin(self) -> None:
        """Put the cursor where another pair begins."""
        self._kind.setFocus()
        bring_up(self)

    @Slot()
    def _lay(self) -> None:
        text = self._kind.text()
        kind = kind_called(text, self._kinds)
        several = kinds_meant(text, self._kinds) if kind is None and text.strip() else ()
        if len(several) > 1:
            self._say(
                tr(
                    "✎ Several kinds go by “{text}”. Press the one that is meant.",
                    text=text.strip(),
                )
            )
            return
        if kind is None:
            said = (
                tr("“{text}” is no one kind on the shelf. ", text=text.strip())
                if text.strip()
                else ""
            )
            self._say(
                tr(
                    "✎ {said}Type a piece of a name such as rotor, pads or belt, or press one.",
                    said=said,
                )
            )
            return
        self._say("")
        self.wanted.emit(kind.id, kind.place_kept(self._position.text().strip()))

    @Slot(str)
    def _offer(self, text: str) -> None:
        """Offer the kinds that the text may mean, and the positions of the one it does mean."""
        self._say("")  # what was refused stands there no more
        kind = kind_called(text, self._kinds)
        exact = kind is not None and text == kind.name
        meant = () if exact or not text.strip() else kinds_meant(text, self._kinds)
        self._show_kinds(meant)
        self._sides_row.clear()
        for side in kind.sides if kind else ():
            chip = QPushButton(tr(side))
            chip.setAccessibleName(tr("position {side}", side=tr(side)))
            chip.clicked.connect(self._take_side)
            self._sides_row.addWidget(chip)
        _fit(self._sides_box, self._sides_row)

    @Slot()
    def _offer_all(self) -> None:
        self._show_kinds(kinds_meant("", self._kinds))

    def _show_kinds(self, kinds: tuple[PartKind, ...]) -> None:
        self._kinds_row.clear()
        for kind in kinds:
            chip = QPushButton(kind.name)
            chip.setToolTip(tooltip(", ".join(kind.also)))
            chip.clicked.connect(self._take_kind)
            self._kinds_row.addWidget(chip)
        _fit(self._kinds_box, self._kinds_row)

    def _say(self, words: str) -> None:
        self._refusal.setText(words)
        self._refusal.setVisible(bool(words))

    @Slot()
    def _take_kind(self) -> None:
        chip = self.sender()
        assert isinstance(chip, QPushButton)
        self._kind.setText(chip.text())
        self._position.setFocus()

    @Slot()
    def _take_side(self) -> None:
        chip = self.sender()
        assert isinstance(chip, QPushButton)
        before = self._position.text().strip()
        self._position.setText(f"{before} {chip.text()}".strip())


def _line(name: str, hint: str) -> QLineEdit:
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setPlaceholderText(hint)
    return line


def _beside(field: Labelled, button: QPushButton) -> QWidget:
    box = QWidget()
    row = QHBoxLayout(box)
    row.setContentsMargins(0, 0, 0, 0)
    row.addWidget(field, 1)
    row.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
    return box


def _row() -> tuple[QWidget, FlowRow]:
    box = QWidget()
    box.hide()
    return box, FlowRow(box)


def _fit(box: QWidget, row: FlowRow) -> None:
    box.setVisible(row.count() > 0)
    box.updateGeometry()
