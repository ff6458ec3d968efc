"""One look at the newest end of the record: what the lists and the book are made from together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, exists, select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.many_visits.many_candidates import many_candidates
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, VisitColumns
from desktop_app.returns_watched.stored_lost import last_days
from desktop_app.returns_watched.stored_many import Links, ManyMet, met_in
from desktop_app.returns_watched.stored_moments import Days
from desktop_app.returns_watched.stored_odometers import WithOdometers, with_odometers
from desktop_app.returns_watched.stored_recent import Period, read_recent, widened
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes, read_vehicle_codes
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.returns_watched.window import Window

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Came:
    """Visits (v,) since a day: the vehicles' numbers, and the days on which they came."""

    vehicle: Whole
    day: Whole


@dataclass(frozen=True, slots=True)
class Look:
    """The jobs of a period with the odometers that matter, and the pairs among them."""

    period: Period
    vehicles: VehicleCodes
    odometers: WithOdometers
    met: ManyMet
    came: Came

    @property
    def job_ids(self) -> Ids:
        """The jobs, by rising id."""
        return self.met.columns.job_ids

    @property
    def jobs(self) -> VisitColumns:
        """The same jobs in columns."""
        return self.met.columns.jobs


def look_at(
    connection: Connection, period: Period, long_window: Window, names: Mapping[str, str]
) -> Look:
    """Read what the period's returns, open windows and ended ones need, each thing once.

    Odometers are read where they can decide something: where two jobs may meet, where a window may
    be open on the last day, and where the car of a job handed over in the period came again.
    """
    vehicles = read_vehicle_codes(connection, None, period.until)
    columns = read_recent(connection, period, vehicles, names)
    came = _came(connection, period, vehicles, columns.jobs)
    links = Links(connection, columns)
    asked = may_be_open(columns.jobs, period.until)
    asked |= _seen_again(columns.jobs, came, period)
    perhaps = many_candidates(widened(columns.jobs), long_window, links.places(links.judged))
    asked[perhaps.earlier] = True
    odometers = with_odometers(connection, columns, asked, vehicles, period.until)
    met = met_in(odometers.columns, long_window, links)
    return Look(period, vehicles, odometers, met, came)


def may_be_open(jobs: VisitColumns, on: date) -> Marks:
    """Mark the jobs (n,) that were handed over and whose time is not over on a day."""
    day = on.toordinal()
    open_yet = (jobs.window_days == 0) | (jobs.handed_over + jobs.window_days >= day)
    open_yet |= jobs.ends_both & (jobs.window_miles > 0)
    marks: Marks = open_yet & (jobs.handed_over != NO_DAY)
    return marks


def _came(
    connection: Connection, period: Period, vehicles: VehicleCodes, jobs: VisitColumns
) -> Came:
    """Return all visits of the period: those of its jobs, and those that have no job at all."""
    import numpy as np

    wanted = select(Visit.id, Visit.vehicle_id, Visit.came_at)
    wanted = wanted.where(Visit.came_at >= period.first.isoformat())
    wanted = wanted.where(~exists().where(Job.visit_id == Visit.id))
    days, found = Days(), GrowingColumns("ii")
    for ids, of, came in each_block(connection, wanted):
        codes = vehicles.codes[vehicles.places(np.array(of))].tolist()
        found.add(codes, days.alone(came, "visit", ids))
    vehicle, day = (
        np.concatenate(both)
        for both in zip(found.joined(), (jobs.vehicle, jobs.opened), strict=True)
    )
    seen = (day >= period.first.toordinal()) & (day <= period.until.toordinal())
    return Came(vehicle[seen], day[seen])


def _seen_again(jobs: VisitColumns, came: Came, period: Period) -> Marks:
    """Mark jobs handed over in the period whose car came or left later."""
    import numpy as np

    many = int(max(jobs.vehicle.max(initial=0), came.vehicle.max(initial=0))) + 1
    last = np.maximum(
        last_days(came.vehicle, came.day, many), last_days(jobs.vehicle, jobs.handed_over, many)
    )
    marks: Marks = last[jobs.vehicle] > jobs.handed_over
    marks &= jobs.handed_over >= period.since.toordinal()
    return marks
