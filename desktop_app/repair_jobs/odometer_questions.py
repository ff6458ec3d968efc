"""What to ask about an odometer reading that looks odd; nothing is ever refused."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.distance import (
    DistanceUnit,
    distance_in_words,
    from_miles,
    unit_words,
)
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.odometer import (
    MOST_MILES_A_DAY,
    OdometerReading,
    OdometerReplaced,
    ReadingSource,
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
    *,
    meant: Sequence[Proposal] = (),
    as_kept: bool = False,
) -> tuple[str, ...]:
    """Return the questions about a new reading, given the vehicle's earlier ones; none if plain.

    One that was told or estimated is odd only beyond what it may be off by. Where it is known
    better than by those earlier ones which readings may be `meant`, these are named. `as_kept`
    gives the words under which answers are kept, which never change.
    """
    questions = []
    if reading.on > today:
        questions.append(
            tr(
                "{day} is still to come. Is the date right?",
                day=day_in_words(reading.on),
            )
        )
    if reading.value is None:
        return tuple(questions)
    before = _last_trusted(reading, earlier, replaced)
    if before is None:
        if reading.value >= 1_000_000:
            questions.append(
                tr(
                    "{reading} is more than six digits can show. One too many?",
                    reading=_said(reading),
                )
            )
        return tuple(questions)
    odd = _against(reading, before, replaced, as_kept=as_kept)
    if odd is not None:
        guesses = [
            tr(
                "{reading} would fit ({why}).",
                reading=distance_in_words(each.value, reading.unit),
                why=each.why,
            )
            for each in meant or odometer_proposals(reading, earlier, replaced, shop)
        ]
        if not guesses and a_digit_short(reading, before):
            guesses = [tr("It has a digit less than before: is one missing?")]
        fits = None if meant else _earlier_one_meant(reading, before, earlier, replaced, shop)
        if fits is not None:
            guesses = [
                tr("It fits if {before} was to be {meant}.", before=_said(before), meant=fits)
            ]
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
    return tr(
        "No reading is kept, because “{unread}”. Does the odometer say {reading}?",
        unread=unread,
        reading=distance_in_words(number, unit),
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
    found = [Proposal(one.value, tr(one.words)) for one in slips(reading, before, rate, replaced)]
    other = in_the_other_unit(reading, before, replaced)
    if other is not None:
        unit = unit_words("km" if reading.unit == "mi" else "mi")
        found.append(Proposal(other, _in_the_other_unit(reading.source, unit)))
    return tuple(found)


def day_in_words(day: date) -> str:
    """Return a day as people write it, the same in every country: "2 March 2026"."""
    month = tr(_MONTHS[day.month - 1])
    return tr("{day} {month} {year}", day=day.day, month=month, year=day.year)


def day_and_month(day: date) -> str:
    """Return a day with the first letters of its month, where there is little room: "16 Nov"."""
    return f"{day.day} {tr(_MONTHS[day.month - 1])[:3]}"


def _in_the_other_unit(source: ReadingSource, unit: str) -> str:
    """Say in which unit a reading may have been read, told or estimated."""
    if source == "told":
        return tr("told in {unit}", unit=unit)
    return (
        tr("estimated in {unit}", unit=unit)
        if source == "estimated"
        else tr("read in {unit}", unit=unit)
    )


_MONTHS = (
    marked("January"),
    marked("February"),
    marked("March"),
    marked("April"),
    marked("May"),
    marked("June"),
    marked("July"),
    marked("August"),
    marked("September"),
    marked("October"),
    marked("November"),
    marked("December"),
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
    reading: OdometerReading,
    before: OdometerReading,
    replaced: Sequence[OdometerReplaced],
    *,
    as_kept: bool = False,
) -> str | None:
    if reading.miles is None or before.miles is None or _goes_on(reading, before, replaced):
        return None  # plain, or over a stretch that nobody knows: nothing to ask
    if reading.miles < before.miles:
        return tr(
            _LESS_THAN_BEFORE[reading.source],
            reading=_said(reading),
            day=day_in_words(before.on),
            before=_said(before),
        )
    days = (reading.on - before.on).days
    driven = distance_in_words(from_miles(reading.miles - before.miles, reading.unit), reading.unit)
    limit = distance_in_words(from_miles(MOST_MILES_A_DAY, reading.unit), reading.unit)
    if as_kept:
        in_days = "in one day" if days <= 1 else f"in {days} days"
        return f"That is {driven} {in_days}, more than {limit} a day. Is a digit wrong?"
    said = {"driven": driven, "limit": limit, "day": day_in_words(before.on)}
    if days <= 1:
        return tr(
            "That is {driven} in one day, more than {limit} a day: on {day} it said {before}. "
            "Is a digit wrong?",
            before=_said(before),
            **said,
        )
    return tr(
        "That is {driven} in {days} days, more than {limit} a day: on {day} it said {before}. "
        "Is a digit wrong?",
        days=days,
        before=_said(before),
        **said,
    )


_LESS_THAN_BEFORE: dict[ReadingSource, str] = {
    "read": marked(
        "The odometer says {reading}, but on {day} it said {before}. "
        "Was it replaced, or is a digit wrong?"
    ),
    "told": marked(
        "{reading} was told, but on {day} it said {before}. Was it replaced, or is a digit wrong?"
    ),
    "estimated": marked(
        "{reading} was estimated, but on {day} it said {before}. "
        "Was it replaced, or is a digit wrong?"
    ),
}


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
