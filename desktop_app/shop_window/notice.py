"""A trouble that is told only as long as its cause is there."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.shop_record.trouble import NotSaved, ShopDamaged, ShopTrouble
from desktop_app.shop_window.being_saved import being_saved
from desktop_app.shop_window.fields import TypedIn, WordsField, unsaved_fields
from desktop_app.shop_window.kept_choice import waiting_choices
from desktop_app.shop_window.page import Section


class Notice(ShopTrouble):
    """What to tell, and `holds`, which is asked now and then whether it is still so."""

    def __init__(
        self, what: str, kept: str = "", do: str = "", *, holds: Callable[[], bool]
    ) -> None:
        super().__init__(what, kept, do)
        self.holds = holds


def not_accepted(page: QWidget, lost: str, do: str) -> Notice | None:
    """Return the notice about the first field of a page that holds what was not accepted.

    `lost` goes on after the field's name and its section; the notice holds as long as that stands
    there.
    """
    field = next(iter(unsaved_fields(page)), None)
    if field is None:
        return None
    waits = partial(_stands, field, _text(field))
    section = section_of(field)
    under = tr(" under “{section}”", section=section) if section else ""
    return Notice(f"“{field.accessibleName()}”{under}{lost}", do=do, holds=waits)


def not_sent(page: QWidget, lost: str) -> Notice | None:
    """Return the notice about the first choice of a page that waits for the server.

    `lost` goes on after its name and what is chosen; the notice holds as long as it waits.
    """
    choice = next(iter(waiting_choices(page)), None)
    if choice is None:
        return None
    what = f"“{choice.accessibleName()}”, “{choice.typed()}”,{lost}"
    do = tr("Wait until it is sent, or choose again what stood there before.")
    return Notice(what, do=do, holds=lambda: bool(isValid(choice)) and choice.waits())


def section_of(field: QWidget) -> str:
    """Return the heading of the box of a page in which a field stands; "" where it is in none."""
    name, above = "", field.parentWidget()
    while above is not None:
        if isinstance(above, Section):
            name = above.accessibleName() or name  # the outermost: a card may lie in it
        above = above.parentWidget()
    return name


def how_long(news: ShopTrouble) -> Callable[[], bool]:
    """Return what tells whether a trouble that is told now still holds.

    One that a field met while it was saved goes with what is typed there; of others nobody knows.
    """
    if isinstance(news, Notice):
        return news.holds
    saving = None if isinstance(news, ShopDamaged) else being_saved()
    return (lambda: True) if saving is None else partial(_stands, *saving)


def lasts(news: ShopTrouble) -> bool:
    """Tell whether what a trouble asks for is known to stand until its cause is gone.

    That of a refused deed is over when something else is done; not what could not be saved, a
    damaged shop, or what a field still holds.
    """
    return isinstance(news, (Notice, NotSaved, ShopDamaged)) or being_saved() is not None


def _stands(field: TypedIn, typed: str) -> bool:
    return bool(isValid(field)) and field.unsaved() and _text(field) == typed


def _text(field: TypedIn) -> str:
    return field.toPlainText() if isinstance(field, WordsField) else field.text()
