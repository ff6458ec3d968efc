"""The odometers of one vehicle: what was read at each of its visits, and which were replaced."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced


@dataclass(frozen=True, slots=True)
class VehicleOdometers:
    """All readings by day, each with its visit, in the unit that the vehicle counts in now."""

    unit: DistanceUnit
    of_visits: tuple[tuple[int, OdometerReading], ...]
    replaced: tuple[OdometerReplaced, ...]

    def readings(self, but_visit: int | None = None) -> tuple[OdometerReading, ...]:
        """Return the readings by day, without those of one visit."""
        return tuple(reading for visit, reading in self.of_visits if visit != but_visit)

    def beside(self, visit_id: int, on: date) -> tuple[OdometerReading, ...]:
        """Return the readings of other visits that one of this visit on a day is held against.

        A car may come again on that very day: what was written down later was read later.
        """
        return tuple(
            reading
            for visit, reading in self.of_visits
            if visit != visit_id and not (reading.on == on and visit > visit_id)
        )
