"""The few look-ups that a deed needs inside its own transaction."""

from __future__ import annotations

from typing import NamedTuple

from sqlalchemy import func, select

from desktop_app.repair_jobs.stored import (
    Answered,
    Customer,
    Job,
    JobCheck,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Visit,
)
from desktop_app.shop_record.deed import Deed


def next_number(deed: Deed) -> str:
    """Return the next job number, one above the highest id ever given."""
    highest = deed.connection.execute(select(func.max(Job.id))).scalar() or 0
    number = f"J-{101 + highest}"
    taken = select(Job.id).where(Job.number == number)
    while deed.connection.execute(taken).first() is not None:
        highest += 1
        number = f"J-{101 + highest}"
        taken = select(Job.id).where(Job.number == number)
    return number


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
        select(JobSymptom.symptom, JobSymptom.id, JobSymptom.chosen).where(
            JobSymptom.job_id == job_id
        )
    )
    return {symptom: (row, bool(chosen)) for symptom, row, chosen in rows}


def condition_row(deed: Deed, job_id: int, condition: str) -> int | None:
    """Return the row of a condition that was answered."""
    return deed.connection.execute(
        select(JobCondition.id).where(
            JobCondition.job_id == job_id, JobCondition.condition == condition
        )
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


def left_at(deed: Deed, job_id: int) -> str | None:
    """Return when the job was handed over."""
    return deed.connection.execute(select(Job.left_at).where(Job.id == job_id)).scalar()


class VisitFound(NamedTuple):
    """The visit of a job."""

    id: int
    came_at: str


def visit_of(deed: Deed, job_id: int) -> VisitFound:
    """Return the visit that a job belongs to."""
    row = deed.connection.execute(
        select(Visit.id, Visit.came_at).join(Job, Job.visit_id == Visit.id).where(Job.id == job_id)
    ).one()
    return VisitFound(row[0], row[1])
