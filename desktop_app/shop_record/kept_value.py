"""Values as they come out of the record; one that nothing of ours has written is told as damage.

`place` says where the value stands: `row_place("visit", 12)`; empty where nobody knows it.
"""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, datetime
from typing import TypeVar

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopDamaged

# No deed keeps a day outside these; they leave room to count windows on from any of them.
OLDEST_KEPT, LAST_KEPT = date(1900, 1, 1), date(2999, 12, 31)
Word = TypeVar("Word", bound=str)


def kept_day(at: str, place: str = "") -> date:
    """Return the day of a kept moment or day; a ShopDamaged where it is none.

    Only YYYY-MM-DD is one: other ways of writing a day would be sorted wrongly with the rest.
    """
    try:
        text = at[:10]
        day = date.fromisoformat(text)
    except (ValueError, TypeError) as error:
        raise damaged(at, tr("a day"), place) from error
    if day.isoformat() != text or not OLDEST_KEPT <= day <= LAST_KEPT:
        raise damaged(at, tr("a day"), place)
    return day


def kept_moment(at: str, place: str = "") -> datetime:
    """Return a kept moment; a ShopDamaged where it is none."""
    try:
        kept_day(at)
        return datetime.fromisoformat(at)
    except (ShopDamaged, ValueError, TypeError) as error:
        raise damaged(at, tr("a moment"), place) from error


def kept_word(value: object, allowed: Collection[Word], wanted: str, place: str = "") -> Word:
    """Return the word among those allowed that is kept; a ShopDamaged where it is none of them."""
    for word in allowed:
        if word == value:
            return word
    raise damaged(value, wanted, place)


def kept_tick(value: object, wanted: str, place: str = "") -> bool:
    """Return a kept yes (1) or no (0); a ShopDamaged for any other number."""
    if value not in (0, 1):
        raise damaged(value, wanted, place)
    return value == 1


def kept_whole(value: int, least: int, most: int, wanted: str, place: str = "") -> int:
    """Return a kept whole number from the least to the most; a ShopDamaged for any other."""
    if not least <= value <= most:
        raise damaged(value, wanted, place)
    return value


def row_place(table: str, row: int, number: str | None = None) -> str:
    """Return where a value stands: the row of its table and the job's number where it has one."""
    return (
        tr("{table} row {row}, job {number}", table=table, row=row, number=number)
        if number
        else tr("{table} row {row}", table=table, row=row)
    )


def damaged(value: object, wanted: str, place: str = "") -> ShopDamaged:
    """Return the trouble of a kept value that isn't what it should be."""
    shown = str(value)[:40]
    where = f" ({place})" if place else ""
    return ShopDamaged(
        tr(
            "The shop's record holds “{shown}” where {wanted} should be{where}: it was "
            "changed from outside.",
            shown=shown,
            wanted=wanted,
            where=where,
        ),
        kept=tr("The file was left as it is."),
        do=tr("Put your last good copy of shop.sqlite in its place."),
    )
