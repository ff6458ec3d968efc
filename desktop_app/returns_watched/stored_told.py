"""Reading the returns that the shop never saw, as rows of the list of returns."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from datetime import date, timedelta

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReading, RunningMiles, running_miles
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.candidate import Candidate, came_of, chains_of
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.judgement import Chains
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_facts import NO_NAMES, Facts, SymptomNames, read_facts
from desktop_app.returns_watched.stored_promise import Promise, read_promise
from desktop_app.returns_watched.stored_return_rows import ReturnsFound, of_one_vehicle
from desktop_app.returns_watched.stored_since_left import since_it_left
from desktop_app.returns_watched.stored_vehicles import each_row, rows_of_one
from desktop_app.returns_watched.told_return import ToldReturn, still_told, told_returns, told_row
from desktop_app.shop_record.kept_value import kept_day, row_place


def read_told_rows(
    connection: Connection,
    job_ids: Collection[int] | None,
    until: date,
    names: SymptomNames = NO_NAMES,
) -> tuple[ReturnRow, ...]:
    """Read what customers of some jobs, or of all, told of the same trouble up to a day.

    What a visit of the car speaks for is left out. The facts of the few vehicles are read, as for a
    job's own page. They stand by the day on which they were told.
    """
    told = select(CustomerAsked.job_id).distinct()
    told = told.where(
        CustomerAsked.answer == Answer.SAME_TROUBLE.value,
        CustomerAsked.asked_on <= until.isoformat(),
    )
    ids = set(connection.execute(told).scalars())
    if job_ids is not None:
        ids &= set(job_ids)
    if not ids:
        return ()
    of = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id)
    vehicles = {row.vehicle_id for row in each_row(connection, of, Job.id, ids)}
    facts = read_facts(connection, vehicles, until=until, names=names)
    return told_in(connection, facts, ids, until, read_promise(connection))


def told_in(
    connection: Connection, facts: Facts, job_ids: Collection[int], until: date, promise: Promise
) -> tuple[ReturnRow, ...]:
    """Return what customers of some jobs told, given the facts of their vehicles up to that day."""
    jobs = [
        job
        for job in facts.jobs
        if facts.said[job.number].id in job_ids and job.handed_over_on is not None
    ]
    answers = read_answers(connection, job_ids)
    chains = chains_of(facts.judged, facts.jobs, facts.causes)
    seen: dict[int, list[ReturnRow]] = {}
    for row in ReturnsFound(facts, of_one_vehicle(facts, _came_of(facts, jobs, promise))).rows():
        seen.setdefault(row.earlier_id, []).append(row)
    units = _units(connection, job_ids)
    found: list[ReturnRow] = []
    for job in jobs:
        job_id = facts.said[job.number].id
        said = [one for one in answers.get(job_id, ()) if one.on <= until]
        rows = _told_of(facts, job, said, units[job_id], chains)
        found += still_told(rows, seen.get(job_id, ()))
    return tuple(sorted(found, key=lambda row: (row.came_on, row.earlier, row.asked_id)))


def _came_of(facts: Facts, jobs: Sequence[JobFacts], promise: Promise) -> Iterator[Candidate]:
    of: dict[str, list[JobFacts]] = {}
    for one in facts.jobs:
        of.setdefault(one.vehicle, []).append(one)
    for job in jobs:
        yield from came_of(
            job, of[job.vehicle], promise.main, promise.long, facts.judged, facts.causes
        )


def _told_of(
    facts: Facts, job: JobFacts, said: Sequence[CustomerSaid], unit: DistanceUnit, chains: Chains
) -> Iterator[ReturnRow]:
    assert job.handed_over_on is not None
    beside = facts.said[job.number]
    last_day = since_it_left(facts, job, said).last_day
    for told in told_returns(said, job.handed_over_on):
        yield told_row(
            told,
            job,
            job_id=beside.id,
            vehicle=beside.vehicle,
            concern=beside.concern,
            reading=_reading(facts, job, told, unit),
            last_day=last_day,
            chain=chains.chain_of(job.number),
        )


def _reading(
    facts: Facts, job: JobFacts, told: ToldReturn, unit: DistanceUnit
) -> RunningMiles | None:
    """Return the odometer as told on the vehicle's running scale."""
    if told.odometer is None:
        return None
    one = OdometerReading(told.on, told.odometer, unit)
    return running_miles([one], facts.odometers.replaced.get(job.vehicle, ()))[0]


def _units(connection: Connection, job_ids: Collection[int]) -> dict[int, DistanceUnit]:
    wanted = (
        select(Job.id, Vehicle.odometer_unit)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    )
    rows = each_row(connection, wanted, Job.id, job_ids)
    return {row.id: "km" if row.odometer_unit == "km" else "mi" for row in rows}


def last_seen(connection: Connection, job_id: int, since: date, today: date) -> date | None:
    """Return when the car of a job came the last time since a day; None where it did not."""
    own = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id).where(Job.id == job_id)
    rows = rows_of_one(connection, [connection.execute(own).scalar_one()])
    came = select(func.max(Visit.came_at)).where(
        Visit.vehicle_id.in_(rows),
        Visit.came_at >= since.isoformat(),
        Visit.came_at < (today + timedelta(days=1)).isoformat(),
    )
    last = connection.execute(came).scalar()
    return None if last is None else kept_day(last, row_place("visit of job", job_id))
