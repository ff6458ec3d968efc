"""What to ask about an odometer reading that looks odd; nothing is ever refused."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from desktop_app.repair_jobs.distance import (
    DistanceUnit,
    distance_in_words,
    from_miles,
)
from desktop_app.repair_jobs.odometer import (
    MOST_MILES_A_DAY,
    OdometerReading,
    OdometerReplaced,
    RunningMiles,
    distance_between,
    running_miles,
)


def odometer_questions(
    reading: OdometerReading,
    earlier: Sequence[OdometerReading],
    today: date,
    replaced: Sequence[OdometerReplaced] = (),
) -> tuple[str, ...]:
    """Return the questions about a new reading, given the vehicle's earlier ones; none if plain."""
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
        questions.append(" ".join((odd, *_guesses(reading, before, replaced))))
    return tuple(questions)


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
    start, end = running_miles((before, reading), replaced)
    if start is not None and end is not None:
        return None  # plain, or over a stretch that nobody knows: nothing to ask
    if reading.miles is None or before.miles is None:
        return None
    if reading.miles < before.miles:
        return (
            f"The odometer says {_said(reading)}, but on {day_in_words(before.on)} it said "
            f"{_said(before)}. Was it replaced, or is a digit wrong?"
        )
    days = (reading.on - before.on).days
    driven = distance_in_words(from_miles(reading.miles - before.miles, reading.unit), reading.unit)
    limit = distance_in_words(from_miles(MOST_MILES_A_DAY, reading.unit), reading.unit)
    span = "one day" if days <= 1 else f"{days} days"
    return f"That is {driven} in {span}, more than {limit} a day. Is a digit wrong?"


def _guesses(
    reading: OdometerReading, before: OdometerReading, replaced: Sequence[OdometerReplaced]
) -> list[str]:
    """Name the slips that would explain the reading: a digit too many, the other unit."""
    assert reading.value is not None
    guesses = []
    digits = f"{reading.value:.0f}"
    shorter = sorted({int(digits[:i] + digits[i + 1 :] or "0") for i in range(len(digits))})
    fits = [
        value
        for value in shorter
        if distance_between(before, OdometerReading(reading.on, value, reading.unit), replaced)
        is not None
    ]
    if fits:
        without = distance_in_words(fits[0], reading.unit)
        guesses.append(f"With one digit less, {without}, it would fit.")
    other: DistanceUnit = "km" if reading.unit == "mi" else "mi"
    in_other = OdometerReading(reading.on, reading.value, other)
    if distance_between(before, in_other, replaced) is not None:
        word = "kilometres" if other == "km" else "miles"
        guesses.append(f"Read in {word} it would fit.")
    return guesses


def _said(reading: OdometerReading) -> str:
    assert reading.value is not None
    return distance_in_words(reading.value, reading.unit)
