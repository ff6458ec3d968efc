"""Where one job stands, worked out from what the record knows of its vehicle."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from sqlalchemy import Connection, exists, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.kept_job import kept_promise
from desktop_app.repair_jobs.stored import Job, JobCheck, TroubleCode, Visit
from desktop_app.returns_watched.customer_answers import (
    Answer,
    CustomerSaid,
    gone_since,
    same_trouble_since,
)
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.kind_windows import promise_words
from desktop_app.returns_watched.met_by import met_by, told_and_open
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.standing import (
    JobCourse,
    Sighting,
    Standing,
    furthest,
    open_until,
    stands,
)
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_facts import NO_NAMES, Facts, SymptomNames, read_facts
from desktop_app.returns_watched.stored_returns import read_returns_of_vehicle
from desktop_app.returns_watched.watching import sightings_since
from desktop_app.returns_watched.window import MAIN_WINDOW
from desktop_app.shop_record.kept_value import row_place


@dataclass(frozen=True, slots=True)
class JobStanding:
    """Where a job stands; the returns it may be (`of`) and those that came of it (`came_of_it`).

    `promise` says whose its window is, once it was handed over.
    """

    standing: Standing
    of: tuple[ReturnRow, ...]
    came_of_it: tuple[ReturnRow, ...]
    promise: str = ""


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
    own: list[ReturnRow],
    said: list[CustomerSaid],
) -> JobCourse:
    """Add to a job's course what was seen, told and judged since it left."""
    out, left_with = course.handed_over_on, job.odometer_out
    assert out is not None
    placed = facts.odometers.readings.get(job.vehicle, ())
    readings = [(p.reading.on, p.place) for p in placed]
    # The last trusted reading has the most miles: no other says more of the window's end.
    read = list(sightings_since(job, out, readings))[-1:]
    lost_on = _lost_on(job, facts.jobs, said)
    followed = left_with is not None and all(
        place is None or on <= out or place.leg == left_with.leg for on, place in readings
    )
    known = furthest([one for one in read if lost_on is None or one.on < lost_on])
    last = open_until(course.window, out, known, followed=followed)
    met = met_by(own)
    told = told_and_open(same_trouble_since(said), own)
    told_inside = told is not None and (last is None or told <= last)
    return replace(
        course,
        sightings=(*read, *_seen_or_told(job, facts.jobs, said)),
        came_back=met.back is not None,
        waits=met.waits is not None or told_inside,
        not_ours=met.aside is not None,
        unsure=met.unsure is not None,
        came_later=met.later is not None or (told is not None and not told_inside),
        lost_on=lost_on,
        followed=followed,
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


def _lost_on(job: JobFacts, jobs: Iterable[JobFacts], said: Iterable[CustomerSaid]) -> date | None:
    """Return the first day from which nobody can say how the car is: gone, or sold the day before.

    Only a sale that ends the window counts.
    """
    seen_on = max(one.opened_on for one in jobs if one.vehicle == job.vehicle)
    gone = gone_since(list(said), seen_on)
    sold = None if job.sold_on is None else job.sold_on + timedelta(days=1)
    return min((day for day in (gone, sold) if day is not None), default=None)
