"""What people type into a job's fields, read as numbers; a refusal says what is accepted."""

from __future__ import annotations

import re
from datetime import datetime

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles
from desktop_app.repair_jobs.entry_bounds import (
    MOST_CENTS,
    MOST_DISTANCE,
    MOST_HOURS,
    MOST_ON_AN_ODOMETER,
)
from desktop_app.shop_record.trouble import ShopTrouble

# Thousands as people set them apart: by a comma, a dot, an apostrophe, or a space of any kind.
_BY_SPACE = r"[0-9]{1,3}(?:[ '’\u202f\u00a0][0-9]{3})+"
_BY_COMMA, _BY_DOT = (rf"[0-9]{{1,3}}(?:{mark}[0-9]{{3}})+" for mark in (",", r"\."))
_GROUPED = re.compile(rf"{_BY_SPACE}|{_BY_COMMA}|{_BY_DOT}|[0-9]+")
# A number and, after the other mark, its part: one or two digits.
_AMOUNTS = tuple(
    re.compile(rf"({whole})(?:{mark}([0-9]{{1,2}}))?")
    for whole, mark in ((rf"{_BY_SPACE}|[0-9]+", "[.,]"), (_BY_COMMA, r"\."), (_BY_DOT, ","))
)
_ONE_DOT = re.compile(r"[1-9][0-9]{0,2}\.[0-9]{3}")
_UNIT = re.compile(r"\s*(mi|miles|km)\.?$|^(mi|miles|km)[.:]?\s*(?=[0-9])", flags=re.IGNORECASE)


def read_odometer(text: str, unit: DistanceUnit = "mi") -> int:
    """Return a whole odometer reading from "118420", "118,420", "118 420 mi" or "km 118420".

    It comes back in `unit`, the vehicle's own: a reading that names the other unit is converted.
    """
    said = unit_named(text)
    bare = _UNIT.sub("", text.strip(), count=1)
    if not _GROUPED.fullmatch(bare):
        raise ShopTrouble(
            tr("“{short}” is not an odometer reading.", short=_short(text)),
            do=tr("Type a whole number such as 118,420, or say why it cannot be read."),
        )
    digits = re.sub(r"[^0-9]", "", bare)
    if len(digits) > 12 or int(digits) > MOST_ON_AN_ODOMETER:
        raise ShopTrouble(tr("“{short}” has too many digits for an odometer.", short=_short(text)))
    number = int(digits)
    if said is None or said == unit:
        return number
    return round(from_miles(to_miles(number, said), unit))


def unit_named(text: str) -> DistanceUnit | None:
    """Return the unit that a typed reading or distance names, or None."""
    named = _UNIT.search(text.strip())
    if named is None:
        return None
    return "km" if (named[1] or named[2]).lower() == "km" else "mi"


def is_a_reading(text: str) -> bool:
    """Tell a number, with its unit or without, from words such as "display dead since 2025"."""
    bare = _UNIT.sub("", text.strip(), count=1)
    return bare[:1].isdigit() or (bool(bare) and not any(letter.isalpha() for letter in bare))


def read_money(text: str) -> int | None:
    """Return cents from "120", "120.50", "120,50" or "1,200"; None for an empty field."""
    bare = text.strip().lstrip("$€£ ")
    return _hundredths(bare, text, tr("an amount of money"), tr("120.50 or 1,200"), MOST_CENTS)


def read_hours(text: str) -> float | None:
    """Return hours from "1.5" or "1,5"; None for an empty field."""
    refuse_two_ways(text.strip().replace(",", "."))  # nobody writes up 1,500 hours
    found = _hundredths(text.strip(), text, tr("a number of hours"), "1.5", MOST_HOURS * 100)
    return None if found is None else found / 100


def read_distance(text: str, unit: DistanceUnit | None = None) -> float | None:
    """Return a distance from "31", "31.5" or "1,200"; None for an empty field.

    With `unit`, one that names the other unit is converted into it.
    """
    said = None if unit is None else unit_named(text)
    bare = text.strip() if unit is None else _UNIT.sub("", text.strip(), count=1)
    found = _hundredths(bare, text, tr("a distance"), tr("31 or 31.5"), MOST_DISTANCE * 100)
    if found is None or said is None or unit is None or said == unit:
        return None if found is None else found / 100
    return round(from_miles(to_miles(found / 100, said), unit), 2)


def refuse_two_ways(text: str) -> None:
    """Raise a ShopTrouble for "1.200": it is twelve hundred to some people and 1.2 to others."""
    if _ONE_DOT.fullmatch(text):
        whole, part = text.split(".")
        fine = f"{whole}.{part[:2]}".rstrip("0").rstrip(".")
        raise ShopTrouble(
            tr("“{text}” can be read in two ways.", text=text),
            do=tr("Type {whole}{part}, or {fine}.", whole=whole, part=part, fine=fine),
        )


def read_moment(text: str, before: datetime) -> datetime:
    """Return the moment of "2026-11-16 14:05", or of "14:05" on the day of `before`.

    It is on the same clock as `before`, the moment that it takes the place of.
    """
    said = text.strip()
    whole = f"{before:%Y-%m-%d} {said}" if re.fullmatch(r"[0-9]{1,2}:[0-9]{2}", said) else said
    if re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}[ T][0-9]{1,2}:[0-9]{2}", whole):
        try:
            typed = datetime.fromisoformat(f"{whole[:10]} {whole[11:]:0>5}")
        except ValueError:
            pass
        else:
            return typed.replace(tzinfo=before.tzinfo)
    raise ShopTrouble(
        tr("“{said}” is not a moment.", said=said),
        do=tr("Type it like 2026-11-16 14:05, or 14:05."),
    )


def _hundredths(bare: str, text: str, what: str, such_as: str, most: int) -> int | None:
    """Return a hundred times the number; a comma or a dot before three digits sets thousands apart.

    "1.200" alone may mean either and is refused with both ways to say it.
    """
    if not bare:
        return None
    refuse_two_ways(bare)
    found = next((one for way in _AMOUNTS if (one := way.fullmatch(bare))), None)
    if found is None or re.match(r"0[.,][0-9]{3}", bare):
        raise ShopTrouble(
            tr("“{short}” is not {what}.", short=_short(text), what=what),
            do=tr("Type a number such as {such_as}.", such_as=such_as),
        )
    whole, part = re.sub(r"[^0-9]", "", found[1]), found[2] or "0"
    if len(whole) > 12 or (number := int(whole) * 100 + int(f"{part:0<2}")) > most:
        raise ShopTrouble(
            tr("“{short}” is too much.", short=_short(text)),
            do=tr("Accepted: up to {most:,}.", most=most // 100),
        )
    return number


def _short(text: str) -> str:
    text = text.strip()
    return text if len(text) <= 40 else f"{text[:39]}…"
