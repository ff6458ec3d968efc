"""Reading what customers said when they were asked."""

from __future__ import annotations

from collections.abc import Collection
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import damaged, kept_day, row_place


def read_answers(
    connection: Connection, job_ids: Collection[int] | None
) -> dict[int, tuple[CustomerSaid, ...]]:
    """Read by job what its customer said, oldest first; all jobs for None."""
    found: dict[int, list[CustomerSaid]] = {}
    wanted = select(CustomerAsked)
    for row in each_row(connection, wanted, CustomerAsked.job_id, job_ids):
        found.setdefault(row.job_id, []).append(_said(row))
    return {job: tuple(sorted(said, key=lambda s: (s.on, s.id))) for job, said in found.items()}


def answers_of_job(connection: Connection, job_id: int) -> tuple[CustomerSaid, ...]:
    """Read what the customer of one job said, oldest first."""
    return read_answers(connection, [job_id]).get(job_id, ())


def _said(row: Any) -> CustomerSaid:
    try:
        answer = Answer(row.answer)
    except ValueError as error:
        raise damaged(row.answer, "a customer's answer") from error
    on = kept_day(row.asked_on, row_place("customer_asked", row.id))
    return CustomerSaid(row.id, row.job_id, on, answer, row.odometer_told, row.words, row.asked_by)
