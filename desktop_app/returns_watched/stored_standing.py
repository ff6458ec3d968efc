"""Where one job stands, worked out from what the record knows of its vehicle."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from sqlalchemy import Connection, exists, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.kept_job import kept_promise
from desktop_app.repair_jobs.stored import Job, JobCheck, TroubleCode, Visit
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.kind_windows import promise_words
from desktop_app.returns_watched.met_by import met_by
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.standing import (
    JobCourse,
    Sighting,
    Standing,
    stands,
)
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_facts import NO_NAMES, Facts, SymptomNames, read_facts
from desktop_app.returns_watched.stored_promise import read_promise
from desktop_app.returns_watched.stored_returns import read_returns_of_vehicle
from desktop_app.returns_watched.stored_since_left import since_it_left
from desktop_app.returns_watched.stored_told import told_in
from desktop_app.returns_watched.window import MAIN_WINDOW
from desktop_app.shop_record.kept_value import row_place


@dataclass(frozen=True, slots=True)
class JobStanding:
    """Where a job stands; the returns it may be (`of`) and those that came of it, seen or told.

    `promise` says whose its window is, once it was handed over.
    """

    standing: Standing
    of: tuple[ReturnRow, ...]
    came_of_it: tuple[ReturnRow, ...]
    promise: str = ""

    @property
    def came_back_as(self) -> ReturnRow | None:
        """The visit that was judged a comeback of it: how the car does is asked of that."""
        back = met_by(self.came_of_it).back
        return None if back is None or back.is_told else back


def read_standing(
    connection: Connection, job_id: int, today: date, names: SymptomNames = NO_NAMES
) -> JobStanding:
    """Read one job's standing; the cost is that of one vehicle's jobs."""
    row = connection.execute(
        select(
            *(Job.number, Job.correction, Job.window_from, Job.window_months),
            *(Visit.vehicle_id, *_touched()),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    ).one()
    facts = read_facts(connection, [row.vehicle_id], until=today, names=names)
    rows = read_returns_of_vehicle(connection, facts)
    own = [r for r in rows if r.earlier_id == job_id]
    job = next((j for j in facts.jobs if j.number == row.number), None)
    if job is None:
        return JobStanding(Standing.HEARD, (), ())
    out = job.handed_over_on
    course = JobCourse(
        window=job.window or MAIN_WINDOW,
        on_bench=bool(row.on_bench),
        back_on=bool(row.refitted) or bool(row.correction.strip()),
        handed_over_on=out,
    )
    if out is not None:
        own += told_in(connection, facts, {job_id}, today, read_promise(connection)).stand
        said = [one for one in answers_of_job(connection, job_id) if one.on <= today]
        course = _since_it_left(course, facts, job, own, said)
    of = tuple(r for r in rows if r.later_id == job_id)
    kept_promise(row.window_months, row.window_from, row_place("job", job_id, row.number))
    promise = "" if out is None else promise_words(row.window_from, row.window_months)
    return JobStanding(stands(course, today), of, tuple(own), promise)


def _touched() -> tuple[object, ...]:
    checks = select(JobCheck.id).where(JobCheck.job_id == Job.id)
    return (
        exists(select(Pair.id).where(Pair.job_id == Job.id))
        .__or__(exists(checks.where(JobCheck.kind == "inspection")))
        .__or__(exists(select(TroubleCode.id).where(TroubleCode.job_id == Job.id)))
        .label("on_bench"),
        exists(checks.where(JobCheck.kind == "refit")).label("refitted"),
    )


def _since_it_left(
    course: JobCourse,
    facts: Facts,
    job: JobFacts,
    own: Sequence[ReturnRow],
    said: Sequence[CustomerSaid],
) -> JobCourse:
    """Add to a job's course what was seen, told and judged since it left."""
    since, met = since_it_left(facts, job, said), met_by(own)
    return replace(
        course,
        sightings=(*since.read, *_seen_or_told(job, facts.jobs, said)),
        came_back=met.back is not None,
        waits=met.waits is not None,
        not_ours=met.aside is not None,
        unsure=met.unsure is not None,
        came_later=met.later is not None,
        lost_on=since.lost_on,
        followed=since.followed,
    )


def _seen_or_told(
    job: JobFacts, jobs: Iterable[JobFacts], said: Iterable[CustomerSaid]
) -> Iterator[Sighting]:
    """Yield when the car came again, and when its customer said that all is well."""
    out = job.handed_over_on
    for one in jobs:
        if one.vehicle == job.vehicle and out is not None and one.opened_on > out:
            yield Sighting(one.opened_on)
    for answer in said:
        if answer.answer is Answer.FINE:
            yield Sighting(answer.on)
