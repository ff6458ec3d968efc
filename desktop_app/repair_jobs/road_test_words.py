"""What a quiet drive is worth, in plain words; and how often the fault came, as it is typed."""

from __future__ import annotations

import re
from contextlib import suppress
from dataclasses import dataclass

from desktop_app.repair_jobs.chance_words import of_cases, percent
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.entry_bounds import MOST_DISTANCE
from desktop_app.repair_jobs.road_test import (
    CONVINCING,
    EVERY_WORDS,
    WORD_OUT_BY,
    FaultEvery,
    RoadTestWorth,
    road_test_worth,
)
from desktop_app.repair_jobs.typed_entry import read_distance, refuse_two_ways
from desktop_app.shop_record.trouble import ShopTrouble

LIMIT = (
    "Holds if the fault comes at random and the drive had the conditions under which it comes. "
    "How often it comes is the customer's word. A quiet drive never proves that nothing is wrong."
)


@dataclass(frozen=True, slots=True)
class DrivenUnder:
    """Which of the conditions told of were not met on the drive, and of which nobody said."""

    not_met: tuple[str, ...] = ()
    not_said: tuple[str, ...] = ()


def read_every(text: str) -> float | None:
    """Return how many (miles, days ...) lie between two times; None for an empty field."""
    bare = text.strip()
    if not bare:
        return None
    refuse_two_ways(bare)
    found: float | None = None
    if re.fullmatch(r"0[.,][0-9]{3}", bare):  # a distance has two digits after its mark at most
        found = float(bare.replace(",", "."))
    else:
        with suppress(ShopTrouble):
            found = read_distance(bare)
    if not found:
        raise ShopTrouble(
            f"“{text.strip()}” does not say how often it came.",
            do=f"Type a number above 0 such as 40, or 0.5 for twice; up to {MOST_DISTANCE:,}.",
        )
    return found


def worth_in_words(
    every: FaultEvery | None,
    driven: float | None,
    unit: DistanceUnit,
    miles_a_day: float | None = None,
    under: DrivenUnder | None = None,
) -> str:
    """Say what a quiet drive of `driven` (in `unit`) is worth; nothing where nobody said how often.

    `miles_a_day` is the car's own rate of use, where it is known. A drive that lacked a condition
    under which the fault comes is given no chance: it could not have come.
    """
    if every is None:
        return ""
    under = under or DrivenUnder()
    quiet = None if under.not_met else driven
    worth = road_test_worth(every, quiet, unit, miles_a_day)
    lacked = "" if driven is None else _lacked(under)
    if worth is None:
        return (
            f"{lacked}It came once in {_amount(every.number, 'days')}, but how far this car goes "
            "in a day is not known: nobody can say what the drive is worth."
        )
    return f"{lacked}{_driven(worth, every, quiet, unit)}{_needed(worth)}"


def _lacked(under: DrivenUnder) -> str:
    if under.not_met:
        listed = ", ".join(map(condition_words, under.not_met))
        return f"Not met on the drive: {listed}. So the quiet drive says nothing of the fault. "
    if under.not_said:
        listed = ", ".join(map(condition_words, under.not_said))
        return f"Nobody said whether the drive had {listed}; only if it had, this holds. "
    return ""


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
