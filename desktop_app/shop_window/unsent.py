"""What is typed or chosen and was not sent: kept on this computer, in case the program ends."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import TypedIn, WordsField, save_everything, unsaved_fields
from desktop_app.shop_window.kept_choice import waiting_choices

UNSENT = "not sent"
BEFORE = "not sent before"  # by a program that has ended since

Pages = Mapping[str, QWidget]


class Unsent:
    """The fields and choices of all pages that wait, each under the name of its page."""

    def __init__(self, drafts: Drafts) -> None:
        self._drafts = drafts
        left = drafts.read(UNSENT)
        if left:
            before = drafts.read(BEFORE)
            for name, text in left.items():  # the same field may wait from an earlier time too
                before[_free(name, before)] = text
            drafts.keep(BEFORE, before)
            drafts.keep(UNSENT, {})

    def keep(self, pages: Pages) -> int:
        """Keep what waits now in place of what waited before; returns in how many fields."""
        waits: dict[str, str] = {}
        for place, page in pages.items():
            for field in unsaved_fields(page):
                waits[_free(f"{place}: {field.accessibleName()}", waits)] = _text(field)
            for choice in waiting_choices(page):
                waits[_free(f"{place}: {choice.accessibleName()}", waits)] = choice.typed()
        self._drafts.keep(UNSENT, waits)
        return len(waits)

    def send(self, pages: Pages) -> tuple[int, int]:
        """Save what was typed; returns in how many fields something waited, and waits still.

        Choices are sent by themselves, with the next reading of their page.
        """
        waited = _typed(pages)
        for page in pages.values():
            save_everything(page)
        return waited, _typed(pages)

    def before(self) -> dict[str, str]:
        """Return what an earlier program could not send: the texts by page and field."""
        return self._drafts.read(BEFORE)

    def forget_before(self) -> None:
        """Forget that: a person has it where it belongs."""
        self._drafts.keep(BEFORE, {})


def _typed(pages: Pages) -> int:
    return sum(len(unsaved_fields(page)) for page in pages.values())


def _free(name: str, taken: Mapping[str, str]) -> str:
    number, found = 1, name
    while found in taken:
        number += 1
        found = f"{name} ({number})"
    return found


def _text(field: TypedIn) -> str:
    return field.toPlainText() if isinstance(field, WordsField) else field.text()
