"""The days between which past jobs are asked about, as they are typed: a day, a month or a year."""

from __future__ import annotations

import re
from calendar import monthrange
from datetime import date

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

_TYPED = re.compile(r"([0-9]{4})(?:-([0-9]{1,2})(?:-([0-9]{1,2}))?)?")


def first_day(text: str) -> date | None:
    """Return the first day of "2024", "2024-05" or "2024-05-31"; None for an empty field.

    Raises a ShopTrouble where the text is none of them.
    """
    return _ends(text)[0] if text.strip() else None


def last_day(text: str) -> date | None:
    """Return the last day of what was typed, else as `first_day`."""
    return _ends(text)[1] if text.strip() else None


def years_before(today: date, years: int) -> date:
    """Return the same day some years ago, of a 29 February the 28th."""
    day = min(today.day, monthrange(today.year - years, today.month)[1])
    return date(today.year - years, today.month, day)


def _ends(text: str) -> tuple[date, date]:
    typed = _TYPED.fullmatch(text.strip())
    if typed is not None:
        year, month, day = (int(part) if part else None for part in typed.groups())
        try:
            first = date(year or 0, 1 if month is None else month, 1 if day is None else day)
            if day is not None:
                return first, first
            last_month = 12 if month is None else month
            return first, date(first.year, last_month, monthrange(first.year, last_month)[1])
        except ValueError:
            pass
    raise ShopTrouble(
        tr("“{typed}” is no day.", typed=text.strip()[:20]),
        do=tr("Type a year, 2024-05 or 2024-05-31."),
    )
