"""What the rules of returns need, read from the record: of one vehicle, of some, or of all."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, cast

from sqlalchemy import Connection, Row, select

from desktop_app.language import tr
from desktop_app.repair_jobs.kept_job import kept_hand_over, kept_window
from desktop_app.repair_jobs.later_visit import clock_of
from desktop_app.repair_jobs.odometer import reading_source
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.stored_details import JobDetails
from desktop_app.returns_watched.stored_links import LinkKept, read_links
from desktop_app.returns_watched.stored_readings import Odometers, on_running_scale, read_replaced
from desktop_app.returns_watched.stored_sales import first_sale, read_sales
from desktop_app.returns_watched.stored_same_day import days_told_apart
from desktop_app.returns_watched.stored_vehicles import (
    VehicleKept,
    each_row,
    read_vehicles,
    rows_of_one,
)
from desktop_app.returns_watched.window import EndsBy, Window
from desktop_app.shop_record.kept_value import kept_day, kept_tick, row_place

SymptomNames = Mapping[str, str]
NO_NAMES: SymptomNames = {}

_TICK = tr("0 or 1")
_VISITS = select(
    Visit.id,
    Visit.vehicle_id,
    Visit.came_at,
    Visit.left_at,
    Visit.odometer_in,
    Visit.odometer_out,
    Visit.odometer_source,
)
_JOBS = select(
    Job.id,
    Job.number,
    Job.visit_id,
    Job.concern,
    Job.says_same,
    Job.system,
    Job.left_at,
    Job.odometer_out,
    Job.window_days,
    Job.window_miles,
    Job.window_rule,
).join(Visit, Visit.id == Job.visit_id)


@dataclass(frozen=True, slots=True)
class JobSaid:
    """What a list says of a job beside the facts: its id, the vehicle and the concern in words."""

    id: int
    vehicle: str
    concern: str


@dataclass(frozen=True, slots=True)
class Facts:
    """Jobs as the rules take them; `said` goes by job number, the links by pair of numbers."""

    jobs: tuple[JobFacts, ...]
    said: Mapping[str, JobSaid]
    judged: Mapping[tuple[str, str], Judgement]
    links: Mapping[tuple[str, str], LinkKept]
    odometers: Odometers

    @property
    def causes(self) -> dict[tuple[str, str], str]:
        """Why the judged ones came back, where a person said so."""
        return {pair: one.cause_class for pair, one in self.links.items() if one.cause_class}


@dataclass(frozen=True, slots=True)
class Near:
    """Which jobs can matter to later ones opened from a day on: `reach` is the longest window."""

    day: date
    reach: int

    def holds(self, job: Row[Any]) -> bool:
        """Tell whether a job can be the earlier one, or a later one itself.

        Where days and miles must both end, or no days are given, it may stay open for ever.
        """
        if job.left_at is None or job.window_rule == "both" or job.window_days == 0:
            return True
        days: int = max(self.reach, job.window_days)
        left = kept_day(job.left_at, row_place("job", job.id, job.number))
        return (self.day - left).days <= days


def read_facts(
    connection: Connection,
    vehicle_ids: Collection[int] | None = None,
    *,
    until: date | None = None,
    near: Near | None = None,
    names: SymptomNames = NO_NAMES,
) -> Facts:
    """Read the jobs of some vehicles (and of rows that mean the same ones), or of all.

    Look-ups go by index, so that one vehicle costs the same in a small and a large record. What
    came after the day `until` is left out, and so are jobs that lie too far back to be `near`.
    `names` gives symptom groups their plain names.
    """
    ids = None if vehicle_ids is None else rows_of_one(connection, vehicle_ids)
    visits = _visits(connection, ids, until)
    vehicles = read_vehicles(connection, ids, visits.values())
    jobs = [row for row in _jobs(connection, ids) if row.visit_id in visits]
    replaced = read_replaced(connection, vehicles, until)
    odometers = on_running_scale(visits, jobs, vehicles, replaced, until)
    sales: dict[str, list[date]] = {}
    for vehicle_id, day in read_sales(connection, ids, until):
        sales.setdefault(vehicles[vehicle_id].key, []).append(day)
    with_jobs = (visits[visit] for visit in {row.visit_id for row in jobs})
    days = days_told_apart((vehicles[one.vehicle_id].key, one.came_at) for one in with_jobs)
    all_ids = None if ids is None else [row.id for row in jobs]
    judged, links = read_links(connection, {row.id: row.number for row in jobs}, all_ids)
    if near is not None:
        tied = {number for pair in links for number in pair}
        jobs = [row for row in jobs if row.number in tied or near.holds(row)]
    job_ids = None if all_ids is None else [row.id for row in jobs]
    details = JobDetails(connection, job_ids, names)
    facts, said = [], {}
    for row in jobs:
        visit = visits[row.visit_id]
        vehicle = vehicles[visit.vehicle_id]
        apart = days.get((vehicle.key, visit.came_at[:10]))
        facts.append(_facts(row, visit, vehicle, odometers, details, sales, until, apart))
        said[row.number] = JobSaid(row.id, vehicle.words, row.concern)
    return Facts(tuple(facts), said, judged, links, odometers)


def _visits(
    connection: Connection, vehicle_ids: Collection[int] | None, until: date | None
) -> dict[int, Row[Any]]:
    rows = each_row(connection, _VISITS, Visit.vehicle_id, vehicle_ids)
    kept = [row for row in rows if until is None or kept_day(row.came_at) <= until]
    return {row.id: row for row in sorted(kept, key=lambda row: (row.came_at, row.id))}


def _jobs(connection: Connection, vehicle_ids: Collection[int] | None) -> list[Row[Any]]:
    rows = each_row(connection, _JOBS, Visit.vehicle_id, vehicle_ids)
    return sorted(rows, key=lambda row: cast(int, row.id))


def _facts(
    job: Row[Any],
    visit: Row[Any],
    vehicle: VehicleKept,
    odometers: Odometers,
    details: JobDetails,
    sales: Mapping[str, Sequence[date]],
    until: date | None,
    apart: bool | None,
) -> JobFacts:
    """Return a job's facts; `apart` is None where its vehicle came once on that day."""
    place = row_place("job", job.id, job.number)
    came = row_place("visit", visit.id, job.number)
    left = None if job.left_at is None else kept_day(job.left_at, place)
    kept_window(job.window_days, job.window_miles, job.window_rule, place)
    opened = kept_day(visit.came_at, came)
    kept_hand_over(opened, left, place)
    handed = None if left is None or (until is not None and left > until) else left
    return JobFacts(
        number=job.number,
        vehicle=vehicle.key,
        opened_on=opened,
        handed_over_on=handed,
        odometer_in=odometers.on_coming(visit),
        odometer_out=odometers.on_leaving(job, visit),
        system=job.system,
        **details.of(job.id),
        customer_says_same=kept_tick(job.says_same, _TICK, place),
        window=Window(job.window_days, job.window_miles, cast(EndsBy, job.window_rule)),
        sold_on=first_sale(sales.get(vehicle.key, ()), handed),
        odometer_source=reading_source(visit.odometer_source, came),
        came_clock=None if apart is None else clock_of(visit.came_at),
        left_clock=None if apart is None else clock_of(job.left_at),
        told_apart=bool(apart),
    )
