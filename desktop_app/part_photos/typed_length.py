"""A length as a person types it, in millimetres."""

from __future__ import annotations

import re
from fractions import Fraction

from desktop_app.figures_shown import without_groups
from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MM_PER_INCH = 25.4  # exactly (international yard and pound agreement, 1959)

_TYPED = re.compile(
    r"(?P<figure>\d{1,6}(?:[.,]\d{0,6})?|[.,]\d{1,6})\s*(?P<unit>mm|inches|inch|in|\"|″)?",
    re.IGNORECASE | re.ASCII,
)


def typed_length(text: str, length_unit: str = "mm", accepted: str = "") -> float | None:
    """Return the typed length in mm, None where nothing is typed; "12.5", "1,5", ".5", "0.5 in".

    A figure without a unit is in `length_unit`, "mm" or "inch". Raises ShopTrouble, which says what
    is `accepted`.
    """
    bare = text.strip()
    if not bare:
        return None
    found = _TYPED.fullmatch(without_groups(bare))
    if found is None:
        raise no_length(text, accepted)
    unit = (found["unit"] or length_unit).casefold()
    figure = Fraction(found["figure"].replace(",", "."))
    return float(figure if unit == "mm" else figure * Fraction(str(MM_PER_INCH)))


def no_length(text: str, accepted: str = "") -> ShopTrouble:
    """Return the trouble of words that are no length, or none that can be."""
    return ShopTrouble(
        tr("“{text}” can't be understood as a length.", text=text.strip()[:40]),
        kept=tr("What was there stays."),
        do=accepted or tr("Accepted: millimetres like 12.5 or 12,5, or inches like 0.5 in."),
    )
