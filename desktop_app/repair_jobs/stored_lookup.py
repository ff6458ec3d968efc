"""The few look-ups that a deed needs inside its own transaction."""

from __future__ import annotations

import re
from typing import NamedTuple

from sqlalchemy import func, select

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.hand_over import LEFT, WRITE_UP_ANEW
from desktop_app.repair_jobs.stored import (
    Answered,
    ConditionMet,
    Customer,
    Job,
    JobCheck,
    JobCondition,
    JobPerson,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.trouble import ShopTrouble

_FIRST_NUMBER = 101
_OURS = re.compile(r"J-(\d{1,9})")


def gone(what: str) -> ShopTrouble:
    """Return the trouble of a row that a page still shows, and that another desk took out."""
    return ShopTrouble(
        what,
        kept=tr("Nothing was changed."),
        do=tr("It was taken out or undone; look at the page again."),
    )


def next_number(deed: Deed) -> str:
    """Return the next job number: one above that of the newest job that is numbered like this.

    It is told by the numbers: ids have gaps where a deed was refused. Where they came from
    elsewhere in another order, it is one above the highest.
    """
    ours = select(Job.number).where(Job.number.like("J-%")).limit(1)
    newest = ours.order_by(Job.id.desc())
    highest = ours.order_by(func.length(Job.number).desc(), Job.number.desc())
    for last in (newest, highest):
        number = _number_after(deed.connection.execute(last).scalar())
        if not _is_taken(deed, number):
            return f"J-{number}"
    while _is_taken(deed, number):
        number += 1
    return f"J-{number}"


def _number_after(last: str | None) -> int:
    ours = _OURS.fullmatch(last or "")
    return _FIRST_NUMBER if ours is None else int(ours[1]) + 1


def _is_taken(deed: Deed, number: int) -> bool:
    wanted = select(Job.id).where(Job.number == f"J-{number}")
    return deed.connection.execute(wanted).first() is not None


def customer_id(deed: Deed, name: str, phone: str) -> int | None:
    """Return the customer with this name and phone, added where new; None without a name."""
    name, phone = name.strip(), phone.strip()
    if not name and not phone:
        return None
    found = deed.connection.execute(
        select(Customer.id).where(Customer.name == name, Customer.phone == phone)
    ).scalar()
    return found if found is not None else deed.add(Customer, name=name, phone=phone)


def person_id(deed: Deed, name: str) -> int | None:
    """Return the id of the person with this name."""
    return deed.connection.execute(select(Person.id).where(Person.name == name)).scalar()


def symptom_rows(deed: Deed, job_id: int) -> dict[str, tuple[int, bool]]:
    """Return each symptom group of a job with its row's id and whether a person chose it."""
    rows = deed.connection.execute(
        select(JobSymptom.symptom, JobSymptom.id, JobSymptom.chosen)
        .where(JobSymptom.job_id == job_id)
        .order_by(JobSymptom.symptom)
    )
    return {symptom: (row, bool(chosen)) for symptom, row, chosen in rows}


def condition_row(
    deed: Deed, kept: type[JobCondition] | type[ConditionMet], job_id: int, condition: str
) -> int | None:
    """Return the row in which it is answered when it happens, or whether that was met."""
    return deed.connection.execute(
        select(kept.id).where(kept.job_id == job_id, kept.condition == condition)
    ).scalar()


def check_row(deed: Deed, job_id: int, kind: str, words: str) -> int | None:
    """Return the row of a check of a list by its words."""
    return deed.connection.execute(
        select(JobCheck.id).where(
            JobCheck.job_id == job_id, JobCheck.kind == kind, JobCheck.words == words
        )
    ).scalar()


def code_row(deed: Deed, job_id: int, code: str, kind: str, stage: str) -> int | None:
    """Return the row of a code that was written down already."""
    return deed.connection.execute(
        select(TroubleCode.id).where(
            TroubleCode.job_id == job_id,
            TroubleCode.code == code,
            TroubleCode.kind == kind,
            TroubleCode.stage == stage,
        )
    ).scalar()


def job_of_code_after(deed: Deed, row: int) -> int | None:
    """Return the job of a trouble code that was read after the repair; None for any other row."""
    return deed.connection.execute(
        select(TroubleCode.job_id).where(TroubleCode.id == row, TroubleCode.stage == "after repair")
    ).scalar()


def conditions_not_met(deed: Deed, job_id: int) -> tuple[str, ...]:
    """Return the conditions that are written down as not met on the drive."""
    rows = deed.connection.execute(
        select(ConditionMet.condition)
        .where(ConditionMet.job_id == job_id, ConditionMet.met == 0)
        .order_by(ConditionMet.condition)
    )
    return tuple(rows.scalars())


def open_jobs_of_visit(deed: Deed, visit_id: int, but: int) -> int:
    """Count the other jobs of a visit that were not handed over."""
    found = deed.connection.execute(
        select(func.count()).where(Job.visit_id == visit_id, Job.id != but, Job.left_at.is_(None))
    ).scalar()
    return int(found or 0)


def answer_row(deed: Deed, about: str, question: str) -> int | None:
    """Return the row of a question that was answered already."""
    return deed.connection.execute(
        select(Answered.id).where(Answered.about == about, Answered.question == question)
    ).scalar()


def cause_found(deed: Deed, job_id: int) -> int | None:
    """Return whether the cause was named (1), not caught (0) or not said yet (None)."""
    return deed.connection.execute(select(Job.cause_found).where(Job.id == job_id)).scalar()


def cause_words(deed: Deed, job_id: int) -> str:
    """Return the words of the cause."""
    return deed.connection.execute(select(Job.cause).where(Job.id == job_id)).scalar() or ""


def is_not_begun(deed: Deed, job_id: int) -> bool:
    """Tell whether a job has no technician yet, and no finding and no cause either."""
    job = select(Job.technician_id, Job.cause_found).where(Job.id == job_id)
    finding = select(JobCheck.id).where(JobCheck.job_id == job_id, JobCheck.kind == "inspection")
    row = deed.connection.execute(job).first()
    nobody = row is not None and row[0] is None and row[1] is None
    return nobody and deed.connection.execute(finding.limit(1)).first() is None


class HoursFound(NamedTuple):
    """The hours of a job, and those of them that went into searching; None: nobody wrote it."""

    whole: float | None
    search: float | None


def hours(deed: Deed, job_id: int) -> HoursFound:
    """Return the hours that are written on a job."""
    found = select(Job.hours, Job.search_hours).where(Job.id == job_id)
    row = deed.connection.execute(found).first()
    return HoursFound(None, None) if row is None else HoursFound(row[0], row[1])


def doer_row(deed: Deed, job_id: int, did: str) -> tuple[int | None, int | None]:
    """Return the row that names who did a thing of a job, and the person; None, None for nobody."""
    row = deed.connection.execute(
        select(JobPerson.id, JobPerson.person_id).where(
            JobPerson.job_id == job_id, JobPerson.did == did
        )
    ).first()
    return (None, None) if row is None else (row[0], row[1])


def person_name(deed: Deed, person: int) -> str | None:
    """Return the name of a person of the shop."""
    return deed.connection.execute(select(Person.name).where(Person.id == person)).scalar()


def left_at(deed: Deed, job_id: int) -> str | None:
    """Return when the job was handed over."""
    return deed.connection.execute(select(Job.left_at).where(Job.id == job_id)).scalar()


def refuse_once_left(deed: Deed, job_id: int) -> None:
    """Raise a ShopTrouble where the job was handed over already: its proof stays as it was."""
    if left_at(deed, job_id) is not None:
        raise ShopTrouble(
            LEFT,
            kept=tr("Nothing of it was changed."),
            do=WRITE_UP_ANEW,
        )


class VisitFound(NamedTuple):
    """The visit of a job."""

    id: int
    came_at: str


def visit_of(deed: Deed, job_id: int) -> VisitFound:
    """Return the visit that a job belongs to; a ShopTrouble where it is gone."""
    row = deed.connection.execute(
        select(Visit.id, Visit.came_at).join(Job, Job.visit_id == Visit.id).where(Job.id == job_id)
    ).first()
    if row is None:
        raise gone(tr("That job is no longer there."))
    return VisitFound(row[0], row[1])


def vehicle_of_visit(deed: Deed, visit_id: int) -> tuple[int, int]:
    """Return the vehicle of a visit, and how many other visits it has; a ShopTrouble if gone."""
    vehicle = deed.connection.execute(select(Visit.vehicle_id).where(Visit.id == visit_id)).scalar()
    if vehicle is None:
        raise gone(tr("That visit is no longer there."))
    others = select(func.count()).where(Visit.vehicle_id == vehicle, Visit.id != visit_id)
    return int(vehicle), int(deed.connection.execute(others).scalar() or 0)


def vehicle_is_there(deed: Deed, vehicle_id: int) -> bool:
    """Tell whether a vehicle is in the record."""
    found = deed.connection.execute(select(Vehicle.id).where(Vehicle.id == vehicle_id)).first()
    return found is not None


def unit_of_vehicle(deed: Deed, vehicle_id: int) -> DistanceUnit:
    """Return the unit that a vehicle's odometer counts in."""
    unit = select(Vehicle.odometer_unit).where(Vehicle.id == vehicle_id)
    return "km" if deed.connection.execute(unit).scalar() == "km" else "mi"


def drives_of(deed: Deed, vehicle_id: int) -> tuple[tuple[int, float], ...]:
    """Return each job of a vehicle for which somebody said how far it was driven, and how far."""
    rows = deed.connection.execute(
        select(Job.id, Job.proof_distance)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Visit.vehicle_id == vehicle_id, Job.proof_distance.is_not(None))
        .order_by(Visit.id, Job.id)
    )
    return tuple((row.id, float(row.proof_distance or 0)) for row in rows)


def odometers_out(deed: Deed, job_id: int) -> tuple[int | None, int | None]:
    """Return the readings that a job and its visit left with."""
    row = deed.connection.execute(
        select(Job.odometer_out, Visit.odometer_out)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    ).one()
    return row[0], row[1]
