"""Many odometer readings put on their vehicles' running scales at once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.repair_jobs.distance import KM_PER_MILE
from desktop_app.repair_jobs.odometer import (
    MOST_MILES_A_DAY,
    READING_SOURCES,
    OdometerReading,
    OdometerReplaced,
    running_miles,
)
from desktop_app.returns_watched.many_visits.visit_columns import NO_LEG, Places

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]
    Order: TypeAlias = NDArray[np.int32] | NDArray[np.int64]

READ = READING_SOURCES.index("read")
_AT_ONCE = 250_000  # readings that are held against the ones before them in one step


@dataclass(frozen=True, slots=True)
class ReadingColumns:
    """Readings (r,): whose, on which day, the order within a vehicle, and what it said.

    `moment` orders the readings of one vehicle's day; those of one moment are in their order here.
    `value` is in kilometres where `in_km` is true, `source` a place in READING_SOURCES.
    """

    vehicle: Whole
    day: Whole
    moment: Whole
    value: NDArray[np.int64]
    in_km: Marks
    source: NDArray[np.int8]

    def only(self, rows: Order | Marks) -> ReadingColumns:
        """Return some of the readings, or all in another order."""
        return ReadingColumns(
            self.vehicle[rows],
            self.day[rows],
            self.moment[rows],
            self.value[rows],
            self.in_km[rows],
            self.source[rows],
        )


def running_places(
    readings: ReadingColumns, order: Order, replaced: Mapping[int, Sequence[OdometerReplaced]]
) -> Places:
    """Return where each reading stands on its vehicle's running scale, as `running_miles` does.

    `order` is theirs by vehicle and time. A vehicle whose readings only rise, and by no more than a
    car can drive, stands on one scale as it was read; the others (and those of the vehicles in
    `replaced`) are worked out one by one.
    """
    import numpy as np

    miles = readings.value.astype(np.float64)
    miles[readings.in_km] /= KM_PER_MILE
    leg = np.zeros(len(miles), dtype=np.int32)
    vehicle = readings.vehicle[order]
    odd = _odd_vehicles(readings, order, vehicle, miles, replaced)
    for start, end in _stretches(vehicle, odd):
        rows = order[start:end]
        places = running_miles(as_readings(readings, rows), replaced.get(int(vehicle[start]), ()))
        leg[rows] = [NO_LEG if place is None else place.leg for place in places]
        miles[rows] = [np.nan if place is None else place.miles for place in places]
    return Places(leg, miles)


def in_order(readings: ReadingColumns) -> Order:
    """Return the places of the readings by vehicle, and for each in the order they were taken."""
    import numpy as np

    if not len(readings.day):
        return np.zeros(0, dtype=np.int64)
    first = int(readings.day.min())
    bits = (int(readings.day.max()) - first).bit_length(), int(readings.moment.max()).bit_length()
    if sum(bits) + int(readings.vehicle.max()).bit_length() > 63:
        return np.lexsort((readings.moment, readings.day, readings.vehicle))
    keys = readings.vehicle.astype(np.int64)
    keys <<= bits[0]
    keys |= readings.day - first
    keys <<= bits[1]
    keys |= readings.moment
    return np.argsort(keys, kind="stable").astype(np.int32)


def _odd_vehicles(
    readings: ReadingColumns,
    order: Order,
    vehicle: Whole,
    miles: NDArray[np.float64],
    replaced: Mapping[int, Sequence[OdometerReplaced]],
) -> Marks:
    """Mark the vehicles of which the readings need the rules for one vehicle."""
    import numpy as np

    odd = np.zeros(int(vehicle[-1]) + 1 if len(vehicle) else 0, dtype=bool)
    for start in range(0, len(order), _AT_ONCE):
        rows = order[start : start + _AT_ONCE + 1]
        driven = np.diff(miles[rows])
        days = np.maximum(np.diff(readings.day[rows]), 1)
        wrong = (driven < 0) | (driven > MOST_MILES_A_DAY * days)
        of = vehicle[start : start + len(rows)]
        wrong &= of[1:] == of[:-1]
        odd[of[1:][wrong]] = True
    odd[readings.vehicle[(readings.value < 0) | (readings.source != READ)]] = True
    odd[[one for one in replaced if one < len(odd)]] = True
    return odd


def _stretches(vehicle: Whole, odd: Marks) -> list[tuple[int, int]]:
    """Return where the readings of each odd vehicle begin and end in the order of vehicles."""
    import numpy as np

    wanted = np.flatnonzero(odd)
    begin = np.searchsorted(vehicle, wanted, "left").tolist()
    end = np.searchsorted(vehicle, wanted, "right").tolist()
    return [(one, other) for one, other in zip(begin, end, strict=True) if other > one]


def as_readings(readings: ReadingColumns, rows: Order) -> list[OdometerReading]:
    """Return some of the readings as the rules for one vehicle take them."""
    return [
        OdometerReading(
            date.fromordinal(day), value, "km" if in_km else "mi", READING_SOURCES[source]
        )
        for day, value, in_km, source in zip(
            readings.day[rows].tolist(),
            readings.value[rows].tolist(),
            readings.in_km[rows].tolist(),
            readings.source[rows].tolist(),
            strict=True,
        )
    ]
