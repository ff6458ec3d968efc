"""What a drive without the fault is worth, when the fault comes only now and then."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles

EveryUnit = Literal["mi", "km", "days", "drives"]
EVERY_UNITS: tuple[EveryUnit, ...] = ("mi", "km", "days", "drives")
EVERY_WORDS: dict[EveryUnit, str] = {
    "mi": tr("miles"),
    "km": tr("kilometres"),
    "days": tr("days"),
    "drives": tr("drives"),
}
ONE_OF: dict[EveryUnit, str] = {
    "mi": tr("1 mile"),
    "km": tr("1 kilometre"),
    "days": tr("1 day"),
    "drives": tr("1 drive"),
}
#: A drive that leaves so much to luck convinces (0.95 the other way round).
CONVINCING = 0.05
#: Nobody drives further than so many miles to prove a repair; common practice, no source.
LONGEST_ROAD_TEST = 100.0
#: The customer's "once in so many" may be half or twice that; common practice, no source.
WORD_OUT_BY = 2.0


def luck_left(driven: float, once_in: float) -> float:
    """Return the chance of a quiet drive with nothing repaired: no event of a Poisson process.

    Both distances are in one unit.
    """
    return math.exp(-driven / once_in)


def distance_needed(once_in: float, luck: float = CONVINCING) -> float:
    """Return the quiet distance that leaves only so much luck, in the unit of `once_in`."""
    return -math.log(luck) * once_in


@dataclass(frozen=True, slots=True)
class FaultEvery:
    """The fault came once in `number` (above 0) of `unit`, as the customer tells it."""

    number: float
    unit: EveryUnit


@dataclass(frozen=True, slots=True)
class RoadTestWorth:
    """How much luck a quiet drive leaves, and what would leave only 5 %.

    `luck`, `luck_low`, `luck_high` are chances from 0 to 1; None where nothing was driven.
    `needed` is in `needed_unit`; `days_needed` is that in days of this car's use, where known.
    """

    luck: float | None
    luck_low: float | None
    luck_high: float | None
    needed: float
    needed_unit: Literal["mi", "km", "drives"]
    on_a_road_test: bool
    days_needed: float | None


def road_test_worth(
    every: FaultEvery,
    driven: float | None,
    unit: DistanceUnit,
    miles_a_day: float | None = None,
) -> RoadTestWorth | None:
    """Return what a quiet drive of `driven` (in `unit`) is worth; None where nobody can say.

    Days become a distance by the car's own rate of use, so without a rate nothing can be said.
    Of drives, the proof counts as one.
    """
    if every.unit == "drives":
        count = None if driven is None else 1.0
        needed = distance_needed(every.number)
        return RoadTestWorth(*_lucks(count, every.number), needed, "drives", needed <= 1, None)
    once_in = _miles(every, miles_a_day)
    if once_in is None:
        return None
    miles = None if driven is None else to_miles(driven, unit)
    needed = distance_needed(once_in)
    days = needed / miles_a_day if miles_a_day else None
    reachable = needed <= max(LONGEST_ROAD_TEST, miles or 0.0)
    return RoadTestWorth(*_lucks(miles, once_in), from_miles(needed, unit), unit, reachable, days)


def _miles(every: FaultEvery, miles_a_day: float | None) -> float | None:
    if every.unit == "days":
        return every.number * miles_a_day if miles_a_day else None
    return to_miles(every.number, "km" if every.unit == "km" else "mi")


def _lucks(driven: float | None, once_in: float) -> tuple[float | None, float | None, float | None]:
    if driven is None:
        return None, None, None
    return (
        luck_left(driven, once_in),
        luck_left(driven, once_in / WORD_OUT_BY),
        luck_left(driven, once_in * WORD_OUT_BY),
    )
