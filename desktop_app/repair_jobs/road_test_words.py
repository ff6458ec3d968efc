"""What a quiet drive is worth, in plain words; and how often the fault came, as it is typed."""

from __future__ import annotations

import re

from desktop_app.repair_jobs.chance_words import of_cases, percent
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.road_test import (
    CONVINCING,
    EVERY_WORDS,
    WORD_OUT_BY,
    FaultEvery,
    RoadTestWorth,
    road_test_worth,
)
from desktop_app.shop_record.trouble import ShopTrouble

LIMIT = (
    "Holds if the fault comes at random and the drive had the conditions under which it comes. "
    "How often it comes is the customer's word. A quiet drive never proves that nothing is wrong."
)


def read_every(text: str) -> float | None:
    """Return how many (miles, days ...) lie between two times; None for an empty field."""
    bare = text.strip().replace(",", ".")
    if not bare:
        return None
    if not re.fullmatch(r"[0-9]{1,6}(\.[0-9]{1,3})?", bare) or float(bare) <= 0:
        raise ShopTrouble(
            f"“{text.strip()}” does not say how often it came.",
            do="Type a number above 0 such as 40, or 0.5 for twice.",
        )
    return float(bare)


def worth_in_words(
    every: FaultEvery | None,
    driven: float | None,
    unit: DistanceUnit,
    miles_a_day: float | None = None,
) -> str:
    """Say what a quiet drive of `driven` (in `unit`) is worth; nothing where nobody said how often.

    `miles_a_day` is the car's own rate of use, where it is known.
    """
    if every is None:
        return ""
    worth = road_test_worth(every, driven, unit, miles_a_day)
    if worth is None:
        return (
            f"It came once in {_amount(every.number, 'days')}, but how far this car goes in a day "
            "is not known: nobody can say what the drive is worth."
        )
    return f"{_driven(worth, every, driven, unit)}{_needed(worth)}"


def _driven(
    worth: RoadTestWorth, every: FaultEvery, driven: float | None, unit: DistanceUnit
) -> str:
    often = f"If it came once in {_amount(every.number, every.unit)}, "
    if worth.luck is None or worth.luck_low is None or worth.luck_high is None or driven is None:
        return often
    quiet = "one quiet drive" if every.unit == "drives" else f"{_amount(driven, unit)} without it"
    verb = "happens" if every.unit == "drives" or driven == 1 else "happen"
    between = f"{percent(worth.luck_low)} to {percent(worth.luck_high)}"
    return (
        f"{often}{quiet} {verb} by luck in {of_cases(worth.luck)} with nothing repaired "
        f"({between} if the customer is out by a factor of {WORD_OUT_BY:g}). "
    )


def _needed(worth: RoadTestWorth) -> str:
    if worth.luck_high is not None and worth.luck_high <= CONVINCING:
        return "That leaves little to luck."
    needed = _amount(float(f"{worth.needed:.3g}"), worth.needed_unit)
    start = f"about {needed}"
    if worth.luck is not None:
        start = start.capitalize()
    said = f"{start} without it would leave {percent(CONVINCING)}."
    if worth.on_a_road_test:
        return said
    days = worth.days_needed
    asked = "" if days is None else f", in about {max(1, round(days)):,} days of this car's use"
    return (
        f"{said} That is not provable on a road test: agree on a day to ask{asked}, "
        "or make it happen on purpose."
    )


def _amount(number: float, unit: str) -> str:
    words = EVERY_WORDS.get(unit, unit)  # type: ignore[call-overload]
    return f"{number:,g} {words[:-1] if number == 1 else words}"
