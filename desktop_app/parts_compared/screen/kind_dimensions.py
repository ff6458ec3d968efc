"""The dimensions of a part kind in a grid; the shop's own have fields to change them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.instruments.instrument_choice import instruments_for
from desktop_app.parts_compared.part_kinds.own_kind import (
    SHOPS_FIGURE,
    read_allowed,
    with_change,
    without_dimension,
)
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind, Span
from desktop_app.parts_compared.part_kinds.said_of_dimension import (
    ROLE_WORDS,
    allowed_typed,
    allowed_words,
)
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.kept_choice import KeptChoiceField, KeptTick
from desktop_app.shop_window.texts import plain_label, tooltip

HEADS = ("", tr("What it asks"), tr("Allowed"), tr("Instrument"), tr("Must be settled"), "")
ESSENTIAL = tr("essential")


class KindDimensions(QWidget):
    """One row a dimension: its name, what it asks, how much is allowed, with what it is read."""

    def __init__(self, desk: Desk, kind: PartKind, *, own: bool) -> None:
        super().__init__()
        self._desk = desk
        self._kind = kind
        self._shows: list[Callable[[Dimension], None]] = []
        self._fields: dict[str, LineField] = {}
        self._taken_out: set[str] = set()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(6)
        self._grid.setHorizontalSpacing(4)
        for column, words in enumerate(HEADS):
            self._grid.addWidget(plain_label(words, "quiet", wrap=True), 0, column)
        for column, stretch in enumerate((3, 3, 2, 2, 1, 0)):
            self._grid.setColumnStretch(column, stretch)
        self._tools = (desk.ask(drawer) or {}) if own else {}
        for number, one in enumerate(kind.dimensions):
            row = 2 * number + 1
            self._add_words(one, row)
            (self._add_fields if own else self._add_values)(one, row)
        self._refusals: dict[str, str] = {}
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        self._grid.addWidget(self._refusal, 2 * len(kind.dimensions) + 1, 0, 1, len(HEADS))
        self.show_kind(kind)

    def show_kind(self, kind: PartKind) -> None:
        """Show the values of a kind with the same dimensions."""
        self._kind = kind
        for show, one in zip(self._shows, kind.dimensions, strict=True):
            show(one)

    def unsaved(self) -> dict[str, str]:
        """Return the allowed figures that are typed and not kept, by dimension."""
        return {name: field.text() for name, field in self._fields.items() if field.unsaved()}

    def fill_in(self, typed: Mapping[str, str]) -> None:
        """Put in figures that were typed before and not kept, and say why they were refused."""
        for name, text in typed.items():
            one, field = self._kind.dimension(name), self._fields.get(name)
            if one is not None and field is not None:
                field.setText(text)
                self._read(one, text)

    def _add_words(self, one: Dimension, row: int) -> None:
        self._grid.addWidget(plain_label(one.label[:1].upper() + one.label[1:], wrap=True), row, 0)
        self._grid.addWidget(plain_label(ROLE_WORDS[one.role], "quiet", wrap=True), row, 1)
        below = "  ".join(
            words for words in (one.how, tr("Basis: {basis}.", basis=tr(one.basis))) if words
        )
        self._grid.addWidget(plain_label(below, "quiet", wrap=True), row + 1, 1, 1, 5)

    def _add_values(self, one: Dimension, row: int) -> None:
        allowed = plain_label("", wrap=True)
        self._grid.addWidget(allowed, row, 2)
        self._grid.addWidget(plain_label(tool_words(one.instrument), wrap=True), row, 3)
        self._grid.addWidget(plain_label(tr("◆  yes") if one.essential else tr("no")), row, 4)

        def show(now: Dimension) -> None:
            allowed.setText(allowed_words(now, self._desk.rules.length_unit))

        self._shows.append(show)

    def _add_fields(self, one: Dimension, row: int) -> None:
        field = LineField(
            tr("allowed, {label}", label=one.label), partial(self._save_allowed, one.name)
        )
        field.setToolTip(tooltip(allowed_words(one, self._desk.rules.length_unit)))
        field.setEnabled(one.role not in ("count", "word"))
        field.setMinimumWidth(130)
        self._fields[one.name] = field
        tools = instruments_for(one, self._tools)
        tool = KeptChoiceField(
            self._desk,
            tr("instrument, {label}", label=one.label),
            [(name, tool_words(name)) for name in tools],
            partial(self._save_tool, one.name),
        )
        needed = KeptTick(self._desk, ESSENTIAL, partial(self._save_need, one.name))
        needed.setToolTip(
            tooltip(tr("Must “{label}” be settled before a pair fits?", label=one.label))
        )
        away = QPushButton("✕")
        away.setAccessibleName(tr("Take out {label}", label=one.label))
        away.setToolTip(
            tooltip(tr("Take “{label}” out; readings that are kept stay kept", label=one.label))
        )
        away.setProperty("dimension", one.name)
        away.clicked.connect(self._take_out)
        for column, widget in enumerate((field, tool, needed, away), start=2):
            self._grid.addWidget(widget, row, column)

        def show(now: Dimension) -> None:
            field.show_value(allowed_typed(now, self._desk.rules.length_unit))
            if not field.hasFocus():
                field.setCursorPosition(0)
            tool.show_value(now.instrument)
            needed.show_value(now.essential)

        self._shows.append(show)

    def _save_allowed(self, name: str, text: str) -> object:
        one = self._kind.dimension(name)
        if one is None or name in self._taken_out:
            return None
        read = self._read(one, text)
        return None if read is None else self._keep(name, allowed=read[0], basis=SHOPS_FIGURE)

    def _read(self, one: Dimension, text: str) -> tuple[Span | None] | None:
        """Return the span that was typed, or None where it is refused; the page says why."""
        try:
            span = read_allowed(text, one, self._desk.rules.length_unit)
        except ShopTrouble as trouble:
            self._say(one.name, f"✎ {one.label}: {trouble.sentence()}")
            return None
        self._say(one.name, "")
        return (span,)

    def _save_tool(self, name: str, tool: str) -> object:
        return self._keep(name, instrument=tool)

    def _save_need(self, name: str, needed: bool) -> object:
        return self._keep(name, essential=needed)

    def _keep(self, name: str, **change: Any) -> object:
        one = self._kind.dimension(name)
        if one is None:
            return None
        return self._desk.do(
            kind_actions.change_own_kind,
            self._kind,
            lambda kept: with_change(kept, one, **change),
        )

    def _say(self, name: str, words: str) -> None:
        self._refusals[name] = words
        self._refusal.setText("\n".join(one for one in self._refusals.values() if one))
        self._refusal.setVisible(bool(self._refusal.text()))

    @Slot()
    def _take_out(self) -> None:
        name = str(self.sender().property("dimension"))
        try:
            without_dimension(self._kind, name)
        except ShopTrouble as trouble:
            self._say("", f"✎ {trouble.sentence()}")
            return
        done = self._desk.do(
            kind_actions.change_own_kind, self._kind, lambda kept: without_dimension(kept, name)
        )
        if done is not None:
            self._taken_out.add(name)
