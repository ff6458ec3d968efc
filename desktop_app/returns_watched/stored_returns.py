"""The lists of returns and of jobs on watch, read from the record and put through the rules."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date, timedelta

from sqlalchemy import Connection, func, or_, select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.candidate import Candidate, all_candidates, candidates
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_facts import (
    NO_NAMES,
    Facts,
    Near,
    SymptomNames,
    read_facts,
)
from desktop_app.returns_watched.stored_links import LinkKept
from desktop_app.returns_watched.stored_many import FEW_VEHICLES, read_many
from desktop_app.returns_watched.stored_many_rows import written_out
from desktop_app.returns_watched.stored_use import use_of_vehicles
from desktop_app.returns_watched.watching import WatchedJob, WatchSaid, watched, what_ends_first
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_day

WAITING_DAYS = 92  # an older visit that nobody judged is found on It's Back, not counted


@dataclass(frozen=True, slots=True)
class Promise:
    """The shop's main window, for jobs that have none of their own, and the long one beside it."""

    main: Window
    long: Window

    def near(self, day: date) -> Near:
        """Return which jobs can have a return that was opened on a day or later."""
        return Near(day, max(self.main.days, self.long.days))


def read_promise(connection: Connection) -> Promise:
    """Read the shop's windows from its house rules."""
    rules = read_rules(connection)
    return Promise(_main(rules), Window(rules.long_days, rules.long_miles))


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
    vehicles = None if since is None and until is None else _came(connection, since, until)
    promise = read_promise(connection)
    if vehicles is None or len(vehicles) > FEW_VEHICLES:
        rows = _of_many(connection, promise, vehicles, (since, until), names)
    else:
        near = None if since is None else promise.near(since)
        facts = read_facts(connection, vehicles, near=near, names=names)
        rows = _rows(facts, _all(promise, facts))
    kept = (
        row
        for row in rows
        if (since is None or row.came_on >= since) and (until is None or row.came_on <= until)
    )
    return tuple(sorted(kept, key=lambda row: (row.came_on, row.later, row.left_on, row.earlier)))


def _of_many(
    connection: Connection,
    promise: Promise,
    vehicles: Collection[int] | None,
    period: tuple[date | None, date | None],
    names: SymptomNames,
) -> tuple[ReturnRow, ...]:
    since, until = period
    found = read_many(connection, vehicles, None, promise.long, names)
    opened = found.columns.jobs.opened[found.pairs.later]
    inside = opened >= (date.min if since is None else since).toordinal()
    inside &= opened <= (date.max if until is None else until).toordinal()
    return _rows(*written_out(connection, found.only(inside), promise.main, names))


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
    found = candidates(others, later, promise.main, promise.long, facts.judged)
    return _rows(facts, found)


def count_waiting(connection: Connection, today: date, names: SymptomNames = NO_NAMES) -> int:
    """Count the returns of the last three months that nobody has judged."""
    since = today - timedelta(days=WAITING_DAYS)
    return sum(1 for row in read_returns(connection, since, today, names) if row.waits)


def read_returns_of_vehicle(connection: Connection, facts: Facts) -> tuple[ReturnRow, ...]:
    """Return every candidate or judged pair among the facts of one vehicle that were read."""
    return _rows(facts, _all(read_promise(connection), facts))


