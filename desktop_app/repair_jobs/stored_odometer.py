"""How the shop's vehicles are used, read from the odometers of the newest visits."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReading
from desktop_app.repair_jobs.odometer_questions import Proposal, odometer_proposals
from desktop_app.repair_jobs.rate_of_use import (
    RateOfUse,
    ShopUse,
    rate_of_use,
    shop_use,
    stretches_of,
)
from desktop_app.repair_jobs.stored import Vehicle, Visit
from desktop_app.repair_jobs.stored_reading import odometer_readings
from desktop_app.shop_record.kept_value import kept_day

# So many of the newest visits say which vehicles are looked at: enough for a steady figure, and
# the same work in a record of a hundred jobs and of a million.
NEWEST_VISITS = 150


@dataclass(frozen=True, slots=True)
class OdometerSaid:
    """What a visit's odometer is worth: the rate of use, and readings that may be meant."""

    rate: RateOfUse
    unit: DistanceUnit
    proposals: tuple[Proposal, ...]


def read_shop_use(connection: Connection) -> ShopUse:
    """Return how this shop's vehicles are used; what is usual where it has too few to say."""
    newest = select(Visit.vehicle_id).order_by(Visit.id.desc()).limit(NEWEST_VISITS).subquery()
    rows = connection.execute(
        select(Visit.vehicle_id, Visit.came_at, Visit.odometer_in, Vehicle.odometer_unit)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Visit.vehicle_id.in_(select(newest.c.vehicle_id)), Visit.odometer_in.is_not(None))
        .where(Visit.odometer_source.is_(None))
        .order_by(Visit.vehicle_id, Visit.id.desc())
    )
    readings: dict[int, list[OdometerReading]] = {}
    for vehicle, came, value, unit in rows:
        own = readings.setdefault(vehicle, [])
        if len(own) < 20:  # a vehicle that stands for many, like a dealer's plate, must not rule
            own.append(OdometerReading(kept_day(came), value, "km" if unit == "km" else "mi"))
    return shop_use([stretches_of(own) for own in readings.values() if len(own) > 1])


def read_odometer_said(
    connection: Connection, vehicle_id: int, on: str, value: int | None, but_visit: int | None
) -> OdometerSaid:
    """Return a vehicle's rate of use, and what may be meant by a reading of a day.

    `value` is the reading in the vehicle's own unit; the readings of `but_visit` are left out of
    what it is held against.
    """
    shop = read_shop_use(connection)
    every, replaced = odometer_readings(connection, vehicle_id)
    others, _ = odometer_readings(connection, vehicle_id, but_visit=but_visit)
    unit = read_unit(connection, vehicle_id)
    reading = OdometerReading(kept_day(on), value, unit)
    earlier = [r for r in others if r.on <= reading.on]
    return OdometerSaid(
        rate=rate_of_use(stretches_of(every, replaced), shop),
        unit=unit,
        proposals=odometer_proposals(reading, earlier, replaced, shop),
    )


def read_unit(connection: Connection, vehicle_id: int) -> DistanceUnit:
    """Return the unit that a vehicle's odometer counts in."""
    kept = connection.execute(
        select(Vehicle.odometer_unit).where(Vehicle.id == vehicle_id)
    ).scalar_one()
    return "km" if kept == "km" else "mi"
