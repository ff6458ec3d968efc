"""What is typed or chosen and was not sent: kept on this computer, in case the program ends."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import save_everything, unsaved_fields
from desktop_app.shop_window.lost_words import waiting_words

# Under these words they lie in the file of drafts, in any language.
UNSENT = "not sent"
BEFORE = "not sent before"  # by a program that has ended since

Pages = Mapping[str, QWidget]


class Unsent:
    """What waits in the fields and choices of all pages, each under the name of its page."""

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
            for name, text in waiting_words(page):
                waits[_free(f"{place}: {name}", waits)] = text
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
