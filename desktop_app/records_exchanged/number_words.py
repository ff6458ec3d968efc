"""Numbers as people write them into cells: money, hours, odometers; in the figures 0 to 9."""

from __future__ import annotations

import re
from decimal import ROUND_HALF_UP, Decimal
from typing import Literal

from desktop_app.language import marked, tr
from desktop_app.records_exchanged.blank_words import says_nothing

DecimalSign = Literal["point", "comma"]
DECIMAL_SIGNS: tuple[DecimalSign, ...] = (marked("point"), marked("comma"))

MOST_CENTS = 100_000_000_00
MOST_HOURS = 10_000
MOST_ON_ODOMETER = 9_999_999

_SPACED = r"[1-9][0-9]{0,2}(?:[ '’\u00a0\u202f][0-9]{3})+"
_WITH: dict[DecimalSign, re.Pattern[str]] = {
    "point": re.compile(rf"(?:[1-9][0-9]{{0,2}}(?:,[0-9]{{3}})+|{_SPACED}|[0-9]+)(?:\.[0-9]+)?"),
    "comma": re.compile(rf"(?:[1-9][0-9]{{0,2}}(?:\.[0-9]{{3}})+|{_SPACED}|[0-9]+)(?:,[0-9]+)?"),
}
# ISO 4217 codes have three letters; "kr", "zł", "Fr." and "Rs" are written beside them.
_MONEY = re.compile(
    r"([$€£¥₹₽₺₩]|[A-Z]{3}|[A-Z]{0,2}\$|kr\.?|zł|Fr\.?|Rs\.?)?\s*([0-9][0-9.,'’ \u00a0\u202f]*?)"
    r"(?:[.,][-–])?\s*([$€£¥₹₽₺₩]|[A-Z]{3}|kr\.?|zł|Fr\.?|Kč|Ft)?"
)
_CURRENCY_SIGNS = {"EUR": "€", "GBP": "£", "USD": "$", "US$": "$", "JPY": "¥"}
# How nearly all amounts are written; what it gives is what the long way would give.
_PLAIN = re.compile(r"([0-9]{1,8})([.,])([0-9]{2})")
SIGN_WRITTEN: dict[DecimalSign, str] = {"point": ".", "comma": ","}
_SIGNS = {written: sign for sign, written in SIGN_WRITTEN.items()}
_CLOCK = re.compile(r"([0-9]{1,4})(?::| ?h ?)([0-5][0-9])(?::([0-5][0-9])| ?min| ?m)?")
_MINUTES = re.compile(r"([0-9]{1,5}) ?(?:min|mins|minutes)\.?")
_HOURS = re.compile(r"([0-9][0-9.,]*) ?(?:h|hr|hrs|hours?|std)?\.?", re.IGNORECASE)
_LEADING_ZEROS = re.compile(r"\A0+(?=[0-9])")
_ODOMETER = re.compile(
    r"(.*?[0-9])\s*(mi|mile|miles|km|kms|kilometres?|kilometers?)?\.?", re.IGNORECASE
)
_SHORT_THOUSANDS = re.compile(r"[0-9]+(?:[.,][0-9]+)? ?k", re.IGNORECASE)


def signs_of(figures: str) -> dict[DecimalSign, Decimal]:
    """Return the value of the figures for each decimal sign with which they are a number."""
    read: dict[DecimalSign, Decimal] = {}
    for sign, pattern in _WITH.items():
        if pattern.fullmatch(figures):
            bare = re.sub(r"[^0-9,]" if sign == "comma" else r"[^0-9.]", "", figures)
            read[sign] = Decimal(bare.replace(",", "."))
    return read


def plain_sign(text: str) -> DecimalSign | None:
    """Return the sign of an amount like 120.50, which can be read in one way only."""
    match = _PLAIN.fullmatch(text)
    return _SIGNS[match[2]] if match else None


def money_in(text: str) -> tuple[str, str] | None:
    """Return a stripped cell's figures and its currency's sign; None where it has no figures."""
    match = _MONEY.fullmatch(text)
    if match is None:
        return None
    currency = (match[1] or match[3] or "").rstrip(".")
    return match[2].strip(), _CURRENCY_SIGNS.get(currency, currency)


def hours_in(text: str) -> str | None:
    """Return the figures of a stripped cell of hours such as "1.5 h"; None where it has none."""
    match = _HOURS.fullmatch(text)
    return match[1] if match else None


