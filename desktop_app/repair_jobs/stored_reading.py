"""Reading jobs, visits and vehicles back from the record."""

from __future__ import annotations

from collections.abc import Collection

from sqlalchemy import Connection, RowMapping, func, select

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.job_view import (
    CheckMade,
    CodeRead,
    EarlierJob,
    EventSeen,
    JobView,
    VehicleSeen,
)
from desktop_app.repair_jobs.kept_job import (
    kept_drive,
    kept_hand_over,
    kept_kind_of_work,
    kept_level,
    kept_promise,
    kept_window,
    kept_work,
)
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.stored import (
    Answered,
    Customer,
    Job,
    JobCheck,
    JobCondition,
    JobPerson,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.repair_jobs.who_did_what import DIDS, Did, Doer
from desktop_app.shop_record.kept_value import (
    kept_day,
    kept_moment,
    kept_tick,
    kept_whole,
    kept_word,
    row_place,
)
from desktop_app.shop_record.question import kept_words
from desktop_app.shop_record.trouble import ShopTrouble

_OWN = (
    *("id", "number", "visit_id", "concern", "system", "cause", "correction", "technician_id"),
    *("work", "search_hours"),
    *("hours", "unbilled_hours", "price_cents", "proof_level", "proof_words", "proof_distance"),
    *("declined", "left_at", "window_days", "window_months", "window_miles", "window_rule"),
    *("came_at", "odometer_in", "odometer_unread", "odometer_source", "brought_by"),
)


def read_job(connection: Connection, job_id: int) -> JobView:
    """Return a whole job; a ShopTrouble where there is none with this id."""
    plain = (
        connection.execute(
            select(
                Job.__table__,
                Visit.vehicle_id,
                Visit.customer_id,
                Visit.came_at,
                Visit.odometer_in,
                Visit.odometer_unread,
                Visit.odometer_source,
                Visit.brought_by,
                Customer.name.label("customer"),
                Customer.phone,
                Person.name.label("technician"),
            )
            .join(Visit, Visit.id == Job.visit_id)
            .outerjoin(Customer, Customer.id == Visit.customer_id)
            .outerjoin(Person, Person.id == Job.technician_id)
            .where(Job.id == job_id)
        )
        .mappings()
        .first()
    )
    if plain is None:
        raise ShopTrouble(
            tr("That job is not in the record any more."), tr("It may have been undone.")
        )
    _check_kept(plain)
    own = {name: plain[name] for name in _OWN}
    return JobView(
        **own,
        says_same=bool(plain["says_same"]),
        cause_found=None if plain["cause_found"] is None else bool(plain["cause_found"]),
        technician=plain["technician"] or "",
        customer=plain["customer"] or "",
        phone=plain["phone"] or "",
        odometer_out=plain["odometer_out"],
        vehicle=read_vehicle(connection, plain["vehicle_id"]),
        symptoms=symptoms_of(connection, job_id),
        conditions=conditions_of(connection, job_id),
        codes=_codes_of(connection, job_id),
        checks=_checks_of(connection, job_id),
        named=_named_of(connection, job_id),
    )


def _check_kept(job: RowMapping) -> None:
    """Raise a ShopDamaged where a job or its visit holds what no deed has written."""
    place = row_place("job", job["id"], job["number"])
    came = row_place("visit", job["visit_id"], job["number"])
    came_on = kept_moment(job["came_at"], came).date()
    if job["left_at"] is not None:
        kept_hand_over(came_on, kept_moment(job["left_at"], place).date(), place)
    kept_work(job["hours"], job["unbilled_hours"], job["price_cents"], place)
    kept_kind_of_work(job["work"], job["search_hours"], place)
    kept_drive(job["proof_distance"], place)
    if job["odometer_source"] is not None:
        kept_word(
            job["odometer_source"], READING_SOURCES, tr("“read”, “told” or “estimated”"), came
        )
    for reading, where in ((job["odometer_in"], came), (job["odometer_out"], place)):
        if reading is not None:
            kept_whole(reading, 0, MOST_ON_AN_ODOMETER, tr("an odometer reading"), where)
    kept_window(job["window_days"], job["window_miles"], job["window_rule"], place)
    kept_promise(job["window_months"], job["window_from"], place)
    kept_level(job["proof_level"], place)
    kept_tick(job["says_same"], tr("0 or 1"), place)
    if job["cause_found"] is not None:
        kept_tick(job["cause_found"], tr("0 or 1"), place)


def read_vehicle(connection: Connection, vehicle_id: int) -> VehicleSeen:
    """Return one vehicle."""
    row = connection.execute(
        select(
            Vehicle.id,
            func.coalesce(Vehicle.vin, ""),
            func.coalesce(Vehicle.plate, ""),
            func.coalesce(Vehicle.tag, ""),
            Vehicle.description,
            Vehicle.odometer_unit,
        ).where(Vehicle.id == vehicle_id)
    ).one()
    return VehicleSeen(*row)


def earlier_jobs(connection: Connection, vehicle_id: int, limit: int = 8) -> tuple[EarlierJob, ...]:
    """Return the vehicle's jobs, newest first."""
    rows = connection.execute(
        select(Job.id, Job.number, Visit.came_at, Job.left_at, Job.concern, Job.correction)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Visit.vehicle_id == vehicle_id)
        .order_by(Visit.came_at.desc(), Job.id.desc())
        .limit(limit)
    )
    return tuple(
        EarlierJob(r.id, r.number, r.came_at[:10], r.left_at and r.left_at[:10], r[4], r[5])
        for r in rows
    )


