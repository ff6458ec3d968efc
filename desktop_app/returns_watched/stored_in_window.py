"""What became of jobs in one window that is the same for all of them, in columns."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER
from desktop_app.returns_watched.many_visits.many_candidates import inside_of
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored_counted import (
    CountedFates,
    first_days,
    set_aside,
    with_told,
)
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_many import ManyMet
from desktop_app.returns_watched.stored_told import read_told_rows
from desktop_app.returns_watched.told_return import in_other_window
from desktop_app.returns_watched.window import Window

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


def fates_in_window(
    connection: Connection,
    found: ManyMet,
    at: Ids,
    window: Window,
    today: date,
    names: SymptomNames = NO_NAMES,
) -> CountedFates:
    """Return what became of the jobs at some places (n,) in a window that time ends at the latest.

    It is what `jobs_in_window` says of the jobs of a week's book.
    """
    import numpy as np

    jobs = found.columns.jobs
    out = jobs.handed_over[at]
    days = np.full(len(at), window.days, dtype=np.int64)
    inside = inside_of(jobs, found.pairs, window)
    aside, unsure = set_aside(connection, found)
    lost = lost_days(connection, found.columns, at, today)
    lost_after = lost.astype(np.int64) - out
    lost_inside = (lost != NO_DAY) & (lost_after <= days)
    fates = CountedFates(
        window_days=days,
        back_after=first_days(found, found.came_back & inside)[at],
        waits_after=first_days(found, found.waits & inside)[at],
        lost_after=np.where(lost_inside, np.maximum(lost_after - 1, 0), NEVER),
        aside_after=first_days(found, aside & inside)[at],
        unsure_after=first_days(found, unsure & inside)[at],
        came_later=np.zeros(len(at), dtype=bool),
    )
    ids = found.columns.job_ids[at]
    told = read_told_rows(connection, ids.tolist(), today, names)
    return with_told(fates, ids, (in_other_window(row, window) for row in told))
