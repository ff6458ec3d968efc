"""The bounds of what can be kept of a job; a deed refuses what lies beyond them."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date

from desktop_app.language import tr
from desktop_app.shop_record.kept_value import kept_moment
from desktop_app.shop_record.trouble import ShopTrouble

MOST_ON_AN_ODOMETER = 9_999_999
MOST_HOURS = 10_000
MOST_CENTS = 100_000_000
MOST_DISTANCE = 100_000  # of one proof drive, in either unit
OLDEST_DAY = date(1900, 1, 1)


def check_bounds(what: str, number: float | None, most: float) -> None:
    """Raise a ShopTrouble where a number is not one from 0 to the most; None is always accepted."""
    if number is not None and not 0 <= number <= most:
        raise ShopTrouble(
            tr("{what} is not accepted.", what=what), do=tr("Accepted: 0 to {most:,}.", most=most)
        )


def check_reading(reading: int | None) -> None:
    """Raise a ShopTrouble where no odometer can say this."""
    check_bounds(tr("That odometer reading"), reading, MOST_ON_AN_ODOMETER)


def check_word(what: str, word: str, allowed: Collection[str]) -> None:
    """Raise a ShopTrouble where a word is not one of those allowed."""
    if word not in allowed:
        accepted = ", ".join(sorted(allowed))
        raise ShopTrouble(
            tr("“{word}” is not accepted for {what}.", word=word, what=what),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        )


def check_moment(text: str) -> None:
    """Raise a ShopTrouble where a text is no day like 2026-11-16, nor one with its time."""
    try:
        kept_moment(text)
    except ShopTrouble as trouble:
        raise ShopTrouble(
            tr("“{text}” is not a moment.", text=text[:40]),
            do=tr(
                "Accepted: a day like 2026-11-16, or one with its time, like 2026-11-16T17:05:00."
            ),
        ) from trouble


def check_day(text: str, today: date) -> date:
    """Return the day of a text like 2026-11-16. Raises ShopTrouble for no day, or one to come."""
    try:
        day = date.fromisoformat(text)
    except ValueError:
        day = None
    if day is None or day.isoformat() != text:
        raise ShopTrouble(
            tr("“{text}” is not a day.", text=text[:40]), do=tr("Type it like 2026-11-16.")
        )
    if day > today:
        raise ShopTrouble(
            tr("{text} is still to come.", text=text), do=tr("Type the day on which it happened.")
        )
    if day < OLDEST_DAY:
        raise ShopTrouble(
            tr("{text} is too long ago.", text=text), do=tr("Type the day like 2026-11-16.")
        )
    return day
