"""How much many vehicles are driven, from their readings in columns."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from desktop_app.repair_jobs.odometer import OdometerReplaced, miles_per_day
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
) -> ManyUses:
    """Return the use of some vehicles, by their numbers; what is typical is taken from them.

    They are the stretches that `stretches_of` gives of each one's newest readings, and the miles a
    day that `miles_per_day` gives of all.
    """
    import numpy as np

    stretches: dict[int, Sequence[Stretch]] = {}
    rates: dict[int, float | None] = {}
    wanted = np.array(sorted(vehicles), dtype=np.int32)
    begin, end = (places.tolist() for places in taken.of(wanted))
    odd = taken.places.leg != 0
    day, miles = taken.readings.day.tolist(), taken.places.miles.tolist()
    for vehicle, start, stop in zip(wanted.tolist(), begin, end, strict=True):
        changes = replaced.get(vehicle, ())
        if changes or odd[start:stop].any():
            own = as_readings(taken.readings, np.arange(start, stop))
            stretches[vehicle] = stretches_of(own[-NEWEST:], changes)
            rates[vehicle] = miles_per_day(own, changes)
            continue
        new = slice(max(start, stop - NEWEST), stop)
        stretches[vehicle] = tuple(_stretches(day[new], miles[new]))
        days = day[stop - 1] - day[start] if stop > start else 0
        far = days >= SHORTEST_DAYS
        rates[vehicle] = (miles[stop - 1] - miles[start]) / days if far else None
    return ManyUses(stretches, rates, shop_use(list(stretches.values())))


def _stretches(days: Sequence[int], miles: Sequence[float]) -> Iterator[Stretch]:
    """Yield the stretches of a vehicle whose readings are all trusted, on one running scale."""
    if not days:
        return
    last_day, last_miles = days[0], miles[0]
    for day, at in zip(days, miles, strict=True):
        if day - last_day >= SHORTEST_DAYS:
            yield Stretch(day - last_day, at - last_miles)
            last_day, last_miles = day, at
