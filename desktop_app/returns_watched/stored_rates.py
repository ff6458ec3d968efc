"""The jobs that count for a comeback rate, read from the record with what became of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Row, Select, func, or_, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, NO_LAST_DAY, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import By
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored_columns import RecordColumns
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_group_names import (
    Grouping,
    read_group_names,
    words_of_parts,
)
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_many import ManyMet, read_many
from desktop_app.returns_watched.stored_returns import read_promise
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.shop_record.kept_value import kept_day

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

BLANK = " \t\r\n"


def read_counted_jobs(
    connection: Connection,
    by: By,
    today: date,
    since: date | None = None,
    until: date | None = None,
    names: SymptomNames = NO_NAMES,
    part_kinds: Mapping[str, PartKind] | None = None,
) -> CountedJobs:
    """Read the jobs handed over with a cause and a correction from `since` to `until`.

    All is seen as of `today`, what came later is left out; a judgement counts whenever it was
    made. Only parts that were fitted say which kinds of part a job had, and from whom they came.
    `names` gives symptom groups their plain names; `part_kinds` judge the pairs by "verdict".
    """
    import numpy as np

    last = today if until is None else min(today, until)
    rows = _jobs(connection, since, last)
    wanted = None if since is None and last == today else [row.id for row in rows]
    kinds = words_of_parts(connection, Pair.part_kind, wanted)
    vehicles = None if wanted is None else {row.vehicle_id for row in rows}
    found = read_many(connection, vehicles, today, read_promise(connection).long, names)
    back, waits = _first_visits(found)
    left = [kept_day(row.left_at) for row in rows]
    return CountedJobs(
        days_gone=np.array([(today - day).days for day in left], dtype=np.int64),
        window_days=np.array([row.window_days or NO_LAST_DAY for row in rows], dtype=np.int64),
        back_after=np.array([back.get(row.id, NEVER) for row in rows], dtype=np.int64),
        waits_after=np.array([waits.get(row.id, NEVER) for row in rows], dtype=np.int64),
        part_kinds=tuple(kinds.get(row.id, ()) for row in rows),
        systems=tuple(row.system for row in rows),
        lost_after=_lost_after(connection, found.columns, rows, today),
        groups=read_group_names(connection, Grouping(by, names, part_kinds), rows, wanted, kinds),
    )


def _jobs(connection: Connection, since: date | None, last: date) -> Sequence[Row[Any]]:
    wanted: Select[*tuple[Any, ...]] = (
        select(
            Job.id, Job.left_at, Job.window_days, Job.system, Job.technician_id, Visit.vehicle_id
        )
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .where(func.trim(Job.cause, BLANK) != "", func.trim(Job.correction, BLANK) != "")
        .where(or_(Job.cause_found.is_(None), Job.cause_found != 0))
        .order_by(Job.id)
    )
    if since is not None:
        wanted = wanted.where(Job.left_at >= since.isoformat())
    return connection.execute(wanted).all()


def _first_visits(found: ManyMet) -> tuple[dict[int, int], dict[int, int]]:
    """Return by job the days to its first comeback, and to its first visit that nobody judged."""
    import numpy as np

    firsts = []
    for marks in (found.came_back, found.waits):
        some = found.only(marks & found.pairs.in_window).pairs
        order = np.argsort(-some.days, kind="stable")  # the soonest comes last, and stays
        jobs = found.columns.job_ids[some.earlier[order]].tolist()
        firsts.append(dict(zip(jobs, some.days[order].tolist(), strict=True)))
    return firsts[0], firsts[1]


def _lost_after(
    connection: Connection, columns: RecordColumns, rows: Sequence[Row[Any]], today: date
) -> NDArray[np.int64]:
    """Return the days after which a job's car was sold or gone, NEVER where it is in sight."""
    import numpy as np

    ids = np.array([row.id for row in rows], dtype=np.int64)
    places, _ = places_among(columns.job_ids, ids)
    lost = lost_days(connection, columns, places, today)
    return np.where(lost == NO_DAY, NEVER, lost - columns.jobs.handed_over[places]).astype(np.int64)