def read_cents(text: str, sign: DecimalSign | None) -> int | None:
    """Return the cents of a cell, None for an empty one; a ValueError says why it is no price."""
    if (plain := _PLAIN.fullmatch(text)) and sign in (None, _SIGNS[plain[2]]):
        return int(plain[1]) * 100 + int(plain[3])
    bare = text.strip()
    if says_nothing(bare):
        return None
    if bare[0] in "-(−–":
        raise ValueError(tr("A price is not below zero."))
    found = money_in(bare)
    if found is None:
        raise ValueError(tr("This is not an amount of money. Write it like 120.50."))
    value = _valued(found[0], sign, tr("an amount of money"))
    cents = int((value * 100).quantize(Decimal(1), rounding=ROUND_HALF_UP))
    if cents > MOST_CENTS:
        raise ValueError(tr("The amount is too large."))
    return cents


def read_hours(text: str, sign: DecimalSign | None) -> float | None:
    """Return hours from "1.5", "1,5 h", "1:30" or "90 min"; None for an empty cell."""
    bare = text.strip()
    if says_nothing(bare):
        return None
    if match := _CLOCK.fullmatch(bare):
        hours = int(match[1]) + int(match[2]) / 60 + int(match[3] or 0) / 3600
    elif match := _MINUTES.fullmatch(bare):
        hours = int(match[1]) / 60
    elif figures := hours_in(bare):
        hours = float(_valued(figures, sign, tr("a number of hours")))
    else:
        raise ValueError(tr("This is not a number of hours. Write it like 1.5 or 1:30."))
    if hours > MOST_HOURS:
        raise ValueError(tr("There are more than {most:,} hours.", most=MOST_HOURS))
    return hours


def odometer_in(text: str) -> tuple[str, str] | None:
    """Return a stripped cell's figures and the unit beside them; None where it has no figures."""
    match = _ODOMETER.fullmatch(text)
    return (match[1], match[2] or "") if match else None


def odometer_ways(figures: str) -> dict[DecimalSign, int]:
    """Return the whole reading for each decimal sign with which the figures are one.

    118,420 is one with a decimal point only; 120.000 is with either, and says 120 or 120,000.
    """
    ways = signs_of(_LEADING_ZEROS.sub("", figures))
    return {sign: int(value) for sign, value in ways.items() if value == value.to_integral_value()}


def read_odometer(text: str, sign: DecimalSign | None = None) -> tuple[int | None, str]:
    """Return a whole reading and the unit beside it: "mi", "km", or "" where none is.

    The decimal sign counts only where the reading is whole with either; a ValueError says that
    nobody knows which, where the column has none.
    """
    if len(text) < 8 and text.isascii() and text.isdigit():
        return int(text), ""
    bare = text.strip()
    if says_nothing(bare):
        return None, ""
    if _SHORT_THOUSANDS.fullmatch(bare):
        raise ValueError(tr("Write the odometer out in full: 75,000 for 75k."))
    figures, unit = odometer_in(bare) or ("", "")
    ways = odometer_ways(figures)
    if not ways:
        raise ValueError(tr("An odometer is a whole number such as 118,420."))
    if len(set(ways.values())) > 1 and sign is None:
        low, high = sorted(ways.values())
        raise ValueError(
            tr("This may be {low:,} or {high:,}. Write {low} or {high}.", low=low, high=high)
        )
    number = ways[sign] if sign in ways else next(iter(ways.values()))
    if number > MOST_ON_ODOMETER:
        raise ValueError(tr("There are too many figures for an odometer."))
    return number, read_unit(unit)


def read_unit(text: str) -> str:
    """Return "mi", "km" or "" for what a cell calls the unit of an odometer."""
    word = text.strip().casefold().rstrip(".")
    if says_nothing(word):
        return ""
    if word in ("mi", "mile", "miles"):
        return "mi"
    if word in ("km", "kms", "kilometre", "kilometres", "kilometer", "kilometers"):
        return "km"
    raise ValueError(tr("The unit of an odometer is mi or km."))


def _valued(figures: str, sign: DecimalSign | None, what: str) -> Decimal:
    ways = signs_of(figures)
    if sign in ways:
        return ways[sign]
    if not ways:
        raise ValueError(tr("This is not {what}.", what=what))
    if sign is not None:
        raise ValueError(
            tr(
                "Numbers of this file have a decimal {sign}, and so this is not {what}.",
                sign=tr(sign),
                what=what,
            )
        )
    if len(set(ways.values())) > 1:
        raise ValueError(tr("This number can be read in two ways."))
    return next(iter(ways.values()))
