"""What the odometers say, read from the record: of one vehicle, and of the shop's vehicles."""

from __future__ import annotations

from collections.abc import Collection

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
        )
        .where(Visit.vehicle_id == vehicle_id)
        .order_by(Visit.id)
    )
    for visit, came, value_in, source, left, value_out in rows:
        if value_in is not None:
            how = reading_source(source, row_place("visit", visit))
            stood = None if left is None else kept_day(left, row_place("visit", visit))
            readings.append((visit, OdometerReading(kept_day(came), value_in, unit, how, stood)))
        if value_out is not None and left:
            readings.append((visit, OdometerReading(kept_day(left), value_out, unit)))
    replaced = tuple(_replaced(connection, [vehicle_id]).get(vehicle_id, ()))
    return VehicleOdometers(unit, tuple(sorted(readings, key=lambda one: one[1].on)), replaced)


def read_shop_use(connection: Connection) -> ShopUse:
    """Return how this shop's vehicles are used; what is usual where it has too few to say."""
    newest = select(Visit.vehicle_id).order_by(Visit.id.desc()).limit(NEWEST_VISITS).subquery()
    rows = connection.execute(
        select(
            *(Visit.vehicle_id, Visit.came_at, Visit.left_at),
            *(Visit.odometer_in, Vehicle.odometer_unit),
        )
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Visit.vehicle_id.in_(select(newest.c.vehicle_id)), Visit.odometer_in.is_not(None))
        .where(Visit.odometer_source.is_(None))
        .order_by(Visit.vehicle_id, Visit.id.desc())
    )
    readings: dict[int, list[OdometerReading]] = {}
    for vehicle, came, left, value, kept_unit in rows:
        own = readings.setdefault(vehicle, [])
        if len(own) < 20:  # a vehicle that stands for many, like a dealer's plate, must not rule
            unit: DistanceUnit = "km" if kept_unit == "km" else "mi"
            stood = None if left is None else kept_day(left)
            own.append(OdometerReading(kept_day(came), value, unit, stood_until=stood))
    own_of = {vehicle: own for vehicle, own in readings.items() if len(own) > 1}
    replaced = _replaced(connection, own_of)
    return shop_use([stretches_of(own, replaced.get(one, ())) for one, own in own_of.items()])


def _replaced(
    connection: Connection, vehicles: Collection[int]
) -> dict[int, list[OdometerReplaced]]:
    """Read by vehicle when its odometers were replaced."""
    columns = (VehicleEvent.happened_on, VehicleEvent.reading_before, VehicleEvent.reading_after)
    rows = connection.execute(
        select(VehicleEvent.id, VehicleEvent.vehicle_id, *columns, Vehicle.odometer_unit)
        .join(Vehicle, Vehicle.id == VehicleEvent.vehicle_id)
        .where(VehicleEvent.kind == "odometer replaced", VehicleEvent.vehicle_id.in_(vehicles))
        .order_by(VehicleEvent.id)
    )
    found: dict[int, list[OdometerReplaced]] = {}
    for event, vehicle, on, before, after, unit in rows:
        day = kept_day(on, row_place("vehicle_event", event))
        one = OdometerReplaced(day, before, after, "km" if unit == "km" else "mi")
        found.setdefault(vehicle, []).append(one)
    return found


def read_unit(connection: Connection, vehicle_id: int) -> DistanceUnit:
    """Return the unit that a vehicle's odometer counts in."""
    kept = connection.execute(
        select(Vehicle.odometer_unit).where(Vehicle.id == vehicle_id)
    ).scalar_one()
    return "km" if kept == "km" else "mi"
