"""The lists of returns and of jobs on watch, read from the record and put through the rules."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, timedelta

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.candidate import Candidate, all_candidates, candidates
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_facts import (
    NO_NAMES,
    Facts,
    SymptomNames,
    read_facts,
)
from desktop_app.returns_watched.stored_look import look_at
from desktop_app.returns_watched.stored_many import FEW_VEHICLES, ManyMet, read_many
from desktop_app.returns_watched.stored_many_rows import written_out
from desktop_app.returns_watched.stored_promise import Promise, read_promise
from desktop_app.returns_watched.stored_recent import Period, longest_up_to
from desktop_app.returns_watched.stored_return_rows import ReturnsFound, of_one_vehicle
from desktop_app.returns_watched.stored_told import read_told
from desktop_app.returns_watched.stored_vehicles import rows_of_one, some_ids
from desktop_app.returns_watched.stored_watch import on_watch
from desktop_app.returns_watched.waiting import visits_waiting
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.kept_value import kept_day

FEW_JOBS = 3_000  # a car that stands for many has more, and they meet each other
WAITING_DAYS = 365  # an older visit is reached from its jobs, and is not counted


def read_returns(
    connection: Connection,
    since: date | None = None,
    until: date | None = None,
    names: SymptomNames = NO_NAMES,
) -> tuple[ReturnRow, ...]:
    """Return every candidate or judged pair whose later job was opened from `since` to `until`.

    They stand in the order in which the later jobs were opened. Without `since` and `until` the
    whole record is read; with them only the vehicles that came.
    """
    return tuple(find_returns(connection, since, until, names).rows())


def find_returns(
    connection: Connection,
    since: date | None = None,
    until: date | None = None,
    names: SymptomNames = NO_NAMES,
) -> ReturnsFound:
    """Return what `read_returns` lists, to be gone through without having all of it in memory."""
    vehicles = None if since is None and until is None else _came(connection, since, until)
    promise = read_promise(connection)
    if vehicles is None or not _are_few(connection, vehicles):
        return _of_many(connection, promise, vehicles, (since, until), names)
    near = None if since is None else promise.near(since)
    facts = read_facts(connection, vehicles, near=near, names=names)
    opened = {job.number: job.opened_on for job in facts.jobs}
    left = {job.number: job.handed_over_on for job in facts.jobs}
    kept = (
        one
        for one in _all(promise, facts)
        if (since is None or opened[one.later] >= since)
        and (until is None or opened[one.later] <= until)
    )
    return ReturnsFound(
        facts,
        sorted(kept, key=lambda c: (opened[c.later], c.later, left[c.earlier], c.earlier)),
    )


def _are_few(connection: Connection, vehicles: Collection[int]) -> bool:
    """Tell whether vehicles and their jobs are so few that one by one is as quick as in columns."""
    if len(vehicles) > FEW_VEHICLES:
        return False
    among = Visit.vehicle_id.in_(some_ids(rows_of_one(connection, vehicles)))
    jobs = select(Job.id).join(Visit, Visit.id == Job.visit_id).where(among)
    return connection.execute(jobs.offset(FEW_JOBS).limit(1)).first() is None


def _of_many(
    connection: Connection,
    promise: Promise,
    vehicles: Collection[int] | None,
    period: tuple[date | None, date | None],
    names: SymptomNames,
) -> ReturnsFound:
    since, until = period
    if since is None or (vehicles is not None and len(vehicles) <= FEW_VEHICLES):
        met = read_many(connection, vehicles, None, promise.long, names)
    else:
        seen = Period(since, until or date.max, promise.long.days)
        met = look_at(connection, seen, promise.long, names).met
    return _found_in(connection, met, promise, period, names)


def returns_in(
    connection: Connection,
    met: ManyMet,
    promise: Promise,
    period: tuple[date | None, date | None],
    names: SymptomNames,
) -> tuple[ReturnRow, ...]:
    """Return the pairs whose later job was opened in a period, from those that were met."""
    return tuple(_found_in(connection, met, promise, period, names).rows())


def _found_in(
    connection: Connection,
    met: ManyMet,
    promise: Promise,
    period: tuple[date | None, date | None],
    names: SymptomNames,
) -> ReturnsFound:
    since, until = period
    opened = met.columns.jobs.opened[met.pairs.later]
    inside = opened >= (date.min if since is None else since).toordinal()
    inside &= opened <= (date.max if until is None else until).toordinal()
    return written_out(connection, met.only(inside), promise.main, names)


def read_returns_of_job(
    connection: Connection, job_id: int, names: SymptomNames = NO_NAMES
) -> tuple[ReturnRow, ...]:
    """Return the earlier jobs that one job may be a return of, or was judged against.

    It costs the same in a small and in a large record: look-ups by index, one vehicle's jobs.
    """
    wanted = (
        select(Job.number, Visit.vehicle_id, Visit.came_at)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    )
    row = connection.execute(wanted).first()
    if row is None:
        return ()
    promise = read_promise(connection)
    near = promise.near(kept_day(row.came_at))
    facts = read_facts(connection, [row.vehicle_id], near=near, names=names)
    later = next(job for job in facts.jobs if job.number == row.number)
    others = [job for job in facts.jobs if job.number != later.number]
    found = candidates(others, later, promise.main, promise.long, facts.judged, facts.causes)
    return tuple(ReturnsFound(facts, of_one_vehicle(facts, found)).rows())


def count_waiting(connection: Connection, today: date, names: SymptomNames = NO_NAMES) -> int:
    """Count what a year's returns, seen and told, leave to be judged."""
    return visits_waiting(read_waiting(connection, today, names))


def read_waiting(
    connection: Connection, today: date, names: SymptomNames = NO_NAMES
) -> tuple[ReturnRow, ...]:
    """Read what It's Back shows on a day: the returns of a year, those that were told too."""
    since = today - timedelta(days=WAITING_DAYS)
    told = read_told(connection, None, today, names)
    return (
        *told.on_visits(read_returns(connection, since, names=names)),
        *(row for row in told.stand if row.came_on >= since),
    )


def read_returns_of_vehicle(connection: Connection, facts: Facts) -> tuple[ReturnRow, ...]:
    """Return every candidate or judged pair among the facts of one vehicle that were read."""
    return tuple(ReturnsFound(facts, _all(read_promise(connection), facts)).rows())


def read_watch(connection: Connection, today: date) -> tuple[WatchedJob, ...]:
    """Return the jobs whose window is open on a day, what ends first at the top.

    What came after that day is left out, as if the list had been made then.
    """
    long = read_promise(connection).long
    reach = longest_up_to(connection, long.days)
    look = look_at(connection, Period(today, today, reach), long, NO_NAMES)
    return on_watch(connection, look)


def _came(connection: Connection, since: date | None, until: date | None) -> Collection[int]:
    wanted = select(Visit.vehicle_id).distinct()
    if since is not None:
        wanted = wanted.where(Visit.came_at >= since.isoformat())
    if until is not None:
        wanted = wanted.where(Visit.came_at < (until + timedelta(days=1)).isoformat())
    return {row.vehicle_id for row in connection.execute(wanted)}


def _all(promise: Promise, facts: Facts) -> list[Candidate]:
    found = all_candidates(facts.jobs, promise.main, promise.long, facts.judged, facts.causes)
    return of_one_vehicle(facts, found)
