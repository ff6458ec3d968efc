"""What a row says otherwise than a job that is known, checked before anything is written."""

from __future__ import annotations

from typing import Any

from sqlalchemy import func, select

from desktop_app.language import tr
from desktop_app.records_exchanged.import_told import RowTrouble
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.row_words import Moments, system_of
from desktop_app.records_exchanged.stored_known import JobKnown, VehicleKnown
from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.stored import Job, JobSymptom, Visit
from desktop_app.repair_jobs.vehicle_identity import VehicleNames
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.deed import Deed


def refuse_other_vehicle(row: JobRow, vehicle: VehicleKnown) -> None:
    """Raise RowTrouble where a row names another vehicle than the one its job belongs to."""
    said = VehicleNames(row.vin, row.plate)
    kept = VehicleNames(vehicle.values["vin"] or "", vehicle.values["plate"] or "")
    if said.known_vin and kept.known_vin:
        if said.known_vin != kept.known_vin:
            why = tr(
                "The job of this number is another vehicle's: its VIN is {vin}.",
                vin=kept.known_vin,
            )
            raise RowTrouble("vin", row.vin, why)
        return
    if said.known_plate and kept.known_plate and said.known_plate != kept.known_plate:
        why = tr(
            "The job of this number is another vehicle's: its plate is {plate}.", plate=kept.plate
        )
        raise RowTrouble("plate", row.plate, why)


def job_news(
    row: JobRow, job: JobKnown, technician: int | None, moments: Moments, seen: bool
) -> dict[str, Any]:
    """Return the columns of a job that a row says otherwise; an empty cell says nothing.

    `seen` is True where an earlier row of the file was about the job: two that contradict each
    other raise RowTrouble. A technician who is new here is -1.
    """
    said: dict[str, tuple[str, Any]] = {
        "concern": ("concern", row.concern),
        "cause": ("cause", row.cause),
        "correction": ("correction", row.correction),
        "system": ("system", system_of(row)),
        "hours": ("hours", row.hours),
        "price": ("price_cents", row.price_cents),
        "technician": ("technician_id", (technician or -1) if row.technician else None),
    }
    news: dict[str, Any] = {}
    for column, (name, value) in said.items():
        kept = job.values[name]
        if value in (None, "") or value == kept:
            continue
        if seen and kept not in (None, ""):
            raise _contradicts(column, getattr(row, column, value))
        news[name] = value
    if "cause" in news and job.values["cause_found"] is None:
        news["cause_found"] = 1
    left = job.values["left_at"]
    if row.closed_on is not None and (left or "")[:10] != row.closed_on.isoformat():
        if seen and left:
            raise _contradicts("closed_on", row.closed_on)
        news["left_at"] = moments.at(row.closed_on)
    return news


def visit_news(
    row: JobRow, job: JobKnown, odometer: int | None, moments: Moments, seen: bool
) -> dict[str, Any]:
    """Return the columns of a job's visit that a row says otherwise.

    Raises RowTrouble where other jobs of the same visit would be changed with it.
    """
    visit = job.visit
    left_at = None if row.closed_on is not None else job.values["left_at"]
    news: dict[str, Any] = {}
    if row.opened_on is not None and visit.values["came_at"][:10] != row.opened_on.isoformat():
        if seen:
            raise _contradicts("opened_on", row.opened_on)
        if visit.jobs > 1:
            raise _with_others("opened_on", row.opened_on)
        if left_at is not None and left_at[:10] < row.opened_on.isoformat():
            why = tr("It was closed on {day}; that is earlier.", day=left_at[:10])
            raise RowTrouble("opened_on", row.opened_on, why)
        news["came_at"] = moments.at(row.opened_on)
    kept = visit.values["odometer_in"]
    if odometer is not None and odometer != kept:
        if kept is not None and seen:
            raise _contradicts("odometer", row.odometer)
        if kept is not None and visit.jobs > 1:
            raise _with_others("odometer", row.odometer)
        news.update(odometer_in=odometer, odometer_unread=None)
    return news


def symptoms_new(deed: Deed, job_id: int, symptoms: tuple[str, ...]) -> list[str]:
    """Take out the symptom groups that a job's new concern no longer speaks of.

    Those that a person chose stay. Returns the groups that are to be added.
    """
    kept = look.symptom_rows(deed, job_id)
    for symptom, (row, chosen) in kept.items():
        if not chosen and symptom not in symptoms:
            deed.remove(JobSymptom, row)
    return [symptom for symptom in symptoms if symptom not in kept]


def visit_end(deed: Deed, visit_id: int) -> str | None:
    """Return when a visit ended: with the last of its jobs; None where one is still open."""
    left, closed, jobs = deed.connection.execute(
        select(func.max(Job.left_at), func.count(Job.left_at), func.count()).where(
            Job.visit_id == visit_id
        )
    ).one()
    return left if closed == jobs else None


def refuse_late_close(deed: Deed, row: JobRow, job: JobKnown, news: dict[str, Any]) -> None:
    """Raise RowTrouble where a job would be closed after a visit that is its return began."""
    if "left_at" not in news:
        return
    first = deed.connection.execute(
        select(func.min(Visit.came_at))
        .join(Job, Job.visit_id == Visit.id)
        .join(ReturnLink, ReturnLink.later_job_id == Job.id)
        .where(ReturnLink.earlier_job_id == job.id)
    ).scalar()
    if first is not None and news["left_at"][:10] > first[:10]:
        why = tr("A return of this job came on {day}; that is earlier.", day=first[:10])
        raise RowTrouble("closed_on", row.closed_on, why)


def refuse_early_come(deed: Deed, row: JobRow, job: JobKnown, news: dict[str, Any]) -> None:
    """Raise RowTrouble where a return would come before the earlier job had left, or on its day."""
    if "came_at" not in news:
        return
    earlier = (
        select(Job.number, Job.left_at, Visit.came_at)
        .join(Visit, Job.visit_id == Visit.id)
        .join(ReturnLink, ReturnLink.earlier_job_id == Job.id)
        .where(ReturnLink.later_job_id == job.id)
    )
    came = news["came_at"][:10]  # a row knows no more than the day
    for number, left_at, came_at in deed.connection.execute(earlier):
        if (left_at or "")[:10] > came or came_at[:10] == came:
            why = tr(
                "It is a return of {number}, and would no longer be one on that day.", number=number
            )
            raise RowTrouble("opened_on", row.opened_on, why)


def _contradicts(column: str, value: object) -> RowTrouble:
    why = tr("An earlier row of this file says something else of the same job.")
    return RowTrouble(column, value, why)


def _with_others(column: str, value: object) -> RowTrouble:
    why = tr("Other jobs came on the same visit; change it in the program, for all of them.")
    return RowTrouble(column, value, why)
