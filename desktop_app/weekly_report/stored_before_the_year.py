"""What reaches into the year from before it, read from the record."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from datetime import date

from sqlalchemy import Connection, or_, select
from sqlalchemy.orm import aliased

from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import CHANGE_COLUMNS, kept_change
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.shop_record.kept_value import kept_day, row_place
from desktop_app.weekly_report.before_the_year import OlderJob, Promised, as_it_stood

_EARLIER, _LATER = aliased(Job), aliased(Job)


def read_older(
    connection: Connection, look: Look, first: date, watched_from: date, met: Collection[int]
) -> Iterator[OlderJob]:
    """Yield the jobs handed over before a day whose window reaches to another one, or that met.

    `met` are the ids of jobs whose car came back in the year. A window without a limit in time
    reaches to any day.
    """
    import numpy as np

    jobs = look.jobs
    reach = (jobs.window_days == 0) | (
        jobs.handed_over.astype(np.int64) + jobs.window_days >= watched_from.toordinal()
    )
    places, known = places_among(look.job_ids, np.array(sorted(met), dtype=np.int64))
    reach[places[known]] = True
    reach &= (jobs.handed_over != NO_DAY) & (jobs.handed_over < first.toordinal())
    wanted = select(
        *(Job.id, Job.number, Job.left_at, Job.window_days),
        *(Job.cause_found, Job.cause, Job.correction),
    )
    ids = look.job_ids[reach].tolist()
    if not ids:
        return
    for block in each_block(connection, wanted, Job.id, ids):
        for job_id, number, left, days, *done in zip(*block, strict=True):
            left_on = kept_day(left, row_place("job", job_id, number))
            yield OlderJob(number, left_on, days, is_counted(*done))


def read_promised_before(connection: Connection, first: date, as_of: date) -> Iterator[Promised]:
    """Yield the promises that came from returns before a day and were open on another one."""
    wanted = (
        select(
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
        change = as_it_stood(kept_change(row), as_of)
        if change.is_open(as_of):
            came_on = kept_day(row.came_at)
            yield Promised(row.earlier, row.later, came_on, row.cause_class, change)
