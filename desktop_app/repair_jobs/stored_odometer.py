"""What the odometers say, read from the record: of one vehicle, and of the shop's vehicles."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced, reading_source
from desktop_app.repair_jobs.rate_of_use import ShopUse, shop_use, stretches_of
from desktop_app.repair_jobs.stored import Vehicle, VehicleEvent, Visit
from desktop_app.repair_jobs.vehicle_odometers import VehicleOdometers
from desktop_app.shop_record.kept_value import kept_day, row_place

# So many of the newest visits say which vehicles are looked at: enough for a steady figure, and
# the same work in a record of a hundred jobs and of a million.
NEWEST_VISITS = 150


def read_odometers(connection: Connection, vehicle_id: int) -> VehicleOdometers:
    """Return the vehicle's readings by day and its replaced odometers."""
    unit = read_unit(connection, vehicle_id)
    readings = []
    rows = connection.execute(
        select(
            Visit.id,
            Visit.came_at,
            Visit.odometer_in,
            Visit.odometer_source,
            Visit.left_at,
            Visit.odometer_out,
        ).where(Visit.vehicle_id == vehicle_id)
    )
    for visit, came, value_in, source, left, value_out in rows:
        if value_in is not None:
            how = reading_source(source, row_place("visit", visit))
            readings.append((visit, OdometerReading(kept_day(came), value_in, unit, how)))
        if value_out is not None and left:
            readings.append((visit, OdometerReading(kept_day(left), value_out, unit)))
    events = connection.execute(
        select(
            VehicleEvent.happened_on, VehicleEvent.reading_before, VehicleEvent.reading_after
        ).where(VehicleEvent.vehicle_id == vehicle_id, VehicleEvent.kind == "odometer replaced")
    )
    replaced = tuple(
        OdometerReplaced(kept_day(on), before, after, unit) for on, before, after in events
    )
    return VehicleOdometers(unit, tuple(sorted(readings, key=lambda one: one[1].on)), replaced)


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


def read_unit(connection: Connection, vehicle_id: int) -> DistanceUnit:
    """Return the unit that a vehicle's odometer counts in."""
    kept = connection.execute(
        select(Vehicle.odometer_unit).where(Vehicle.id == vehicle_id)
    ).scalar_one()
    return "km" if kept == "km" else "mi"
