"""The jobs that count for a comeback rate, read from the record with what became of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, Row, Select, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.repair_jobs.stored_counted import job_is_counted
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import By
from desktop_app.returns_watched.stored_counted import counted_fates
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_group_names import (
    Grouping,
    read_group_names,
    words_of_parts,
)
from desktop_app.returns_watched.stored_many import read_many
from desktop_app.returns_watched.stored_promise import read_promise
from desktop_app.shop_record.kept_value import kept_day


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
    fates = counted_fates(connection, found, rows, today, names)
    left = [kept_day(row.left_at) for row in rows]
    return CountedJobs(
        days_gone=np.array([(today - day).days for day in left], dtype=np.int64),
        window_days=fates.window_days,
        back_after=fates.back_after,
        waits_after=fates.waits_after,
        part_kinds=tuple(kinds.get(row.id, ()) for row in rows),
        systems=tuple(row.system for row in rows),
        groups=read_group_names(connection, Grouping(by, names, part_kinds), rows, wanted, kinds),
        lost_after=fates.lost_after,
        aside_after=fates.aside_after,
        unsure_after=fates.unsure_after,
        came_later=fates.came_later,
    )


def _jobs(connection: Connection, since: date | None, last: date) -> Sequence[Row[Any]]:
    wanted: Select[*tuple[Any, ...]] = (
        select(
            *(Job.id, Job.left_at, Job.system, Job.technician_id, Visit.vehicle_id),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .where(job_is_counted())
        .order_by(Job.id)
    )
    if since is not None:
        wanted = wanted.where(Job.left_at >= since.isoformat())
    return connection.execute(wanted).all()
