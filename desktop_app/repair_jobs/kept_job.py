"""What is kept of a job, as only a deed can have written it; all else is told as damage."""

from __future__ import annotations

from datetime import date
from typing import Literal

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import MOST_CENTS, MOST_DISTANCE, MOST_HOURS
from desktop_app.repair_jobs.proof import RECORDED_LEVELS, ProofLevel
from desktop_app.repair_jobs.road_test import EVERY_UNITS, FaultEvery
from desktop_app.repair_jobs.who_did_what import WORKS
from desktop_app.shop_record.kept_value import damaged, kept_whole, kept_word

# The longest promises: 120 calendar months can be 3,653 days.
MOST_WINDOW_DAYS, MOST_WINDOW_MONTHS, MOST_WINDOW_MILES = 3660, 120, 200_000
WINDOW_RULES: tuple[Literal["first"], Literal["both"]] = ("first", "both")
_WHOSE = ("job", "shop")
_LOWEST, *_, _HIGHEST = RECORDED_LEVELS
# Said once: every row of a whole history is held against them.
_DAYS = tr("a window of 0 to {most_window_days:,} days", most_window_days=MOST_WINDOW_DAYS)
_MILES = tr("a window of 0 to {most_window_miles:,} miles", most_window_miles=MOST_WINDOW_MILES)
_RULE = tr("“first” or “both”")
_HOURS = tr("hours from 0 to {most_hours:,}", most_hours=MOST_HOURS)
_PRICE = tr("a price from 0 to 1,000,000.00")
_LEVEL = tr("a level of proof")


def kept_window(days: int, miles: int, rule: str, place: str = "") -> None:
    """Raise a ShopDamaged where no promise is so many days and miles, or is counted so."""
    kept_whole(days, 0, MOST_WINDOW_DAYS, _DAYS, place)
    kept_whole(miles, 0, MOST_WINDOW_MILES, _MILES, place)
    if not days and not miles:
        raise damaged(tr("0 days, 0 miles"), tr("a window with a limit"), place)
    kept_word(rule, WINDOW_RULES, _RULE, place)


def kept_promise(months: int | None, whose: str | None, place: str = "") -> None:
    """Raise a ShopDamaged where a window's months, or whose promise it is, are none."""
    if months is not None:
        kept_whole(months, 1, MOST_WINDOW_MONTHS, tr("a number of calendar months"), place)
    of_kind = whose is not None and whose.removeprefix("part kind ").strip() not in ("", whose)
    if whose is not None and not of_kind:
        kept_word(whose, _WHOSE, tr("“job”, “shop” or a part kind"), place)


def kept_work(
    hours: float | None, unbilled_hours: float | None, cents: int | None, place: str = ""
) -> None:
    """Raise a ShopDamaged where no job takes such hours, or has such a price; None is no damage."""
    for number in (hours, unbilled_hours):
        kept_number(number, MOST_HOURS, _HOURS, place)
    kept_number(cents, MOST_CENTS, _PRICE, place)


def kept_kind_of_work(work: str | None, search_hours: float | None, place: str = "") -> None:
    """Raise a ShopDamaged where a job is of no kind of work, or such hours are none of searching.

    They may be more than the job's own hours: an import can write those later.
    """
    if work is not None:
        kept_word(work, WORKS, tr("“inspection” or “maintenance”"), place)
    kept_number(search_hours, MOST_HOURS, _HOURS, place)


def kept_drive(distance: float | None, place: str = "") -> None:
    """Raise a ShopDamaged where no drive to prove a repair is so long."""
    kept_number(
        distance,
        MOST_DISTANCE,
        tr("a drive of 0 to {most_distance:,}", most_distance=MOST_DISTANCE),
        place,
    )


def kept_number(number: float | None, most: float, wanted: str, place: str = "") -> None:
    """Raise a ShopDamaged where a kept number is not one from 0 to the most."""
    if number is not None and not (isinstance(number, int | float) and 0 <= number <= most):
        raise damaged(number, wanted, place)


def kept_hand_over(came: date, left: date | None, place: str = "") -> None:
    """Raise a ShopDamaged where a job was handed over before its car came."""
    if left is not None and left < came:
        wanted = tr("a hand-over on {came}, when the car came, or later", came=came.isoformat())
        raise damaged(left.isoformat(), wanted, place)


def kept_level(level: int | None, place: str = "") -> ProofLevel | None:
    """Return how far a job is proved, None where nobody said."""
    if level is None:
        return None
    kept_whole(level, _LOWEST, _HIGHEST, _LEVEL, place)
    return ProofLevel(level)


def kept_every(number: float | None, unit: str | None, place: str = "") -> FaultEvery | None:
    """Return how often a fault came, None where nobody said."""
    if number is None and unit is None:
        return None
    known = kept_word(unit, EVERY_UNITS, tr("a unit of how often a fault came"), place)
    if number is None:
        return None
    if not 0 < number < float("inf"):
        raise damaged(number, tr("a number above 0"), place)
    return FaultEvery(number, known)
