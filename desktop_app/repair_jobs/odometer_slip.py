"""A digit swapped, doubled or misread: which reading would fit the vehicle's history.

A digit left out is told by `a_digit_short`: too many readings would fit to propose one.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from desktop_app.language import marked
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles
from desktop_app.repair_jobs.odometer import (
    OdometerReading,
    OdometerReplaced,
    distance_between,
)
from desktop_app.repair_jobs.rate_of_use import RateOfUse

# How often a slip is made, as a logarithm on one scale with the fit; common practice, no source:
# swapping neighbours and doubling one are the usual slips of the hand.
_LIKELY = {
    marked("two digits swapped"): 0.0,
    marked("a digit doubled"): 0.0,
    marked("a digit too many"): -1.0,
    marked("one digit misread"): -1.5,
}
# Digits that are taken for each other on a dirty or faint display; common practice, no source.
_ALIKE = ("17", "14", "27", "38", "39", "49", "56", "58", "06", "08", "68", "69")


@dataclass(frozen=True, slots=True)
class Slip:
    """A reading that would fit, in the unit that was typed, and the slip that explains it.

    Its words are those of `_LIKELY`; tr() says them in the language spoken.
    `miles_a_day` is what it would mean since the last trusted reading.
    """

    value: int
    words: str
    miles_a_day: float


def slips(
    reading: OdometerReading,
    before: OdometerReading,
    rate: RateOfUse,
    replaced: Sequence[OdometerReplaced] = (),
    most: int = 2,
) -> tuple[Slip, ...]:
    """Return the readings that one slip away would fit, the likeliest first, `most` at the most.

    A reading fits where it lies on from `before` and its miles a day are credible for the vehicle:
    within two standard deviations of its rate of use, over so many days, on the logarithm. Where
    the likeliest kind of slip has more than `most` such readings, nobody can say which was meant.
    """
    if reading.value is None or reading.value < 0 or before.value is None:
        return ()
    days = max((reading.on - before.on).days, 1)
    sd = math.sqrt(rate.log_sd**2 + rate.unsteady_days / days)
    found: dict[int, tuple[float, Slip]] = {}
    for value, words in _one_slip_away(f"{reading.value:.0f}"):
        miles = distance_between(before, OdometerReading(reading.on, value, reading.unit), replaced)
        if miles is None:
            continue
        off = math.log(max(miles, 1.0) / days / rate.miles_a_day) / sd
        if abs(off) > 2:
            continue
        score = _LIKELY[words] - off**2 / 2
        if value not in found or score > found[value][0]:
            found[value] = (score, Slip(value, words, miles / days))
    kinds = Counter(slip.words for _, slip in found.values())
    best = sorted(found.values(), key=lambda one: (-one[0], one[1].value))
    if best and kinds[best[0][1].words] > most:
        return ()
    return tuple([slip for _, slip in best if kinds[slip.words] <= most][:most])


def a_digit_short(reading: OdometerReading, before: OdometerReading) -> bool:
    """Tell whether a reading has exactly one digit less than the one before it."""
    if reading.value is None or before.value is None:
        return False
    return len(f"{before.value:.0f}") - len(f"{reading.value:.0f}") == 1


def in_the_other_unit(
    reading: OdometerReading, before: OdometerReading, replaced: Sequence[OdometerReplaced] = ()
) -> int | None:
    """Return what the reading would be in the vehicle's own unit if it was read in the other one.

    None where that does not fit either.
    """
    if reading.value is None:
        return None
    other: DistanceUnit = "km" if reading.unit == "mi" else "mi"
    in_other = OdometerReading(reading.on, reading.value, other)
    if distance_between(before, in_other, replaced) is None:
        return None
    return round(from_miles(to_miles(reading.value, other), reading.unit))


def _one_slip_away(digits: str) -> Iterator[tuple[int, str]]:
    for i in range(len(digits) - 1):
        if digits[i] != digits[i + 1]:
            swapped = digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]
            yield int(swapped), "two digits swapped"
    for i in range(len(digits)):
        shorter = digits[:i] + digits[i + 1 :]
        if shorter:
            twice = i > 0 and digits[i] == digits[i - 1]
            yield int(shorter), "a digit doubled" if twice else "a digit too many"
    for i in range(len(digits)):
        for pair in _ALIKE:
            digit = pair.replace(digits[i], "", 1) if digits[i] in pair else ""
            if digit and (i or digit != "0"):
                yield int(digits[:i] + digit + digits[i + 1 :]), "one digit misread"
