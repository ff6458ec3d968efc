"""What became of the jobs that count, in columns: over, back, waiting, set aside, out of sight."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, TypeAlias

from sqlalchemy import Connection, Row, Select, select

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.many_visits.last_known import LastKnown
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.many_visits.windows_over import Promised, counted_days, open_days
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_known import read_known
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_many import ManyMet
from desktop_app.returns_watched.stored_told import read_told
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_visit_rows import read_hand_over

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days: TypeAlias = NDArray[np.int64]
    Marks: TypeAlias = NDArray[np.bool_]
    Whole: TypeAlias = NDArray[np.int32]

_NOT_OURS = [cause.id for cause in RETURN_CAUSES if not cause.ours]


@dataclass(frozen=True, slots=True)
class CountedFates:
    """The columns (n,) of the same names in `CountedJobs`."""

    window_days: Days
    back_after: Days
    waits_after: Days
    lost_after: Days
    aside_after: Days
    unsure_after: Days
    came_later: Marks


def counted_fates(
    connection: Connection, found: ManyMet, rows: Sequence[Row[Any]], today: date
) -> CountedFates:
    """Return what became of some jobs by a day; each row has its `id` and `vehicle_id`."""
    import numpy as np

    jobs = found.columns.jobs
    ids = np.array([row.id for row in rows], dtype=np.int64)
    at, known_here = places_among(found.columns.job_ids, ids)
    if not known_here.all():  # handed over by then, of a visit that came later
        read_hand_over(connection, int(ids[~known_here][0]))
    out = jobs.handed_over[at]
    promised = Promised(jobs.window_days[at], jobs.window_miles[at], jobs.ends_both[at])
    lost = lost_days(connection, found.columns, at, today)
    odd = np.flatnonzero(~promised.by_time_alone | (lost != NO_DAY))
    known = _known(connection, rows, ids, odd, today)
    open_until = open_days(promised, out, known, lost)
    lost_after = lost.astype(np.int64) - out
    lost_inside = (lost != NO_DAY) & (lost_after <= open_until)
    inside, pairs = found.pairs.in_window, found.pairs
    aside, unsure = set_aside(connection, found)
    waits = first_days(found, found.waits & inside)[at]
    later = np.zeros(jobs.jobs, dtype=bool)
    later[pairs.earlier[~inside & (found.waits | found.came_back)]] = True
    told_later = add_told(told_open(connection, found, today), at, out, open_until, waits)
    return CountedFates(
        window_days=counted_days(promised, open_until),
        back_after=first_days(found, found.came_back & inside)[at],
        waits_after=waits,
        lost_after=np.where(lost_inside, np.maximum(lost_after - 1, 0), NEVER),
        aside_after=first_days(found, aside & inside)[at],
        unsure_after=first_days(found, unsure & inside)[at],
        came_later=later[at] | told_later,
    )


def first_days(found: ManyMet, marks: Marks) -> Days:
    """Return for each job that was read the days to the first of its marked pairs, or NEVER."""
    import numpy as np

    first = np.full(found.columns.jobs.jobs, NEVER, dtype=np.int64)
    some = found.pairs.only(marks)
    order = np.argsort(-some.days, kind="stable")  # the soonest comes last, and stays
    first[some.earlier[order]] = some.days[order]
    return first


def _known(
    connection: Connection, rows: Sequence[Row[Any]], ids: Days, odd: Days, today: date
) -> LastKnown:
    """Return what odometers say of the odd jobs; of the others time alone is asked."""
    import numpy as np

    day = np.full(len(ids), NO_DAY, dtype=np.int32)
    known = LastKnown(day, np.full(len(ids), np.nan), day.copy(), np.zeros(len(ids), dtype=bool))
    if len(odd):
        vehicles = {rows[place].vehicle_id for place in odd.tolist()}
        read = read_known(connection, vehicles, ids[odd], today)
        known.day[odd], known.miles[odd] = read.day, read.miles
        known.read[odd], known.lost[odd] = read.read, read.lost
    return known


def set_aside(connection: Connection, found: ManyMet) -> tuple[Marks, Marks]:
    """Mark the pairs judged by a cause that is not ours, and those that nobody can tell."""
    judged = select(ReturnLink.earlier_job_id, ReturnLink.later_job_id).where(
        ReturnLink.judgement.is_not(None), ReturnLink.same_vehicle == 1
    )
    unsure = judged.where(ReturnLink.judgement == Judgement.CANNOT_TELL.value)
    aside = _linked(connection, found, judged.where(ReturnLink.cause_class.in_(_NOT_OURS)))
    return aside, _linked(connection, found, unsure) & ~aside


def _linked(connection: Connection, found: ManyMet, wanted: Select[int, int]) -> Marks:
    import numpy as np

    linked = [tuple(row) for row in connection.execute(wanted)]
    places, known = places_among(
        found.columns.job_ids, np.array(linked, dtype=np.int64).reshape(-1, 2)
    )
    of, many = places[known.all(axis=1)], found.columns.jobs.jobs
    keys = found.pairs.earlier.astype(np.int64) * many + found.pairs.later
    marks: Marks = np.isin(keys, of[:, 0] * many + of[:, 1])
    return marks


def told_open(connection: Connection, found: ManyMet, today: date) -> Iterator[tuple[int, int]]:
    """Yield the jobs, by their places, of which the same trouble is told, and since which day.

    A later visit that was judged, or waits to be, speaks for the car: as `told_and_open` says it.
    """
    import numpy as np

    told = {one.job_id: one.since.toordinal() for one in read_told(connection, date.min, today)}
    if not told:
        return
    pairs, jobs = found.pairs.only(found.pairs.in_window | ~found.waits), found.columns.jobs
    spoken = np.full(jobs.jobs, NO_DAY, dtype=np.int64)
    np.maximum.at(spoken, pairs.earlier, jobs.opened[pairs.later])
    places, known = places_among(found.columns.job_ids, np.array([*told], dtype=np.int64))
    for place, is_known, since in zip(places.tolist(), known.tolist(), told.values(), strict=True):
        if is_known and spoken[place] < since:
            yield place, since


def add_told(
    told: Iterable[tuple[int, int]], at: Days, out: Whole, open_until: Days, waits: Days
) -> Marks:
    """Put the same trouble told inside the window among what waits; mark what was told later."""
    import numpy as np

    later = np.zeros(len(at), dtype=bool)
    for place, since in told:
        for row in np.flatnonzero(at == place).tolist():
            days = since - int(out[row])
            if days > open_until[row]:
                later[row] = True
            elif waits[row] == NEVER or days < waits[row]:
                waits[row] = days
    return later
