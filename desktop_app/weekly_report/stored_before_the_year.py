"""What reaches into the year from before it, read from the record."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, or_, select

from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.many_visits.windows_over import Promised as Windows
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import CHANGE_COLUMNS, kept_change
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicles import each_block, each_row
from desktop_app.shop_record.kept_value import kept_day, row_place
from desktop_app.shop_record.tables import aliased
from desktop_app.weekly_report.before_the_year import OlderJob, Promised, as_it_stood
from desktop_app.weekly_report.stored_fates import read_fates

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days: TypeAlias = NDArray[np.int64]
    Marks: TypeAlias = NDArray[np.bool_]

_EARLIER, _LATER = aliased(Job), aliased(Job)


def read_older(
    connection: Connection, look: Look, first: date, watched_from: date, met: Collection[int]
) -> Iterator[OlderJob]:
    """Yield the jobs handed over before a day whose window reaches to another one, or that met.

    `met` are the ids of jobs whose car came back in the year, and of those in their chains.
    A window that days alone cannot end reaches to any day until an odometer says that it is over.
    """
    import numpy as np

    jobs = look.jobs
    before = (jobs.handed_over != NO_DAY) & (jobs.handed_over < first.toordinal())
    counts_from = _counts_from(connection, look, before)
    reach = jobs.handed_over + counts_from >= watched_from.toordinal()
    places, known = places_among(look.job_ids, np.array(sorted(met), dtype=np.int64))
    reach[places[known]] = True
    reach &= before
    wanted = select(
        *(Job.id, Job.number, Job.left_at),
        *(Job.cause_found, Job.cause, Job.correction, Job.work),
    )
    ids = look.job_ids[reach].tolist()
    until = dict(zip(ids, counts_from[reach].tolist(), strict=True))
    if not ids:
        return
    for block in each_block(connection, wanted, Job.id, ids):
        for job_id, number, left, *done in zip(*block, strict=True):
            left_on = kept_day(left, row_place("job", job_id, number))
            yield OlderJob(number, left_on, until[job_id], is_counted(*done))


def _counts_from(connection: Connection, look: Look, before: Marks) -> Days:
    """Return the days (n,) after which each window counts as over; right for those marked.

    Odometers are asked only where days alone cannot end it.
    """
    import numpy as np

    jobs = look.jobs
    promised = Windows(jobs.window_days, jobs.window_miles, jobs.ends_both)
    days = jobs.window_days.astype(np.int64)
    by_miles = np.flatnonzero(before & ~promised.by_time_alone)
    if len(by_miles):
        days[by_miles] = read_fates(connection, look, look.job_ids[by_miles].tolist()).counts_from
    return days


def chained_before(connection: Connection, met: Collection[ReturnRow]) -> set[int]:
    """Return the ids of the jobs on which the year's returns hang and that none of them met."""
    chained = {number for row in met for number in row.candidate.chain}
    others = chained - {row.earlier for row in met}
    return {row.id for row in each_row(connection, select(Job.id), Job.number, others)}


def read_came_again(connection: Connection, look: Look, first: date) -> frozenset[str]:
    """Return the numbers of jobs handed over since a day that are comebacks and came before it."""
    jobs, met = look.jobs, look.met
    later, day = met.pairs.later, first.toordinal()
    marks = met.came_back & met.pairs.in_window & (jobs.opened[later] < day)
    marks &= (jobs.handed_over[later] != NO_DAY) & (jobs.handed_over[later] >= day)
    ids = look.job_ids[later[marks]].tolist()
    return frozenset(row.number for row in each_row(connection, select(Job.number), Job.id, ids))


def read_promised_before(connection: Connection, first: date, as_of: date) -> Iterator[Promised]:
    """Yield the promises that came from returns before a day and were open on another one."""
    wanted = (
        select(
            ReturnLink.id,
            _EARLIER.number.label("earlier"),
            _LATER.number.label("later"),
            Visit.came_at,
            ReturnLink.cause_class,
            *CHANGE_COLUMNS,
        )
        .join(_EARLIER, _EARLIER.id == ReturnLink.earlier_job_id)
        .join(_LATER, _LATER.id == ReturnLink.later_job_id)
        .join(Visit, Visit.id == _LATER.visit_id)
        .where(
            ReturnLink.same_vehicle == 1,
            or_(
                ReturnLink.change_promised != "",
                ReturnLink.change_by.is_not(None),
                ReturnLink.change_due.is_not(None),
                ReturnLink.change_check_on.is_not(None),
            ),
            Visit.came_at < first.isoformat(),
        )
        .order_by(Visit.came_at, _LATER.number, _EARLIER.number)
    )
    for row in connection.execute(wanted):
        place = row_place("return_link", row.id, row.later)
        change = as_it_stood(kept_change(row, place), as_of)
        if change.is_open(as_of):
            came_on = kept_day(row.came_at)
            yield Promised(row.earlier, row.later, came_on, row.cause_class, change)
