"""What an odometer says over the years: readings, replaced odometers, and the miles between."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from typing import Literal

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, to_miles
from desktop_app.shop_record.kept_value import kept_word

# More than this on average is asked about and not trusted; common practice, no source.
MOST_MILES_A_DAY = 400

ReadingSource = Literal["read", "told", "estimated"]
READING_SOURCES: tuple[ReadingSource, ...] = ("read", "told", "estimated")
_ONE_OF_THEM = tr("“read”, “told” or “estimated”")  # said once, for whole histories of readings
# How far off a reading may be, in miles, by how it came; common practice, no source: people tell
# round thousands, and who estimates is glad to be within a month's driving.
_OFF_BY: dict[ReadingSource, float] = {"read": 0.0, "told": 500.0, "estimated": 1500.0}


def reading_source(kept: str | None, place: str = "") -> ReadingSource:
    """Return how a reading came, from what is kept: what nobody said was read.

    Raises ShopDamaged for a word that nobody can have kept.
    """
    if kept is None:
        return "read"
    return kept_word(kept, READING_SOURCES, _ONE_OF_THEM, place)


@dataclass(frozen=True, slots=True)
class OdometerReading:
    """What an odometer said on a day; None where it cannot be read.

    `source` says whether somebody of the shop read it, the customer told it, or it is estimated.
    Only what was read is trusted to end a window; the other two help to know how much a car is
    used. `stood_until` is the day on which the visit ended that it belongs to, None where nobody
    knows it: a car in the shop is not in use.
    """

    on: date
    value: float | None
    unit: DistanceUnit = "mi"
    source: ReadingSource = "read"
    stood_until: date | None = None

    @property
    def miles(self) -> float | None:
        """The reading in miles."""
        return None if self.value is None else to_miles(self.value, self.unit)

    @property
    def off_by(self) -> float:
        """By how many miles it may be off, either way."""
        return _OFF_BY[self.source]


@dataclass(frozen=True, slots=True)
class OdometerReplaced:
    """The odometer was replaced or set anew: the last reading of the old, the first of the new."""

    on: date
    before: float | None
    after: float | None
    unit: DistanceUnit = "mi"


@dataclass(frozen=True, slots=True)
class RunningMiles:
    """A trusted reading on a scale that runs on over replaced odometers.

    Two readings are comparable only within one `leg`: a new one begins where a stretch is unknown.
    """

    leg: int
    miles: float


@dataclass(frozen=True, slots=True)
class _Stretch:
    leg: int
    offset: float


def running_miles(
    readings: Sequence[OdometerReading], replaced: Sequence[OdometerReplaced] = ()
) -> tuple[RunningMiles | None, ...]:
    """Return, in the order given, each reading on the running scale, or None if not trusted.

    Taken by date: a reading lower than the last trusted one, or more than 400 miles a day on from
    it, is not trusted, nor is one that nobody of the shop read. A reading on the day of a
    replacement belongs to the odometer it is near.
    """
    changes = sorted(replaced, key=lambda change: change.on)
    stretches = _stretches(changes)
    places: list[RunningMiles | None] = [None] * len(readings)
    last: tuple[date, RunningMiles] | None = None
    order = sorted(range(len(readings)), key=lambda i: readings[i].on)
    for index in order:
        reading = readings[index]
        miles = reading.miles
        if miles is None or miles < 0 or reading.source != "read":
            continue
        stretch = stretches[_stretch_of(reading.on, miles, changes)]
        place = RunningMiles(stretch.leg, miles + stretch.offset)
        if last is not None and last[1].leg == place.leg:
            days = (reading.on - last[0]).days
            if miles_between(last[1], place, days) is None:
                continue
        places[index] = place
        last = (reading.on, place)
    return tuple(places)


def miles_between(
    earlier: RunningMiles | None, later: RunningMiles | None, days: int
) -> float | None:
    """Return the miles driven between two readings `days` apart, or None if they cannot say."""
    if earlier is None or later is None or earlier.leg != later.leg:
        return None
    driven = later.miles - earlier.miles
    if driven < 0 or driven > MOST_MILES_A_DAY * max(days, 1):
        return None
    return driven


def distance_between(
    earlier: OdometerReading,
    later: OdometerReading,
    replaced: Sequence[OdometerReplaced] = (),
) -> float | None:
    """Return the miles between two readings over replaced odometers, or None: time only."""
    start, end = running_miles((earlier, later), replaced)
    return miles_between(start, end, (later.on - earlier.on).days)


def days_of_use(earlier: OdometerReading, later: OdometerReading) -> int:
    """Return the days from one reading to the next in which the car was not in the shop.

    None of them, 0, from the way in to the way out of one visit: what is driven there is no use.
    """
    left = earlier.on if earlier.stood_until is None else max(earlier.on, earlier.stood_until)
    return max(0, (later.on - left).days)


def miles_per_day(
    readings: Sequence[OdometerReading], replaced: Sequence[OdometerReplaced] = ()
) -> float | None:
    """Return the vehicle's rate of use over its last unbroken stretch, or None below 14 days."""
    placed = [
        (reading, place)
        for reading, place in zip(readings, running_miles(readings, replaced), strict=True)
        if place is not None
    ]
    placed.sort(key=lambda pair: pair[0].on)
    own = [pair for pair in placed if pair[1].leg == placed[-1][1].leg]
    days, miles = 0, 0.0
    for (earlier, start), (later, end) in pairwise(own):
        gone = days_of_use(earlier, later)
        days, miles = days + gone, miles + (end.miles - start.miles if gone else 0.0)
    return miles / days if days >= 14 else None


def _stretches(changes: Sequence[OdometerReplaced]) -> list[_Stretch]:
    stretches = [_Stretch(0, 0)]
    for change in changes:
        last = stretches[-1]
        if change.before is None or change.after is None:
            stretches.append(_Stretch(last.leg + 1, 0))
            continue
        step = to_miles(change.before, change.unit) - to_miles(change.after, change.unit)
        stretches.append(_Stretch(last.leg, last.offset + step))
    return stretches


def _stretch_of(on: date, miles: float, changes: Sequence[OdometerReplaced]) -> int:
    after = bisect_right([change.on for change in changes], on)
    if after and changes[after - 1].on == on and _is_old(miles, changes[after - 1]):
        return after - 1
    return after


def _is_old(miles: float, change: OdometerReplaced) -> bool:
    before = None if change.before is None else to_miles(change.before, change.unit)
    after = None if change.after is None else to_miles(change.after, change.unit)
    if before is not None and after is not None:
        return abs(miles - before) < abs(miles - after)
    if after is not None:
        return abs(miles - after) > MOST_MILES_A_DAY
    return before is not None and abs(miles - before) <= MOST_MILES_A_DAY
