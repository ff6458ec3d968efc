"""When an instrument was last checked, as a person types it, and whether that is too long ago."""

from __future__ import annotations

from datetime import date

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MONTHS = 12  # common practice, no source


def read_check_day(text: str, today: date) -> str | None:
    """Return the ISO day of the last check; None for an empty field.

    Raises a ShopTrouble that says what is accepted.
    """
    bare = text.strip()
    if not bare:
        return None
    accepted = tr(
        "Accepted: year, month and day like {today}, or nothing.", today=today.isoformat()
    )
    try:
        day = date(*map(int, bare.split("-"))) if bare.count("-") == 2 else None
    except ValueError:
        day = None
    if day is None or day.year < 1900:
        raise ShopTrouble(tr("“{bare}” is not a day.", bare=bare), do=accepted)
    if day > today:
        raise ShopTrouble(tr("{day} has not come yet.", day=day.isoformat()), do=accepted)
    return day.isoformat()


def is_overdue(checked_on: str | None, today: date) -> bool:
    """Whether the last check is more than twelve months ago."""
    if checked_on is None:
        return False
    day = date.fromisoformat(checked_on)
    return (today.year - day.year) * 12 + today.month - day.month - (today.day < day.day) >= MONTHS


def check_words(checked_on: str | None, today: date) -> str:
    """Return what the drawer says about the last check."""
    if checked_on is None:
        return tr("never noted")
    return (
        tr("{checked_on}: check overdue", checked_on=checked_on)
        if is_overdue(checked_on, today)
        else checked_on
    )
