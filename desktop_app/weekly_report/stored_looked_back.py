"""The jobs whose long window ended in the year of a book, read from the record in columns."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_counted import job_is_counted
from desktop_app.returns_watched.customer_answers import Answer
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.many_visits.last_known import last_known
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, Places
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_in_window import fates_in_window
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.returns_watched.window import Window
from desktop_app.weekly_report.looked_back import LookedBack

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


def look_back(connection: Connection, look: Look, window: Window, as_of: date) -> LookedBack | None:
    """Return the jobs handed over since the look begins whose window is over; None without any."""
    import numpy as np

    first, last = look.period.first, as_of - timedelta(days=window.days + 1)
    wanted = (
        select(Job.id, Job.number)
        .where(Job.left_at >= first.isoformat())
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .where(job_is_counted())
        .order_by(Job.left_at, Job.number)
    )
    blocks = list(each_block(connection, wanted))
    ids = np.array([one for found, _ in blocks for one in found], dtype=np.int64)
    if not len(ids):
        return None
    at, _ = places_among(look.job_ids, ids)
    fates = fates_in_window(connection, look.met, at, window, as_of)
    out, n = look.jobs.handed_over[at], len(ids)
    jobs = CountedJobs(
        days_gone=as_of.toordinal() - out.astype(np.int64),
        window_days=fates.window_days,
        back_after=fates.back_after,
        waits_after=fates.waits_after,
        part_kinds=((),) * n,
        systems=("",) * n,
        groups=((),) * n,
        lost_after=fates.lost_after,
        aside_after=fates.aside_after,
        unsure_after=fates.unsure_after,
        came_later=fates.came_later,
    )
    numbers = tuple(number for _, found in blocks for number in found)
    return LookedBack(first, last, numbers, jobs, _heard_after(connection, look, at, as_of))


def _heard_after(connection: Connection, look: Look, at: Ids, as_of: date) -> Ids:
    """Return the days to the last news of each job's car (n,): seen, read, or told to be well."""
    import numpy as np

    jobs = look.jobs
    out, vehicle = jobs.handed_over[at], jobs.vehicle[at]
    keys = np.sort((look.came.vehicle.astype(np.int64) << 32) | look.came.day)
    before = (vehicle.astype(np.int64) << 32) | as_of.toordinal()
    came = np.concatenate([[-1], keys])[np.searchsorted(keys, before, "right")]
    seen = np.where(came >> 32 == vehicle, came & 0xFFFFFFFF, out)
    left_with = Places(jobs.left_with.leg[at], jobs.left_with.miles[at])
    read = last_known(look.odometers.taken, vehicle, out, left_with).day
    heard = np.maximum(seen, np.where(read == NO_DAY, out, read)).astype(np.int64)
    answers = read_answers(connection, look.job_ids[at].tolist())
    for place, job_id in enumerate(look.job_ids[at].tolist() if answers else ()):
        for said in answers.get(job_id, ()):
            if said.answer is Answer.FINE and said.on <= as_of:
                heard[place] = max(heard[place], said.on.toordinal())
    after: Ids = np.maximum(heard - out, 0)
    return after
