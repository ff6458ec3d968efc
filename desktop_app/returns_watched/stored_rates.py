"""The jobs that count for a comeback rate, read from the record with what became of them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, Row, Select, func, or_, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, JobSymptom, Person, Visit
from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, NO_LAST_DAY, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, By
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_many import read_many
from desktop_app.returns_watched.stored_returns import read_promise
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import kept_day

BLANK = " \t\r\n"


def read_counted_jobs(
    connection: Connection,
    by: By,
    today: date,
    since: date | None = None,
    until: date | None = None,
    names: SymptomNames = NO_NAMES,
) -> CountedJobs:
    """Read the jobs handed over with a cause and a correction from `since` to `until`.

    All is seen as of `today`, what came later is left out; a judgement counts whenever it was
    made. Only parts that were fitted say which kinds of part a job had, and from whom they came.
    `names` gives symptom groups their plain names.
    """
    import numpy as np

    last = today if until is None else min(today, until)
    rows = _jobs(connection, since, last)
    wanted = None if since is None and last == today else [row.id for row in rows]
    kinds = _words_by_job(connection, Pair.part_kind, wanted)
    back, waits = _first_visits(connection, rows, today, wanted is None, names)
    left = [kept_day(row.left_at) for row in rows]
    return CountedJobs(
        days_gone=np.array([(today - day).days for day in left], dtype=np.int64),
        window_days=np.array([row.window_days or NO_LAST_DAY for row in rows], dtype=np.int64),
        back_after=np.array([back.get(row.id, NEVER) for row in rows], dtype=np.int64),
        waits_after=np.array([waits.get(row.id, NEVER) for row in rows], dtype=np.int64),
        part_kinds=tuple(kinds.get(row.id, ()) for row in rows),
        systems=tuple(row.system for row in rows),
        groups=_groups(connection, by, rows, wanted, kinds, names),
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


def _first_visits(
    connection: Connection,
    rows: Sequence[Row[Any]],
    today: date,
    every: bool,
    names: SymptomNames,
) -> tuple[dict[int, int], dict[int, int]]:
    """Return by job the days to its first comeback, and to its first visit that nobody judged."""
    import numpy as np

    vehicles = None if every else {row.vehicle_id for row in rows}
    found = read_many(connection, vehicles, today, read_promise(connection).long, names)
    firsts = []
    for marks in (found.came_back, found.waits):
        some = found.only(marks & found.pairs.in_window).pairs
        order = np.argsort(-some.days, kind="stable")  # the soonest comes last, and stays
        jobs = found.columns.job_ids[some.earlier[order]].tolist()
        firsts.append(dict(zip(jobs, some.days[order].tolist(), strict=True)))
    return firsts[0], firsts[1]


def _groups(
    connection: Connection,
    by: By,
    rows: Sequence[Row[Any]],
    wanted: Sequence[int] | None,
    kinds: Mapping[int, tuple[str, ...]],
    names: SymptomNames,
) -> tuple[tuple[str, ...], ...]:
    """Return for each job the names under which it counts; several where it had several parts."""
    said: Mapping[int, tuple[str, ...]]
    if by == "technician":
        people = {row.id: row.name for row in connection.execute(select(Person.id, Person.name))}
        said = {row.id: (people.get(row.technician_id, ""),) for row in rows}
    elif by == "system":
        said = {row.id: (row.system,) for row in rows}
    elif by == "part-kind":
        said = kinds
    elif by == "supplier":
        said = _words_by_job(connection, Pair.supplier, wanted)
    else:
        heard = select(JobSymptom.job_id, JobSymptom.symptom)
        found = each_row(connection, heard, JobSymptom.job_id, wanted)
        said = _by_job((row.job_id, names.get(row.symptom, row.symptom)) for row in found)
    shown: dict[str, str] = {}
    return tuple(_shown(said.get(row.id, ()), shown) for row in rows)


def _shown(words: Iterable[str], shown: dict[str, str]) -> tuple[str, ...]:
    """Return names as they were first written; case and spaces make no other group."""
    tidy = (" ".join(word.split()) for word in words)
    found = dict.fromkeys(shown.setdefault(word.casefold(), word) for word in tidy if word)
    return tuple(found) or (NOT_SAID,)


def _words_by_job(
    connection: Connection, column: Any, wanted: Sequence[int] | None
) -> dict[int, tuple[str, ...]]:
    fitted = select(Pair.job_id, column).where(Pair.fitted == 1)
    return _by_job(each_row(connection, fitted, Pair.job_id, wanted))


def _by_job(rows: Iterable[Any]) -> dict[int, tuple[str, ...]]:
    found: dict[int, set[str]] = {}
    for job_id, word in rows:
        found.setdefault(job_id, set()).add(word)
    return {job_id: tuple(sorted(words)) for job_id, words in found.items()}
