"""The watch worked out job by job with the rules for one vehicle, to hold the columns against."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from sqlalchemy import Connection

from desktop_app.repair_jobs.odometer import OdometerReading, RunningMiles, miles_per_day
from desktop_app.repair_jobs.rate_of_use import Stretch, rate_of_use, shop_use, stretches_of
from desktop_app.returns_watched.candidate import all_candidates
from desktop_app.returns_watched.customer_answers import gone_since
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.judgement import counts_against
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_facts import Facts, read_facts
from desktop_app.returns_watched.stored_links import LinkKept
from desktop_app.returns_watched.stored_promise import read_promise
from desktop_app.returns_watched.watching import (
    Driven,
    SinceThen,
    WatchedJob,
    WatchSaid,
    sightings_since,
    watched,
    what_ends_first,
)

NEWEST = 20  # readings of one vehicle that say how it is driven
Readings = Sequence[tuple[date, RunningMiles | None]]


def watch_one_by_one(connection: Connection, today: date) -> tuple[WatchedJob, ...]:
    """Return the jobs on watch, each from the whole record of its vehicle."""
    facts = read_facts(connection, until=today)
    back, waits = _met(connection, facts)
    jobs = [job for job in facts.jobs if _may_be_open(job, today)]
    stretches = {
        job.vehicle: _stretches(connection, facts, job.vehicle, jobs, today) for job in jobs
    }
    shop = shop_use(list(stretches.values()))
    found = []
    for job in jobs:
        assert job.window is not None
        said = facts.said[job.number]
        seen = max(one.opened_on for one in facts.jobs if one.vehicle == job.vehicle)
        answers = [one for one in answers_of_job(connection, said.id) if one.on <= today]
        since = since_then(facts, job, gone_since(answers, seen))
        words = WatchSaid(
            *(said.id, job.number, said.vehicle, said.concern),
            *(job.number in back, job.number in waits),
            seen if seen > since.out else None,
        )
        rate = _rate(facts, job.vehicle) if job.window.may_stay_open else None
        use = rate_of_use(stretches[job.vehicle], shop)
        found.append(watched(words, job.window, since, Driven(rate, use), today))
    return what_ends_first(one for one in found if one is not None)


def since_then(facts: Facts, job: JobFacts, gone_on: date | None = None) -> SinceThen:
    """Return what is known since a job left."""
    out, left_with = job.handed_over_on, job.odometer_out
    assert out is not None
    readings = [
        (one.reading.on, one.place) for one in facts.odometers.readings.get(job.vehicle, ())
    ]
    sightings = sightings_since(job, out, readings)
    return SinceThen(
        out=out,
        left_read=left_with is not None,
        known=max(((s.on, s.miles) for s in sightings if s.miles is not None), default=None),
        read_on=max((on for on, _ in readings), default=None),
        lost=left_with is None
        or any(place.leg != left_with.leg for on, place in readings if place and on > out),
        sold_on=job.sold_on,
        gone_on=gone_on,
    )


def _may_be_open(job: JobFacts, today: date) -> bool:
    if job.handed_over_on is None or job.window is None:
        return False
    days = (today - job.handed_over_on).days
    return job.window.may_stay_open or days <= job.window.days


def _met(connection: Connection, facts: Facts) -> tuple[set[str], set[str]]:
    promise = read_promise(connection)
    back, waits = set(), set()
    for one in all_candidates(facts.jobs, promise.main, promise.long, facts.judged):
        link = facts.links.get((one.earlier, one.later), LinkKept())
        if one.in_window and link.same_vehicle:
            if counts_against(one.judgement, link.cause_class):
                back.add(one.earlier)
            if one.waits:
                waits.add(one.earlier)
    return back, waits


def _stretches(
    connection: Connection, facts: Facts, vehicle: str, jobs: Sequence[JobFacts], today: date
) -> Sequence[Stretch]:
    readings = [one.reading for one in facts.odometers.readings.get(vehicle, ())]
    told = [
        OdometerReading(said.on, said.odometer_told, readings[-1].unit, "told")
        for job in jobs
        if job.vehicle == vehicle
        for said in answers_of_job(connection, facts.said[job.number].id)
        if said.odometer_told is not None and readings and readings[-1].on < said.on <= today
    ]
    newest = [*readings[-NEWEST:], *sorted(told, key=lambda one: one.on)[-1:]]
    return stretches_of(newest, facts.odometers.replaced.get(vehicle, ()))


def _rate(facts: Facts, vehicle: str) -> float | None:
    readings = [one.reading for one in facts.odometers.readings.get(vehicle, ())]
    return miles_per_day(readings, facts.odometers.replaced.get(vehicle, ()))
