"""Reading what customers said when they were asked."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.odometer import OdometerReading
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, HeardBy
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_links import (
    kept_cause,
    kept_danger,
    kept_judged_at,
    kept_judgement,
)
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import kept_day, kept_whole, kept_word, row_place

_HEARD = tr("“told” or “paper”")
_ANSWER, _READING = tr("a customer's answer"), tr("an odometer reading")


def read_answers(
    connection: Connection, job_ids: Collection[int] | None
) -> dict[int, tuple[CustomerSaid, ...]]:
    """Read by job what its customer said, oldest first; all jobs for None."""
    found: dict[int, list[CustomerSaid]] = {}
    wanted = select(CustomerAsked, Job.number).join(Job, Job.id == CustomerAsked.job_id)
    asked = None if job_ids is None else _asked_among(connection, job_ids)
    for row in each_row(connection, wanted, CustomerAsked.job_id, asked):
        found.setdefault(row.job_id, []).append(_said(row))
    return {job: tuple(sorted(said, key=lambda s: (s.on, s.id))) for job, said in found.items()}


def answers_of_job(connection: Connection, job_id: int) -> tuple[CustomerSaid, ...]:
    """Read what the customer of one job said, oldest first."""
    return read_answers(connection, [job_id]).get(job_id, ())


def source_of(connection: Connection, asked: int) -> str:
    """Return how the shop knows what an answer says; what nobody said was told."""
    wanted = select(CustomerAsked.source).where(CustomerAsked.id == asked)
    return connection.execute(wanted).scalar() or HeardBy.TOLD.value


def told_odometers(
    connection: Connection, job_ids: Collection[int], until: date
) -> dict[int, OdometerReading]:
    """Read by job what its customer said of the odometer by telephone, the last time."""
    wanted = (
        select(
            *(CustomerAsked.id, CustomerAsked.job_id, CustomerAsked.asked_on),
            *(CustomerAsked.odometer_told, Vehicle.odometer_unit, Job.number),
        )
        .join(Job, Job.id == CustomerAsked.job_id)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(
            CustomerAsked.odometer_told.is_not(None), CustomerAsked.asked_on <= until.isoformat()
        )
        .order_by(CustomerAsked.asked_on, CustomerAsked.id)
    )
    found: dict[int, OdometerReading] = {}
    for row in each_row(
        connection, wanted, CustomerAsked.job_id, _asked_among(connection, job_ids)
    ):
        place = row_place("customer_asked", row.id, row.number)
        on = kept_day(row.asked_on, place)
        most = MOST_ON_AN_ODOMETER
        value = kept_whole(row.odometer_told, 0, most, _READING, place)
        unit: DistanceUnit = "km" if row.odometer_unit == "km" else "mi"
        found[row.job_id] = OdometerReading(on, value, unit, "told")
    return found


def _asked_among(connection: Connection, job_ids: Collection[int]) -> set[int]:
    """Return those of some jobs whose customer was asked at all: mostly few, of many thousands.

    The index alone is gone through, between the first and the last of the jobs.
    """
    if not job_ids:
        return set()
    between = CustomerAsked.job_id.between(min(job_ids), max(job_ids))
    asked = connection.execute(select(CustomerAsked.job_id).distinct().where(between)).scalars()
    return set(asked).intersection(job_ids)


def _said(row: Any) -> CustomerSaid:
    place = row_place("customer_asked", row.id, row.number)
    answer = kept_word(row.answer, tuple(Answer), _ANSWER, place)
    on = kept_day(row.asked_on, place)
    return CustomerSaid(
        row.id,
        row.job_id,
        on,
        answer,
        row.odometer_told,
        row.words,
        row.asked_by,
        source=kept_word(row.source or HeardBy.TOLD.value, tuple(HeardBy), _HEARD, place),
        judgement=None if row.judgement is None else kept_judgement(row.judgement, place),
        judged_by=row.judged_by or "",
        judged_at=kept_judged_at(row.judged_at, place),
        why=row.why or "",
        cause_class=kept_cause(row.cause_class, place),
        dangerous=kept_danger(row.dangerous, place),
    )
