"""Whether a car shares its plate with another row, which would make the two one vehicle."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.known_car import KnownCar
from desktop_app.repair_jobs.stored import Vehicle
from desktop_app.repair_jobs.stored_apart import vehicles_apart
from desktop_app.repair_jobs.stored_known_car import read_known_car
from desktop_app.repair_jobs.stored_reading import was_answered
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, matching_plate

ONE_VEHICLE = "one vehicle on two rows"  # what was answered; the question names both rows


def same_plate_asked(connection: Connection, job: JobView) -> KnownCar | None:
    """Return another car with the plate of a job's car, of which nobody said whether it is that.

    Two VINs tell by themselves whether they are one car: nothing is asked about those.
    """
    own = job.vehicle
    key = matching_plate(own.plate)
    if not key:
        return None
    wanted = select(Vehicle.id, Vehicle.vin).where(Vehicle.plate_key == key, Vehicle.id != own.id)
    apart, vin = vehicles_apart(connection), VehicleNames(own.vin).known_vin
    for other, kept in connection.execute(wanted.order_by(Vehicle.id)):
        told = bool(vin and VehicleNames(kept or "").known_vin)
        told |= (own.id, other) in apart or (other, own.id) in apart
        if not told and not was_answered(connection, ONE_VEHICLE, both_rows(own.id, other)):
            return read_known_car(connection, other)
    return None


def both_rows(one: int, other: int) -> str:
    """Return what an answer about two rows is kept under."""
    return f"{min(one, other)} {max(one, other)}"
