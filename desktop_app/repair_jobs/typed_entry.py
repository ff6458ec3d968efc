"""What people type into a job's fields, read as numbers; a refusal says what is accepted."""

from __future__ import annotations

import re

from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles
from desktop_app.shop_record.trouble import ShopTrouble

_GROUPED = re.compile(r"[0-9]{1,3}(?:[ ,.'’\u202f\u00a0][0-9]{3})+|[0-9]+")


def read_odometer(text: str, unit: DistanceUnit = "mi") -> int:
    """Return a whole odometer reading from "118420", "118,420" or "118 420 mi".

    It comes back in `unit`, the vehicle's own: a reading that names the other unit is converted.
    """
    named = re.search(r"\s*(mi|miles|km)\.?$", text.strip(), flags=re.IGNORECASE)
    bare = text.strip()[: named.start()] if named else text.strip()
    if not _GROUPED.fullmatch(bare):
        raise ShopTrouble(
            f"“{text.strip()}” is not an odometer reading.",
            do="Type a whole number such as 118,420, or say why it cannot be read.",
        )
    number = int(re.sub(r"[^0-9]", "", bare))
    if number > 9_999_999:
        raise ShopTrouble(f"“{text.strip()}” has too many digits for an odometer.")
    if named is None:
        return number
    said: DistanceUnit = "km" if named[1].lower() == "km" else "mi"
    return number if said == unit else round(from_miles(to_miles(number, said), unit))


def read_money(text: str) -> int | None:
    """Return cents from "120", "120.50" or "120,50"; None for an empty field."""
    return _scaled(text, 100, "an amount of money", "120 or 120.50")


def read_hours(text: str) -> float | None:
    """Return hours from "1.5" or "1,5"; None for an empty field."""
    hundredths = _scaled(text, 100, "a number of hours", "1.5")
    return None if hundredths is None else hundredths / 100


def read_distance(text: str) -> float | None:
    """Return a distance from "31" or "31.5"; None for an empty field."""
    tenths = _scaled(text, 100, "a distance", "31 or 31.5")
    return None if tenths is None else tenths / 100


def _scaled(text: str, factor: int, what: str, such_as: str) -> int | None:
    bare = text.strip().replace(",", ".").lstrip("$€£ ")
    if not bare:
        return None
    if not re.fullmatch(r"[0-9]{1,7}(\.[0-9]{1,2})?", bare):
        raise ShopTrouble(
            f"“{text.strip()}” is not {what}.", do=f"Type a number such as {such_as}."
        )
    return round(float(bare) * factor)
