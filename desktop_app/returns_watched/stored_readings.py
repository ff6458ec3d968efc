"""What a vehicle's odometer said at each visit and hand-over, put on its running scale."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from sqlalchemy import Connection, Row, select

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.odometer import (
    OdometerReading,
    OdometerReplaced,
    ReadingSource,
    RunningMiles,
    reading_source,
    running_miles,
)
from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.stored_vehicles import VehicleKept, each_row
from desktop_app.shop_record.kept_value import kept_day, kept_whole, row_place

# Of several readings at one moment the one at the door is the first.
_READING = tr("an odometer reading")
_CAME, _JOB_LEFT, _VISIT_LEFT = range(3)
_Source = tuple[int, int]
_REPLACED = select(
    VehicleEvent.vehicle_id,
    VehicleEvent.happened_on,
    VehicleEvent.reading_before,
    VehicleEvent.reading_after,
).where(VehicleEvent.kind == "odometer replaced")


@dataclass(frozen=True, slots=True)
class Placed:
    """A day on which an odometer was read, and where that is on the vehicle's running scale."""

    reading: OdometerReading
    place: RunningMiles | None


@dataclass(frozen=True, slots=True)
class Odometers:
    """All readings by vehicle key, in the order they were taken, and each one by its source."""

    readings: Mapping[str, tuple[Placed, ...]]
    replaced: Mapping[str, Sequence[OdometerReplaced]]
    places: Mapping[_Source, RunningMiles | None] = field(repr=False)

    def on_coming(self, visit: Row[Any]) -> RunningMiles | None:
        """Return where the vehicle stood when it came."""
        return self.places.get((_CAME, visit.id))

    def on_leaving(self, job: Row[Any], visit: Row[Any]) -> RunningMiles | None:
        """Return where the vehicle stood when the job was handed over.

        Where nobody read it then, the reading of the same visit's beginning stands for it; a
        reading that is odd is never replaced by another one.
        """
        if job.odometer_out is not None:
            return self.places.get((_JOB_LEFT, job.id))
        if visit.odometer_out is not None:
            return self.places.get((_VISIT_LEFT, visit.id))
        return self.places.get((_CAME, visit.id))


def read_replaced(
    connection: Connection, vehicles: Mapping[int, VehicleKept], until: date | None
) -> dict[str, list[OdometerReplaced]]:
    """Read by vehicle key when odometers were replaced, up to a day."""
    found: dict[str, list[OdometerReplaced]] = {}
    for row in each_row(connection, _REPLACED, VehicleEvent.vehicle_id, vehicles):
        on = kept_day(row.happened_on)
        if until is None or on <= until:
            vehicle = vehicles[row.vehicle_id]
            event = OdometerReplaced(on, row.reading_before, row.reading_after, vehicle.unit)
            found.setdefault(vehicle.key, []).append(event)
    return found


def on_running_scale(
    visits: Mapping[int, Row[Any]],
    jobs: Sequence[Row[Any]],
    vehicles: Mapping[int, VehicleKept],
    replaced: Mapping[str, Sequence[OdometerReplaced]],
    until: date | None,
) -> Odometers:
    """Put every reading up to a day on its vehicle's running scale."""
    taken: dict[str, list[tuple[str, _Source, OdometerReading]]] = {}
    ended = _ended(visits, jobs, until)

    def take(
        source: _Source,
        visit: int,
        at: str | None,
        value: int | None,
        how: ReadingSource = "read",
    ) -> None:
        if at is None or value is None or (until is not None and kept_day(at) > until):
            return
        place = row_place("job" if source[0] == _JOB_LEFT else "visit", source[1])
        kept_whole(value, 0, MOST_ON_AN_ODOMETER, _READING, place)
        vehicle = vehicles[visits[visit].vehicle_id]
        reading = OdometerReading(kept_day(at, place), value, vehicle.unit, how, ended.get(visit))
        taken.setdefault(vehicle.key, []).append((at, source, reading))

    for visit in visits.values():
        how = reading_source(visit.odometer_source, row_place("visit", visit.id))
        take((_CAME, visit.id), visit.id, visit.came_at, visit.odometer_in, how)
        take((_VISIT_LEFT, visit.id), visit.id, visit.left_at, visit.odometer_out)
    for job in jobs:
        take((_JOB_LEFT, job.id), job.visit_id, job.left_at, job.odometer_out)
    readings: dict[str, tuple[Placed, ...]] = {}
    places: dict[_Source, RunningMiles | None] = {}
    for key, some in taken.items():
        some.sort(key=lambda one: one[:2])
        found = running_miles([one[2] for one in some], replaced.get(key, ()))
        readings[key] = tuple(map(Placed, (one[2] for one in some), found))
        places.update(zip((one[1] for one in some), found, strict=True))
    return Odometers(readings, replaced, places)


def _ended(
    visits: Mapping[int, Row[Any]], jobs: Sequence[Row[Any]], until: date | None
) -> dict[int, date]:
    """Return by visit the day of its last hand-over, as far as that had come."""
    found: dict[int, date] = {}
    left = [(visit.id, visit.left_at, "visit", visit.id) for visit in visits.values()]
    left += [(job.visit_id, job.left_at, "job", job.id) for job in jobs]
    for visit, at, table, row in left:
        if at is not None:
            day = kept_day(at, row_place(table, row))
            if until is None or day <= until:
                found[visit] = max(found.get(visit, day), day)
    return found