def read_watch(connection: Connection, today: date) -> tuple[WatchedJob, ...]:
    """Return the jobs whose window is open on a day, what ends first at the top.

    What came after that day is left out, as if the list had been made then.
    """
    wanted = _perhaps_open(connection, today)
    if not wanted:
        return ()
    promise = read_promise(connection)
    start = kept_day(_start(connection, today))
    facts = read_facts(connection, set(wanted.values()), until=today, near=Near(start, 0))
    met = _all(promise, facts)
    back = {c.earlier for c in met if c.in_window and c.judgement and c.judgement.is_comeback}
    waits = {c.earlier for c in met if c.in_window and c.judgement is None}
    driven = use_of_vehicles(facts.odometers)
    last_seen = _last_seen(facts)
    found = []
    for job in facts.jobs:
        said = facts.said[job.number]
        if said.id not in wanted:
            continue
        placed = facts.odometers.readings.get(job.vehicle, ())
        seen = last_seen[job.vehicle]
        words = WatchSaid(
            *(said.id, said.vehicle, said.concern, job.number in back, job.number in waits),
            seen if job.handed_over_on and seen > job.handed_over_on else None,
        )
        readings = [(p.reading.on, p.place) for p in placed]
        one = watched(job, words, readings, driven(job.vehicle, job.window), today)
        if one is not None:
            found.append(one)
    return what_ends_first(found)


def _last_seen(facts: Facts) -> dict[str, date]:
    """Return by vehicle the day of its last visit."""
    seen: dict[str, date] = {}
    for job in facts.jobs:
        seen[job.vehicle] = max(job.opened_on, seen.get(job.vehicle, job.opened_on))
    return seen


def _main(rules: HouseRules) -> Window:
    return Window(
        rules.window_days, rules.window_miles, "both" if rules.window_rule == "both" else "first"
    )


def _came(connection: Connection, since: date | None, until: date | None) -> Collection[int]:
    wanted = select(Visit.vehicle_id).distinct()
    if since is not None:
        wanted = wanted.where(Visit.came_at >= since.isoformat())
    if until is not None:
        wanted = wanted.where(Visit.came_at < (until + timedelta(days=1)).isoformat())
    return {row.vehicle_id for row in connection.execute(wanted)}


def _perhaps_open(connection: Connection, today: date) -> dict[int, int]:
    """Return, by job, the vehicles of jobs handed over late enough to be on watch by time."""
    start = _start(connection, today)
    wanted = (
        select(Job.id, Visit.vehicle_id)
        .join(Visit, Visit.id == Job.visit_id)
        .where(
            Job.left_at.is_not(None),
            or_(Job.left_at >= start, Job.window_rule == "both", Job.window_days == 0),
        )
        .where(Job.left_at < (today + timedelta(days=1)).isoformat())
    )
    return {row.id: row.vehicle_id for row in connection.execute(wanted)}


def _start(connection: Connection, today: date) -> str:
    """Return the first hand-over day of a window that can be open today by time."""
    longest = connection.execute(select(func.max(Job.window_days))).scalar() or 0
    return (today - timedelta(days=longest)).isoformat()


def _all(promise: Promise, facts: Facts) -> list[Candidate]:
    found = all_candidates(facts.jobs, promise.main, promise.long, facts.judged)
    return [c for c in found if _one_vehicle(facts, c)]


def _one_vehicle(facts: Facts, candidate: Candidate) -> bool:
    """Leave out pairs of which somebody said that they are two vehicles."""
    link = facts.links.get((candidate.earlier, candidate.later))
    return link is None or link.same_vehicle


def _rows(facts: Facts, found: Collection[Candidate]) -> tuple[ReturnRow, ...]:
    by_number = {job.number: job for job in facts.jobs}
    rows = []
    for one in found:
        if not _one_vehicle(facts, one):
            continue
        then, now = by_number[one.earlier], by_number[one.later]
        link = facts.links.get((one.earlier, one.later), LinkKept())
        assert then.handed_over_on is not None
        rows.append(
            ReturnRow(
                candidate=one,
                earlier_id=facts.said[one.earlier].id,
                later_id=facts.said[one.later].id,
                vehicle=facts.said[one.later].vehicle,
                left_on=then.handed_over_on,
                came_on=now.opened_on,
                concern_then=facts.said[one.earlier].concern,
                concern_now=facts.said[one.later].concern,
                why=link.why,
                cause_class=link.cause_class,
                cost_cents=link.cost_cents,
                judged_by=link.judged_by,
                judged_at=link.judged_at,
                change_promised=link.change_promised,
            )
        )
    return tuple(rows)
