"""Reading which customers told of the same trouble."""

from __future__ import annotations

from datetime import date

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.customer_answers import Answer, same_trouble_since
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_vehicles import each_row, vehicle_words
from desktop_app.returns_watched.told_the_same import ToldSame


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
