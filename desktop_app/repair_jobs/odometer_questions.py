"""What to ask about an odometer reading that looks odd; nothing is ever refused."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.odometer import (
    MOST_MILES_A_DAY,
    OdometerReading,
    OdometerReplaced,
    RunningMiles,
    distance_between,
    running_miles,
)
from desktop_app.repair_jobs.odometer_slip import a_digit_short, in_the_other_unit, slips
from desktop_app.repair_jobs.rate_of_use import (
    RateOfUse,
    ShopUse,
    rate_of_use,
    stretches_of,
)


@dataclass(frozen=True, slots=True)
class Proposal:
    """A reading that would fit, in the vehicle's unit, and why it may be meant."""

    value: int
    why: str


def odometer_questions(
    reading: OdometerReading,
    earlier: Sequence[OdometerReading],
    today: date,
    replaced: Sequence[OdometerReplaced] = (),
    shop: ShopUse | None = None,
) -> tuple[str, ...]:
    """Return the questions about a new reading, given the vehicle's earlier ones; none if plain.

    One that was told or estimated is odd only beyond what it may be off by.
    """
    questions = []
    if reading.on > today:
        questions.append(f"{day_in_words(reading.on)} is still to come. Is the date right?")
    if reading.value is None:
        return tuple(questions)
    before = _last_trusted(reading, earlier, replaced)
    if before is None:
        if reading.value >= 1_000_000:
            questions.append(f"{_said(reading)} is more than six digits can show. One too many?")
        return tuple(questions)
    odd = _against(reading, before, replaced)
    if odd is not None:
        guesses = [
            f"{distance_in_words(each.value, reading.unit)} would fit ({each.why})."
            for each in odometer_proposals(reading, earlier, replaced, shop)
        ]
        if not guesses and a_digit_short(reading, before):
            guesses = ["It has a digit less than before: is one missing?"]
        meant = _earlier_one_meant(reading, before, earlier, replaced, shop)
        if meant is not None:
            guesses = [f"It fits if {_said(before)} was to be {meant}."]
        questions.append(" ".join((odd, *guesses)))
    return tuple(questions)


_FIGURES = re.compile(
    r"(?<![0-9/.-])(?:[0-9]{1,3}(?:[,.'’ \u00a0\u202f][0-9]{3})+|[0-9]{4,7})(?![0-9])(?![/.-][0-9])"
)
_YEAR = re.compile("19[89][0-9]|20[0-9]{2}")  # "dead since 2025"


def reading_in_words(unread: str) -> int | None:
    """Return the number of four figures or more in the words that say why there is no reading.

    A bare year and a day are none.
    """
    for found in _FIGURES.finditer(unread):
        number = int(re.sub("[^0-9]", "", found[0]))
        if 0 < number <= MOST_ON_AN_ODOMETER and not _YEAR.fullmatch(found[0]):
            return number
    return None


def question_of_words(unread: str, number: int, unit: DistanceUnit) -> str:
    """Return the question about words that may hold the reading."""
    return (
        f"No reading is kept, because “{unread}”. Does the odometer say "
        f"{distance_in_words(number, unit)}?"
    )


def odometer_proposals(
    reading: OdometerReading,
    earlier: Sequence[OdometerReading],
    replaced: Sequence[OdometerReplaced] = (),
    shop: ShopUse | None = None,
) -> tuple[Proposal, ...]:
    """Return the readings that one slip would explain where this one is odd, likeliest first.

    Nothing is changed by itself; a person may take one of them.
    """
    before = _last_trusted(reading, earlier, replaced)
    if before is None or _against(reading, before, replaced) is None:
        return ()
    if _earlier_one_meant(reading, before, earlier, replaced, shop) is not None:
        return ()
    rate = _rate(reading, earlier, replaced, shop)
    found = [Proposal(slip.value, slip.words) for slip in slips(reading, before, rate, replaced)]
    other = in_the_other_unit(reading, before, replaced)
    if other is not None:
        unit = "km" if reading.unit == "mi" else "miles"
        found.append(Proposal(other, f"{reading.source} in {unit}"))
    return tuple(found)


def day_in_words(day: date) -> str:
    """Return a day as people write it, the same in every country: "2 March 2026"."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


_MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)


def _last_trusted(
    reading: OdometerReading,
    earlier: Sequence[OdometerReading],
    replaced: Sequence[OdometerReplaced],
) -> OdometerReading | None:
    known = sorted((r for r in earlier if r.on <= reading.on), key=lambda r: r.on)
    places: tuple[RunningMiles | None, ...] = running_miles(known, replaced)
    trusted = [r for r, place in zip(known, places, strict=True) if place is not None]
    return trusted[-1] if trusted else None


def _against(
    reading: OdometerReading, before: OdometerReading, replaced: Sequence[OdometerReplaced]
) -> str | None:
    if reading.miles is None or before.miles is None or _goes_on(reading, before, replaced):
        return None  # plain, or over a stretch that nobody knows: nothing to ask
    if reading.miles < before.miles:
        says = (
            f"The odometer says {_said(reading)}"
            if reading.source == "read"
            else f"{_said(reading)} was {reading.source}"
        )
        return (
            f"{says}, but on {day_in_words(before.on)} it said {_said(before)}. "
            "Was it replaced, or is a digit wrong?"
        )
    days = (reading.on - before.on).days
    driven = distance_in_words(from_miles(reading.miles - before.miles, reading.unit), reading.unit)
    limit = distance_in_words(from_miles(MOST_MILES_A_DAY, reading.unit), reading.unit)
    span = "one day" if days <= 1 else f"{days} days"
    return f"That is {driven} in {span}, more than {limit} a day. Is a digit wrong?"


def _goes_on(
    reading: OdometerReading, before: OdometerReading, replaced: Sequence[OdometerReplaced]
) -> bool:
    """Tell whether a reading, or one as far from it as it may be off, goes on from the last."""
    assert reading.miles is not None
    assert before.miles is not None
    off, miles = reading.off_by, reading.miles
    nearest = min(max(before.miles, miles - off), miles + off)
    for maybe in dict.fromkeys((miles, nearest, miles - off, miles + off)):
        start, end = running_miles((before, OdometerReading(reading.on, maybe)), replaced)
        if start is not None and end is not None:
            return True
    return False


def _earlier_one_meant(
    reading: OdometerReading,
    before: OdometerReading,
    earlier: Sequence[OdometerReading],
    replaced: Sequence[OdometerReplaced],
    shop: ShopUse | None,
) -> str | None:
    """Return what the last reading was to be, where a slip in it explains the lower one now."""
    older = [r for r in earlier if r.on < before.on]
    start = _last_trusted(before, older, replaced)
    seen = replace(reading, source="read")
    if start is None or distance_between(start, seen, replaced) is None:
        return None
    for slip in slips(before, start, _rate(before, older, replaced, shop), replaced):
        meant = replace(before, value=slip.value)
        if distance_between(meant, seen, replaced) is not None:
            return _said(meant)
    return None


def _rate(
    reading: OdometerReading,
    earlier: Sequence[OdometerReading],
    replaced: Sequence[OdometerReplaced],
    shop: ShopUse | None,
) -> RateOfUse:
    return rate_of_use(stretches_of([r for r in earlier if r.on <= reading.on], replaced), shop)


def _said(reading: OdometerReading) -> str:
    assert reading.value is not None
    return distance_in_words(reading.value, reading.unit)
