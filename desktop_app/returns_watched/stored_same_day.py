"""The times of day of the visits that share a day with another one of their vehicle."""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.later_visit import clock_of
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.same_day import (
    NO_CLOCK,
    SameDay,
    no_same_day,
    shared_days,
)
from desktop_app.returns_watched.stored_vehicles import each_row

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]

CameAt = tuple[Hashable, str]  # a vehicle, and the kept moment at which it came


def days_told_apart(visits: Iterable[CameAt]) -> dict[CameAt, bool]:
    """Return the days on which a vehicle came more than once, given all visits.

    True stands with those of which the clock knows when each of the visits came.
    """
    came: dict[CameAt, list[str]] = {}
    for vehicle, at in visits:
        came.setdefault((vehicle, at[:10]), []).append(at)
    return {
        one: all(clock_of(at) is not None for at in several)
        for one, several in came.items()
        if len(several) > 1
    }


def read_same_day(
    connection: Connection,
    job_ids: Ids,
    visit: Whole,
    visit_vehicle: Whole,
    visit_day: Whole,
) -> SameDay:
    """Read the times of the jobs (n,) by rising id that share a day with another visit's.

    `visit` is the place of each job's among the visits (v,).
    """
    import numpy as np

    shared = shared_days(visit_vehicle, visit_day)
    if not shared.any():
        return no_same_day()
    jobs = np.flatnonzero(shared[visit]).astype(np.int32)
    wanted = select(Job.id, Visit.came_at, Job.left_at).join(Visit, Visit.id == Job.visit_id)
    rows = {row.id: row for row in each_row(connection, wanted, Job.id, job_ids[jobs].tolist())}
    kept = [rows[job] for job in job_ids[jobs].tolist()]
    came = _clocks(row.came_at for row in kept)
    left = _clocks(row.left_at for row in kept)
    days = np.stack((visit_vehicle[visit[jobs]], visit_day[visit[jobs]]))
    _, group = np.unique(days, axis=1, return_inverse=True)
    unknown = np.bincount(group.ravel()[came == NO_CLOCK], minlength=len(jobs))
    return SameDay(jobs, came, left, unknown[group.ravel()] == 0)


def _clocks(moments: Iterable[str | None]) -> Ids:
    import numpy as np

    clocks = (clock_of(at) for at in moments)
    return np.array([NO_CLOCK if one is None else one for one in clocks], dtype=np.int64)