def jobs_of_visit(connection: Connection, visit_id: int) -> tuple[tuple[int, str, str], ...]:
    """Return (id, number, concern) of each job of a visit."""
    rows = connection.execute(
        select(Job.id, Job.number, Job.concern).where(Job.visit_id == visit_id).order_by(Job.id)
    )
    return tuple((r[0], r[1], r[2]) for r in rows)


def are_all_there(connection: Connection, jobs: Collection[int]) -> bool:
    """Tell whether all of these jobs are in the record now."""
    found = select(func.count()).where(Job.id.in_(sorted(set(jobs))))
    return connection.execute(found).scalar() == len(set(jobs))


def job_by_number(connection: Connection, number: str) -> int:
    """Return the id of the job with this number, in any case; a ShopTrouble where there is none."""
    found = connection.execute(
        select(Job.id).where(func.upper(Job.number) == number.strip().upper())
    ).scalar()
    if found is None:
        raise ShopTrouble(
            tr("There is no job {number!r} in this shop.", number=number),
            do=tr("Numbers look like J-104."),
        )
    return int(found)


def events_of(connection: Connection, vehicle_id: int) -> tuple[EventSeen, ...]:
    """Return what happened to a vehicle, oldest first."""
    rows = connection.execute(
        select(
            VehicleEvent.id,
            VehicleEvent.happened_on,
            VehicleEvent.kind,
            VehicleEvent.reading_before,
            VehicleEvent.reading_after,
            VehicleEvent.note,
        )
        .where(VehicleEvent.vehicle_id == vehicle_id)
        .order_by(VehicleEvent.happened_on, VehicleEvent.id)
    )
    events = tuple(EventSeen(*row) for row in rows)
    for event in events:
        kept_day(event.on, row_place("vehicle_event", event.id))
    return events


def symptoms_of(connection: Connection, job_id: int) -> tuple[str, ...]:
    """Return the ids of the symptom groups of a job."""
    rows = connection.execute(
        select(JobSymptom.symptom).where(JobSymptom.job_id == job_id).order_by(JobSymptom.id)
    )
    return tuple(rows.scalars())


def conditions_of(connection: Connection, job_id: int) -> dict[str, bool]:
    """Return when the fault happens (True) or never happens (False); not asked is left out."""
    rows = connection.execute(
        select(JobCondition.condition, JobCondition.happens)
        .where(JobCondition.job_id == job_id)
        .order_by(JobCondition.condition)
    )
    return {condition: bool(happens) for condition, happens in rows}


def was_answered(connection: Connection, about: str, question: str) -> bool:
    """Tell whether a person already said "right as typed" to this question."""
    found = connection.execute(
        select(Answered.id).where(
            Answered.about == about, Answered.question == kept_words(question)
        )
    ).first()
    return found is not None


def _codes_of(connection: Connection, job_id: int) -> tuple[CodeRead, ...]:
    rows = connection.execute(
        select(TroubleCode.id, TroubleCode.code, TroubleCode.kind, TroubleCode.stage)
        .where(TroubleCode.job_id == job_id)
        .order_by(TroubleCode.id)
    )
    return tuple(CodeRead(*row) for row in rows)


def _checks_of(connection: Connection, job_id: int) -> tuple[CheckMade, ...]:
    rows = connection.execute(
        select(JobCheck.id, JobCheck.kind, JobCheck.words, JobCheck.outcome)
        .where(JobCheck.job_id == job_id)
        .order_by(JobCheck.id)
    )
    return tuple(CheckMade(*row) for row in rows)


def _named_of(connection: Connection, job_id: int) -> dict[Did, Doer]:
    rows = connection.execute(
        select(JobPerson.id, JobPerson.did, Person.id, Person.name)
        .join(Person, Person.id == JobPerson.person_id)
        .where(JobPerson.job_id == job_id)
        .order_by(JobPerson.did)
    )
    wanted = tr("one of the four things of a job")
    return {
        kept_word(did, DIDS, wanted, row_place("job_person", row)): Doer(person, name)
        for row, did, person, name in rows
    }
