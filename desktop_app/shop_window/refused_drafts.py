"""What stands typed in a page's fields and was not accepted: kept over a crash, refused again."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import LineField, WordsField, single_fields

ROW = "row of drafts"  # property of a widget that stands for one of several rows alike


class RefusedDrafts:
    """The draft of what a page shows now, its fields by their names.

    What waits for a server is kept as such. Where a person is asked which of two writings holds,
    nothing is: brought back it would be written over the other one.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk, self._drafts = desk, Drafts(desk.record.folder)
        self._form = ""
        self._kept: dict[str, str] = {}

    def end(self) -> None:
        """Be the draft of nothing, while something else comes to be shown."""
        self._form, self._kept = "", {}

    def begin(self, form: str, page: QWidget) -> bool:
        """Be the draft of this form, which a page shows as it is kept; as `bring_back` tells."""
        self._form, self._kept = form, self._drafts.read(form)
        return self.bring_back(page)

    def bring_back(self, part: QWidget) -> bool:
        """Put back what belongs into the fields of a part, and try it again; tell of any."""
        if not self._kept or self._shut():
            return False
        back = [
            (field, text)
            for field in single_fields(part)
            if (text := self._kept.get(_place(field))) and field.isEnabled() and not field.unsaved()
        ]
        for field, text in back:
            field.put(text)
            field.save_now()
        return bool(back)

    def keep(self, field: LineField | WordsField) -> None:
        """Keep what stands in a field and was not accepted; once nothing does, nothing is kept."""
        if not self._form or field.makes_rows or field.in_form or self._shut():
            return
        place = _place(field)
        refused = field.typed() if field.unsaved() and not field.asked else ""
        if refused != self._kept.get(place, ""):
            self._kept = {**self._kept, place: refused}
            self._drafts.keep(self._form, {one: text for one, text in self._kept.items() if text})

    def _shut(self) -> bool:
        return self._desk.why_shut is not None or self._desk.record.away is not None


class KeepsRefused:
    """A page that keeps what was not accepted in its fields; see `saves_itself.tell_page`."""

    _refused: RefusedDrafts

    def typing_rested(self, field: LineField | WordsField) -> None:
        """Keep what was not accepted in a field, for what is shown."""
        self._refused.keep(field)

    def part_came(self, part: QWidget) -> None:
        """Put back what was not accepted in the fields of a part that has come onto the page."""
        self._refused.bring_back(part)


def _place(field: QWidget) -> str:
    """Return the name of a field; of one in a row among others with the row's own."""
    name, above = field.accessibleName(), field.parentWidget()
    while above is not None:
        if row := above.property(ROW):
            return f"{row}: {name}"
        above = above.parentWidget()
    return name
