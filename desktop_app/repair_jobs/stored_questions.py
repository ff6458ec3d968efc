"""Which odd entries of a job are still to be asked about."""

from __future__ import annotations

from datetime import date

from sqlalchemy import Connection

from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import OdometerReading, ReadingSource, reading_source
from desktop_app.repair_jobs.odometer_questions import odometer_questions
from desktop_app.repair_jobs.stored_odometer import read_shop_use
from desktop_app.repair_jobs.stored_reading import odometer_readings, was_answered
from desktop_app.repair_jobs.vin import vin_question
from desktop_app.shop_record.kept_value import kept_day


def vin_still_asked(connection: Connection, job: JobView) -> str | None:
    """Return the question about the vehicle's VIN that nobody has answered, or None."""
    question = vin_question(job.vehicle.vin) if job.vehicle.vin else None
    if question and was_answered(connection, f"vehicle:{job.vehicle.id}:vin", question):
        return None
    return question


def odometer_still_asked(connection: Connection, job: JobView, today: date) -> str | None:
    """Return the question about the visit's odometer that nobody has answered, or None."""
    if job.odometer_in is None:
        return None
    question = odometer_asked(
        connection,
        job.vehicle.id,
        job.odometer_in,
        kept_day(job.came_on),
        today,
        but_visit=job.visit_id,
        source=reading_source(job.odometer_source),
    )
    if question and was_answered(connection, f"visit:{job.visit_id}:odometer", question):
        return None
    return question


def odometer_asked(
    connection: Connection,
    vehicle_id: int,
    reading: int,
    on: date,
    today: date,
    *,
    but_visit: int | None = None,
    source: ReadingSource = "read",
) -> str | None:
    """Return what is odd about a reading of a vehicle against its earlier ones, or None."""
    earlier, replaced = odometer_readings(connection, vehicle_id, but_visit=but_visit)
    unit = earlier[0].unit if earlier else "mi"
    seen = OdometerReading(on, reading, unit, source)
    before = [r for r in earlier if r.on <= on]
    asked = odometer_questions(seen, before, today, replaced)
    if asked:  # only an odd reading needs to know how the shop's cars are used
        asked = odometer_questions(seen, before, today, replaced, read_shop_use(connection))
    return asked[0] if asked else None
