"""How much the vehicles on watch are driven, from the odometers that were read for them."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.repair_jobs.odometer import miles_per_day
from desktop_app.repair_jobs.rate_of_use import RateOfUse, rate_of_use, shop_use, stretches_of
from desktop_app.returns_watched.stored_readings import Odometers
from desktop_app.returns_watched.watching import Driven
from desktop_app.returns_watched.window import Window

# Readings of one vehicle; one that stands for many, like a dealer's plate, must not rule.
NEWEST = 20


def use_of_vehicles(odometers: Odometers) -> Callable[[str, Window | None], Driven]:
    """Return what says how a vehicle is driven, by its key, as far as a window needs to know it.

    All vehicles at hand say what is typical here, so that a list made for a past day stays as it
    was: nothing read later goes into it.
    """
    readings = {key: [p.reading for p in some] for key, some in odometers.readings.items()}
    replaced = odometers.replaced
    stretches = {
        key: stretches_of(some[-NEWEST:], replaced.get(key, ())) for key, some in readings.items()
    }
    shop = shop_use(list(stretches.values()))
    uses: dict[str, RateOfUse] = {}

    def driven(key: str, window: Window | None) -> Driven:
        if key not in uses:
            uses[key] = rate_of_use(stretches.get(key, ()), shop)
        if window is None or not window.may_stay_open:
            return Driven(None, uses[key])
        return Driven(miles_per_day(readings.get(key, ()), replaced.get(key, ())), uses[key])

    return driven
