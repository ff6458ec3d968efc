"""Reading the returns that the shop never saw, as rows of the list of returns."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import date
from typing import NamedTuple

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.later_visit import is_later_visit
from desktop_app.repair_jobs.odometer import OdometerReading, RunningMiles, running_miles
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.candidate import Candidate, came_of, chains_of
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.job_facts import JobFacts, may_return
from desktop_app.returns_watched.judgement import Chains
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_facts import NO_NAMES, Facts, SymptomNames, read_facts
from desktop_app.returns_watched.stored_promise import Promise, read_promise
from desktop_app.returns_watched.stored_return_rows import ReturnsFound, of_one_vehicle
from desktop_app.returns_watched.stored_since_left import since_it_left
from desktop_app.returns_watched.stored_vehicles import each_row, rows_of_one
from desktop_app.returns_watched.told_return import ToldReturn, speaking_for, told_returns, told_row
from desktop_app.shop_record.kept_value import kept_day, row_place


class Told(NamedTuple):
    """What customers told of the same trouble and no visit speaks for.

    `dangerous` are the earlier and the later job of each visit that does speak for something told
    that was said to be dangerous.
    """

    stand: tuple[ReturnRow, ...] = ()
    dangerous: frozenset[tuple[int, int]] = frozenset()

    def on_visits(self, rows: Iterable[ReturnRow]) -> Iterator[ReturnRow]:
        """Yield the rows of visits, with the danger that was told where nobody said it of them."""
        for row in rows:
            told = row.dangerous is None and (row.earlier_id, row.later_id) in self.dangerous
            yield replace(row, dangerous=True) if told else row


def read_told_rows(
    connection: Connection,
    job_ids: Collection[int] | None,
    until: date,
    names: SymptomNames = NO_NAMES,
) -> tuple[ReturnRow, ...]:
    """Read what customers of some jobs, or of all, told of the same trouble up to a day.

    What a visit of the car speaks for is left out. The rows stand by the day on which it was told.
    """
    return read_told(connection, job_ids, until, names).stand


def read_told(
    connection: Connection,
    job_ids: Collection[int] | None,
    until: date,
    names: SymptomNames = NO_NAMES,
) -> Told:
    """Read what `read_told_rows` does, and what is kept of the rest.

    The facts of the few vehicles are read, as for a job's own page.
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
        return Told()
    of = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id)
    vehicles = {row.vehicle_id for row in each_row(connection, of, Job.id, ids)}
    facts = read_facts(connection, vehicles, until=until, names=names)
    return told_in(connection, facts, ids, until, read_promise(connection))


def told_in(
    connection: Connection, facts: Facts, job_ids: Collection[int], until: date, promise: Promise
) -> Told:
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
    stand: list[ReturnRow] = []
    dangerous: set[tuple[int, int]] = set()
    for job in jobs:
        job_id = facts.said[job.number].id
        said = [one for one in answers.get(job_id, ()) if one.on <= until]
        for row in _told_of(facts, job, said, units[job_id], chains):
            visit = speaking_for(row, seen.get(job_id, ()))
            if visit is None:
                stand.append(row)
            elif row.dangerous:
                dangerous.add((visit.earlier_id, visit.later_id))
    stand.sort(key=lambda row: (row.came_on, row.earlier, row.asked_id))
    return Told(tuple(stand), frozenset(dangerous))


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
    came = [one.opened_on for one in facts.jobs if may_return(job, one)]
    for told in told_returns(said, job.handed_over_on, came):
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


def came_since(connection: Connection, job_id: int, since: date) -> tuple[date, ...]:
    """Return the days, oldest first, on which the car of a job came for another visit."""
    wanted = select(Visit.vehicle_id, Visit.came_at, Job.left_at)
    wanted = wanted.join(Job, Job.visit_id == Visit.id)
    own = connection.execute(wanted.where(Job.id == job_id)).one()
    came = select(Visit.came_at).where(
        Visit.vehicle_id.in_(rows_of_one(connection, [own.vehicle_id])),
        Visit.came_at >= since.isoformat(),
    )
    place = row_place("visit of job", job_id)
    days = (
        kept_day(at, place)
        for at in connection.execute(came).scalars()
        if at[:10] != own.came_at[:10] or is_later_visit(own.came_at, own.left_at, at)
    )
    return tuple(sorted(days))
