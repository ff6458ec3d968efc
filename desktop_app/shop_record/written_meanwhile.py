"""What another desk wrote where a page showed something else: it is not written over unasked."""

from __future__ import annotations

from typing import Any, Generic, NamedTuple, TypeVar

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

T = TypeVar("T")


class Shown(NamedTuple, Generic[T]):
    """What a page showed in a place, before something was typed there; None is "nothing"."""

    value: T


class WrittenMeanwhile(ShopTrouble):
    """Something else stands there by now than the page showed; `stands` says what, in words.

    `tables` are those that the page was not told of.
    """

    def __init__(self, wanted: str, stands: str, tables: frozenset[str] = frozenset()) -> None:
        super().__init__(
            tr("Written at another desk meanwhile: {stands}.", stands=stands),
            kept=tr("That stays; “{wanted}” was not done.", wanted=wanted),
            do=tr("Look at both, then decide which one holds."),
        )
        self.stands = stands
        self.tables = tables


def in_words(value: Any) -> str:
    """Return a kept value as it is told to the other desk."""
    if isinstance(value, tuple):
        value = next((one for one in value if one not in (None, "")), None)
    if value is None or value == "":
        return tr("emptied")
    if isinstance(value, int | float):
        return shown(f"{value:,.2f}".rstrip("0").rstrip("."))
    return f"“{value}”"


def cents_in_words(cents: int | None) -> str:
    """Return an amount of money as it is told to the other desk."""
    return tr("emptied") if cents is None else shown(f"{cents // 100:,}.{cents % 100:02d}")
