"""One list of a part kind, an entry a line; the shop's own is typed in a field."""

from __future__ import annotations

from desktop_app.language import marked, tr
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.part_kinds.kind_lines import (
    NEW_ONE_MAY,
    Part,
    both_changes,
    lines_of,
    typed_lines,
    with_lines,
)
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, WordsField
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

HINTS: dict[Part, str] = {
    "conditions": tr(
        "“{mark}” at the end of a line: a new part may show it as well.", mark=NEW_ONE_MAY.strip()
    ),
    "refit": tr("Begin a line with ⚠ or ! where getting it wrong can injure someone."),
}
#: Where a proof is made, as the kinds say it.
LEVELS = (
    marked("bay"),
    marked("road"),
    marked("full trip"),
    marked("same conditions"),
    marked("time"),
)


class KindLinesField(Section):
    """The list under its heading: lines to read, or one field that saves itself."""

    def __init__(self, desk: Desk, kind: PartKind, part: Part, heading: str, *, own: bool) -> None:
        super().__init__(heading)
        self._desk = desk
        self._kind = kind
        self._part = part
        self._shown = lines_of(kind, part)  # what the typing began from
        self._field: WordsField | None = None
        if own:
            self._field = WordsField(heading, self._save, 5)
            self._field.show_value("\n".join(self._shown))
            self.column.addWidget(Labelled(tr("One a line"), self._field, HINTS.get(part, "")))
        else:
            for line in _read_lines(kind, part):
                self.column.addWidget(plain_label(line, wrap=True))

    def show_kind(self, kind: PartKind) -> None:
        """Show the list as it is now; what is being typed is left alone."""
        self._kind = kind
        if self._field is None or self._field.unsaved():
            return
        self._shown = lines_of(kind, self._part)
        if typed_lines(self._field.toPlainText()) != self._shown:
            self._field.show_value("\n".join(self._shown))

    def unsaved(self) -> str:
        """Return what is typed and not kept; empty where there is nothing such."""
        field = self._field
        return field.toPlainText() if field is not None and field.unsaved() else ""

    def fill_in(self, text: str) -> None:
        """Put in what was typed before; it is saved when the field is left."""
        if self._field is not None and text:
            self._field.blockSignals(True)  # being shown is no typing: it isn't saved by itself
            self._field.setPlainText(text)
            self._field.blockSignals(False)

    def _save(self, text: str) -> object:
        part, shown = self._part, self._shown

        def change(kept: PartKind) -> PartKind:
            typed = lines_of(with_lines(kept, part, text), part)
            return with_lines(
                kept, part, "\n".join(both_changes(shown, typed, lines_of(kept, part)))
            )

        done = self._desk.do(kind_actions.change_own_kind, self._kind, change)
        if done is not None:
            self._shown = lines_of(with_lines(self._kind, part, text), part)
        return done


def _read_lines(kind: PartKind, part: Part) -> list[str]:
    if part == "conditions":
        terms = [(tr(one.term), one.means) for one in kind.conditions]
        return [f"{term}: {means}" if means else term for term, means in terms]
    if part == "refit":
        return [f"⚠  {tr(one.say)}" if one.hurt else f"–  {tr(one.say)}" for one in kind.refit]
    if part == "proof":
        return [f"–  {tr(one.say)} ({tr(one.level.replace('-', ' '))})" for one in kind.proof]
    return [f"–  {line}" for line in lines_of(kind, part)]
