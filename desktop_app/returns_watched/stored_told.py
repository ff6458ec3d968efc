"""Reading which customers told of the same trouble."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.customer_answers import Answer, same_trouble_since
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_vehicles import each_row, rows_of_one, vehicle_words
from desktop_app.returns_watched.told_the_same import ToldSame
from desktop_app.shop_record.kept_value import kept_day, row_place


def read_told(
    connection: Connection, since: date, until: date | None = None
) -> tuple[ToldSame, ...]:
    """Read the jobs whose customer tells of the same trouble, first on a day in a period.

    What was said after `until` is left out.
    """
    asked = select(CustomerAsked.job_id).where(
        CustomerAsked.answer == Answer.SAME_TROUBLE.value,
        CustomerAsked.asked_on >= since.isoformat(),
    )
    ids = set(connection.execute(asked).scalars())
    if not ids:
        return ()
    answers = read_answers(connection, ids)
    wanted = (
        select(
            *(Job.id, Job.number, Visit.vehicle_id),
            *(Vehicle.vin, Vehicle.plate, Vehicle.tag, Vehicle.description),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    )
    found = []
    for row in each_row(connection, wanted, Job.id, ids):
        said = [one for one in answers[row.id] if until is None or one.on <= until]
        told = same_trouble_since(said)
        if told is not None:
            words = next((one.words for one in reversed(said) if one.words), "")
            vehicle = vehicle_words(row, row.vehicle_id)
            found.append(ToldSame(row.id, row.number, vehicle, told, words))
    return tuple(found)


def with_last_seen(
    connection: Connection, told: Iterable[ToldSame], today: date
) -> tuple[ToldSame, ...]:
    """Say of each when its car came the last time since it was told; None where it did not."""
    return tuple(
        replace(one, seen_on=_last_seen(connection, one.job_id, one.since, today)) for one in told
    )


def _last_seen(connection: Connection, job_id: int, since: date, today: date) -> date | None:
    own = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id).where(Job.id == job_id)
    rows = rows_of_one(connection, [connection.execute(own).scalar_one()])
    came = select(func.max(Visit.came_at)).where(
        Visit.vehicle_id.in_(rows),
        Visit.came_at >= since.isoformat(),
        Visit.came_at < (today + timedelta(days=1)).isoformat(),
    )
    last = connection.execute(came).scalar()
    return None if last is None else kept_day(last, row_place("visit of job", job_id))
