"""How far a car went since a job left, by its readings and by what its odometer says now."""

from __future__ import annotations

from sqlalchemy import Connection

from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import OdometerReading, miles_between, running_miles
from desktop_app.returns_watched.promise_now import DrivenSince
from desktop_app.returns_watched.standing import furthest
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.watching import sightings_since


def read_driven_since(
    connection: Connection, job: JobView, now: OdometerReading | None
) -> DrivenSince:
    """Return how far the car went since the job left; `now` is a reading not written down yet.

    It is trusted as it will be once it is written down.
    """
    facts = read_facts(connection, [job.vehicle.id])
    left = next((one for one in facts.jobs if one.number == job.number), None)
    if left is None or left.handed_over_on is None:
        return DrivenSince()
    out, placed = left.handed_over_on, facts.odometers.readings.get(left.vehicle, ())
    if now is not None:
        readings = (*(one.reading for one in placed), now)
        place = running_miles(readings, facts.odometers.replaced.get(left.vehicle, ()))[-1]
        miles = miles_between(left.odometer_out, place, (now.on - out).days)
        if miles is not None:
            return DrivenSince(miles, until_now=True)
    since = sightings_since(left, out, [(one.reading.on, one.place) for one in placed])
    last = furthest(list(since))
    return DrivenSince(None if last is None else last.miles)
