"""What the record knows of a car that comes again."""

from __future__ import annotations

from sqlalchemy import Connection, Select, func, select

from desktop_app.repair_jobs.known_car import KnownCar, StillHere
from desktop_app.repair_jobs.stored import Customer, Job, Vehicle, VehicleEvent, Visit
from desktop_app.repair_jobs.stored_reading import read_vehicle
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.shop_record.kept_value import kept_day


def find_vehicle(connection: Connection, plate: str = "", vin: str = "") -> int | None:
    """Return the vehicle that a plate or VIN means, the one seen last where several share a plate.

    A VIN decides alone; a plate only finds a vehicle whose VIN doesn't contradict the one given.
    """
    seen = matching_vin(vin)
    if seen:
        found = connection.execute(_seen_last().where(Vehicle.vin == seen)).first()
        if found is not None:
            return int(found[0])
    key = matching_plate(plate)
    if not key:
        return None
    whole = VehicleNames(vin).known_vin
    for row in connection.execute(_seen_last().where(Vehicle.plate_key == key)):
        kept = VehicleNames(row.vin or "").known_vin
        if not (whole and kept):
            return int(row.id)
    return None


def _seen_last() -> Select[int, str | None]:
    """Ask for cars, who came last first; one that never came has a day before all others."""
    last = select(func.coalesce(func.max(Visit.came_at), "")).where(Visit.vehicle_id == Vehicle.id)
    newest = last.scalar_subquery().desc()
    return select(Vehicle.id, Vehicle.vin).order_by(newest, Vehicle.id.desc())


def read_known_car(connection: Connection, vehicle_id: int) -> KnownCar:
    """Return what is known of a car: its row, who brought it last, and if it was sold since."""
    visit = connection.execute(
        select(Visit.came_at, Customer.name, Customer.phone)
        .outerjoin(Customer, Customer.id == Visit.customer_id)
        .where(Visit.vehicle_id == vehicle_id)
        .order_by(Visit.came_at.desc(), Visit.id.desc())
    ).first()
    last_on = None if visit is None else kept_day(visit.came_at)
    sold = connection.execute(
        select(func.max(VehicleEvent.happened_on)).where(
            VehicleEvent.vehicle_id == vehicle_id, VehicleEvent.kind == "sold"
        )
    ).scalar()
    sold_on = None if sold is None else kept_day(sold)
    if sold_on is not None and last_on is not None and sold_on < last_on:
        sold_on = None  # it came again since, and was taken for the same car
    return KnownCar(
        vehicle=read_vehicle(connection, vehicle_id),
        last_on=last_on,
        sold_on=sold_on,
        still_here=None if sold_on is not None else still_here(connection, vehicle_id),
        customer="" if visit is None else visit.name or "",
        phone="" if visit is None else visit.phone or "",
    )


def still_here(connection: Connection, vehicle_id: int) -> StillHere | None:
    """Return the newest visit of a vehicle that has jobs which were not handed over; or None."""
    rows = connection.execute(
        select(Visit.id, Visit.came_at, Job.number)
        .join(Job, Job.visit_id == Visit.id)
        .where(Visit.vehicle_id == vehicle_id, Job.left_at.is_(None))
        .order_by(Visit.came_at.desc(), Visit.id.desc(), Job.id)
    ).all()
    if not rows:
        return None
    visit, came, _ = rows[0]
    return StillHere(visit, kept_day(came), tuple(n for v, _, n in rows if v == visit))


def jobs_beside(connection: Connection, vehicle_id: int, visit_id: int) -> tuple[str, ...]:
    """Return the numbers of a vehicle's jobs of other visits, oldest first."""
    rows = connection.execute(
        select(Job.number)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Visit.vehicle_id == vehicle_id, Visit.id != visit_id)
        .order_by(Visit.came_at, Job.id)
    )
    return tuple(rows.scalars())
