"""The jobs on watch, from one look at the record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from functools import lru_cache
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.odometer import OdometerReading
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.many_visits.last_known import LastKnown, last_known
from desktop_app.returns_watched.many_visits.many_uses import many_uses
from desktop_app.returns_watched.many_visits.visit_columns import (
    NO_DAY,
    NO_LEG,
    Places,
    VisitColumns,
)
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_customers_asked import told_odometers
from desktop_app.returns_watched.stored_look import Look, may_be_open
from desktop_app.returns_watched.stored_lost import gone_days, last_opened
from desktop_app.returns_watched.stored_told import read_told_rows
from desktop_app.returns_watched.stored_vehicles import each_block, words_of
from desktop_app.returns_watched.watching import (
    Driven,
    SinceThen,
    WatchedJob,
    WatchSaid,
    watched,
    what_ends_first,
)
from desktop_app.returns_watched.window import Window

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


def on_watch(connection: Connection, look: Look) -> tuple[WatchedJob, ...]:
    """Return the jobs whose window is open on the look's last day, what ends first at the top."""
    import numpy as np

    today, jobs = look.period.until, look.jobs
    places = np.flatnonzero(may_be_open(jobs, today))
    since = dict(zip(places.tolist(), since_then_of(connection, look, places), strict=True))
    promised = _promised(jobs, places)
    taken = look.odometers.taken
    vehicles = np.unique(jobs.vehicle[places]).tolist()
    told = _told_reading(connection, look, places)
    by_miles = (jobs.window_days == 0) | jobs.ends_both
    own_rates = set(jobs.vehicle[places[by_miles[places]]].tolist())
    uses = many_uses(taken, vehicles, look.odometers.replaced, told, own_rates)
    found = []
    for said, place in _said(connection, look, places):
        window = _window(*promised[place])
        vehicle = int(jobs.vehicle[place])
        rate = uses.rates.get(vehicle) if window.may_stay_open else None
        one = watched(said, window, since[place], Driven(rate, uses.use(vehicle)), today)
        if one is not None:
            found.append(one)
    return what_ends_first(found)


def _told_reading(connection: Connection, look: Look, places: Ids) -> dict[int, OdometerReading]:
    """Read by vehicle what the customers of some jobs said of the odometer, the last time."""
    ids, of = look.job_ids[places].tolist(), look.jobs.vehicle[places].tolist()
    told = told_odometers(connection, ids, look.period.until)
    found: dict[int, OdometerReading] = {}
    for job, vehicle in zip(ids, of, strict=True):
        one, before = told.get(job), found.get(vehicle)
        if one is not None and (before is None or before.on < one.on):
            found[vehicle] = one
    return found


def since_then_of(connection: Connection, look: Look, places: Ids) -> Iterator[SinceThen]:
    """Yield what is known since each of some jobs left, by their places in the look."""
    jobs, of = look.jobs, look.jobs.vehicle[places]
    left_with = Places(jobs.left_with.leg[places], jobs.left_with.miles[places])
    known = last_known(look.odometers.taken, of, jobs.handed_over[places], left_with)
    gone = gone_days(connection, look.met.columns, places, look.period.until)
    rows = zip(
        jobs.handed_over[places].tolist(),
        jobs.sold[places].tolist(),
        (left_with.leg != NO_LEG).tolist(),
        _known(known),
        known.read.tolist(),
        known.lost.tolist(),
        gone.tolist(),
        strict=True,
    )
    for out, sold, read, last, read_on, lost, gone_on in rows:
        yield SinceThen(
            out=date.fromordinal(out),
            left_read=read,
            known=last,
            read_on=_day(read_on),
            lost=lost,
            sold_on=_day(sold),
            gone_on=_day(gone_on),
        )


def _known(known: LastKnown) -> Iterator[tuple[date, float] | None]:
    for day, miles in zip(known.day.tolist(), known.miles.tolist(), strict=True):
        yield None if day == NO_DAY else (date.fromordinal(day), miles)


def _day(ordinal: int) -> date | None:
    return None if ordinal == NO_DAY else date.fromordinal(ordinal)


def _promised(jobs: VisitColumns, places: Ids) -> dict[int, tuple[int, float, bool]]:
    """Return the days and miles of the jobs' windows by their places, and whether both must end."""
    columns = (places, jobs.window_days[places], jobs.window_miles[places], jobs.ends_both[places])
    rows = zip(*(one.tolist() for one in columns), strict=True)
    return {place: (days, miles, both) for place, days, miles, both in rows}


@lru_cache(maxsize=256)
def _window(days: int, miles: float, both: bool) -> Window:
    """Return a window; most jobs of a shop have one of very few."""
    return Window(days, miles, "both" if both else "first")


def _said(connection: Connection, look: Look, places: Ids) -> Iterator[tuple[WatchSaid, int]]:
    """Yield what stands beside the jobs, and where each one is."""
    wanted = (
        select(
            *(Job.id, Job.number, Job.concern),
            *(Visit.vehicle_id, Vehicle.vin, Vehicle.plate, Vehicle.tag, Vehicle.description),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    )
    back, waits = _met(look)
    told = _told(connection, look, places)
    last, jobs = last_opened(look.met.columns), look.jobs
    place_of: Mapping[int, int] = dict(
        zip(look.job_ids[places].tolist(), places.tolist(), strict=True)
    )
    for block in each_block(connection, wanted, Job.id, place_of):
        for job_id, number, concern, *vehicle in zip(*block, strict=True):
            place = place_of[job_id]
            seen = int(last[jobs.vehicle[place]])
            rows = told.get(job_id, ())
            told_since = next((row.came_on for row in rows if row.waits), None)
            yield (
                WatchSaid(
                    *(job_id, number, words_of(*vehicle), concern),
                    came_back=place in back or any(row.is_comeback for row in rows),
                    waits=place in waits or told_since is not None,
                    told_since=told_since,
                    seen_on=_day(seen) if seen > jobs.handed_over[place] else None,
                ),
                place,
            )


def _told(connection: Connection, look: Look, places: Ids) -> dict[int, list[ReturnRow]]:
    """Read by job what was told of the same trouble, in its order."""
    found: dict[int, list[ReturnRow]] = {}
    ids = look.job_ids[places].tolist()
    for row in read_told_rows(connection, ids, look.period.until):
        found.setdefault(row.earlier_id, []).append(row)
    return found


def _met(look: Look) -> tuple[set[int], set[int]]:
    """Return the jobs with a comeback inside their window, and those with a visit to be judged."""
    met, inside = look.met, look.met.pairs.in_window
    back, waits = (set(met.pairs.earlier[marks & inside].tolist()) for marks in
                   (met.came_back, met.waits))  # fmt: skip
    return back, waits
