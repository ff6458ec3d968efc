"""What a quiet drive is worth, in plain words; and how often the fault came, as it is typed."""

from __future__ import annotations

import re
from contextlib import suppress
from dataclasses import dataclass

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.chance_words import of_cases, percent
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.entry_bounds import MOST_DISTANCE
from desktop_app.repair_jobs.road_test import (
    CONVINCING,
    EVERY_WORDS,
    ONE_OF,
    WORD_OUT_BY,
    EveryUnit,
    FaultEvery,
    RoadTestWorth,
    road_test_worth,
)
from desktop_app.repair_jobs.typed_entry import read_distance, refuse_two_ways
from desktop_app.shop_record.trouble import ShopTrouble

LIMIT = tr(
    "Holds if the fault comes at random and the drive had the conditions under which "
    "it comes. How often it comes is the customer's word. A quiet drive never proves "
    "that nothing is wrong."
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
            tr("“{text}” does not say how often it came.", text=text.strip()),
            do=tr(
                "Type a number above 0 such as 40, or 0.5 for twice; up to {most_distance:,}.",
                most_distance=MOST_DISTANCE,
            ),
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
        unknown = tr(
            "It came once in {amount}, but how far this car goes in a day is "
            "not known: nobody can say what the drive is worth.",
            amount=_amount(every.number, "days"),
        )
        return f"{lacked}{unknown}"
    said = _driven(worth, every, quiet, unit)
    return f"{lacked}{said}{_left_to_luck(worth)}" if said else f"{lacked}{_needed(worth, every)}"


def _lacked(under: DrivenUnder) -> str:
    if under.not_met:
        return tr(
            "Not met on the drive: {conditions}. So the quiet drive says nothing of the fault. ",
            conditions=", ".join(map(condition_words, under.not_met)),
        )
    if under.not_said:
        return tr(
            "Nobody said whether the drive had {conditions}; only if it had, this holds. ",
            conditions=", ".join(map(condition_words, under.not_said)),
        )
    return ""


def _driven(
    worth: RoadTestWorth, every: FaultEvery, driven: float | None, unit: DistanceUnit
) -> str:
    """Say what the quiet drive leaves to luck; nothing where nothing was driven."""
    if worth.luck is None or worth.luck_low is None or worth.luck_high is None or driven is None:
        return ""
    if every.unit == "drives":
        words = tr(
            "If it came once in {amount}, one quiet drive happens by luck in {of_cases} with "
            "nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). "
        )
    elif driven == 1:
        words = tr(
            "If it came once in {amount}, {driven} without it happens by luck in {of_cases} with "
            "nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). "
        )
    else:
        words = tr(
            "If it came once in {amount}, {driven} without it happen by luck in {of_cases} with "
            "nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). "
        )
    return words.format(
        amount=_amount(every.number, every.unit),
        driven=_amount(driven, unit),
        of_cases=of_cases(worth.luck),
        low=percent(worth.luck_low),
        high=percent(worth.luck_high),
        factor=WORD_OUT_BY,
    )


def _left_to_luck(worth: RoadTestWorth) -> str:
    """Say that the drive convinces, or how far one would have to go that does."""
    if worth.luck_high is not None and worth.luck_high <= CONVINCING:
        return tr("That leaves little to luck.")
    enough = tr(
        "About {needed} without it would leave {percent}.",
        needed=_needed_amount(worth),
        percent=percent(CONVINCING),
    )
    return f"{enough}{_not_on_a_road_test(worth)}"


def _needed(worth: RoadTestWorth, every: FaultEvery) -> str:
    """Say how far a drive would have to go that convinces."""
    enough = tr(
        "If it came once in {amount}, about {needed} without it would leave {percent}.",
        amount=_amount(every.number, every.unit),
        needed=_needed_amount(worth),
        percent=percent(CONVINCING),
    )
    return f"{enough}{_not_on_a_road_test(worth)}"


def _not_on_a_road_test(worth: RoadTestWorth) -> str:
    if worth.on_a_road_test:
        return ""
    if worth.days_needed is None:
        return tr(
            " That is not provable on a road test: agree on a day to ask, or "
            "make it happen on purpose."
        )
    return tr(
        " That is not provable on a road test: agree on a day to ask, in about {days:,} days "
        "of this car's use, or make it happen on purpose.",
        days=max(1, round(worth.days_needed)),
    )


def _needed_amount(worth: RoadTestWorth) -> str:
    return _amount(float(f"{worth.needed:.3g}"), worth.needed_unit)


def _amount(number: float, unit: EveryUnit) -> str:
    return ONE_OF[unit] if number == 1 else f"{figure(number, ',g')} {EVERY_WORDS[unit]}"
