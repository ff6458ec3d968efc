"""How much many vehicles are driven, from their readings in columns."""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced, miles_per_day
from desktop_app.repair_jobs.rate_of_use import (
    SHORTEST_DAYS,
    RateOfUse,
    ShopUse,
    Stretch,
    rate_of_use,
    shop_use,
    stretches_of,
)
from desktop_app.returns_watched.many_visits.last_known import Taken
from desktop_app.returns_watched.many_visits.running_places import as_readings
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY

# Readings of one vehicle; one that stands for many, like a dealer's plate, must not rule.
NEWEST = 20


@dataclass(frozen=True, slots=True)
class ManyUses:
    """What the readings of vehicles say of their use, and what is typical of all of them here."""

    stretches: Mapping[int, Sequence[Stretch]]
    rates: Mapping[int, float | None]
    shop: ShopUse

    def use(self, vehicle: int) -> RateOfUse:
        """Return how much a vehicle is driven, drawn towards the shop's other cars."""
        return rate_of_use(self.stretches.get(vehicle, ()), self.shop)


def many_uses(
    taken: Taken,
    vehicles: Iterable[int],
    replaced: Mapping[int, Sequence[OdometerReplaced]],
    told: Mapping[int, OdometerReading],
    own_rates: Container[int],
) -> ManyUses:
    """Return the use of some vehicles, by their numbers; what is typical is taken from them.

    They are the stretches that `stretches_of` gives of each one's newest readings, and the miles a
    day that `miles_per_day` gives of all, of the vehicles in `own_rates` alone. `told` is what a
    vehicle's customer said of its odometer by telephone, the last time.
    """
    import numpy as np

    stretches: dict[int, Sequence[Stretch]] = {}
    rates: dict[int, float | None] = {}
    wanted = np.array(sorted(vehicles), dtype=np.int32)
    begin, end = (places.tolist() for places in taken.of(wanted))
    odd = np.append(0, np.cumsum(taken.places.leg != 0)).tolist()
    day, miles = taken.readings.day.tolist(), taken.places.miles.tolist()
    stood = np.maximum(taken.stood_until, taken.readings.day).tolist()
    for vehicle, start, stop in zip(wanted.tolist(), begin, end, strict=True):
        changes = replaced.get(vehicle, ())
        if changes or vehicle in told or odd[stop] > odd[start]:
            own = _readings(taken, start, stop)
            stretches[vehicle] = stretches_of(with_told(own[-NEWEST:], told.get(vehicle)), changes)
            if vehicle in own_rates:
                rates[vehicle] = miles_per_day(own, changes)
            continue
        new = slice(max(start, stop - NEWEST), stop)
        stretches[vehicle] = tuple(_stretches(day[new], miles[new], stood[new]))
        if vehicle not in own_rates:
            continue
        every = slice(start, stop)
        used = list(_used(day[every], miles[every], stood[every]))
        days = sum(gone for gone, _ in used)
        rates[vehicle] = sum(far for _, far in used) / days if days >= SHORTEST_DAYS else None
    return ManyUses(stretches, rates, shop_use(list(stretches.values())))


def with_told(
    readings: Sequence[OdometerReading], told: OdometerReading | None
) -> Sequence[OdometerReading]:
    """Put what was told behind the readings, where it was told after the last of them."""
    if told is None or (readings and readings[-1].on >= told.on):
        return readings
    return (*readings, told)


def _readings(taken: Taken, start: int, stop: int) -> list[OdometerReading]:
    import numpy as np

    found = as_readings(taken.readings, np.arange(start, stop))
    return [
        reading if ended == NO_DAY else replace(reading, stood_until=date.fromordinal(ended))
        for reading, ended in zip(found, taken.stood_until[start:stop].tolist(), strict=True)
    ]


def _used(
    days: Sequence[int], miles: Sequence[float], stood: Sequence[int]
) -> Iterator[tuple[int, float]]:
    """Yield the days and miles of use between readings, as `days_of_use` says it."""
    for on, after, start, end in zip(days[1:], stood, miles, miles[1:], strict=False):
        if on > after:
            yield on - after, end - start


def _stretches(
    days: Sequence[int], miles: Sequence[float], stood: Sequence[int]
) -> Iterator[Stretch]:
    """Yield the stretches of a vehicle whose readings are all trusted, on one running scale."""
    gone, far = 0, 0.0
    for more, driven in _used(days, miles, stood):
        gone, far = gone + more, far + driven
        if gone >= SHORTEST_DAYS:
            yield Stretch(gone, far)
            gone, far = 0, 0.0
