"""What became of the jobs that count, in columns: over, back, waiting, set aside, out of sight."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, TypeAlias

from sqlalchemy import Connection, Row, Select, select

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.many_visits.last_known import LastKnown
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.many_visits.windows_over import Promised, counted_days, open_days
from desktop_app.returns_watched.met_by import met_by
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_known import read_known
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_many import ManyMet
from desktop_app.returns_watched.stored_told import read_told_rows
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_visit_rows import read_hand_over

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days: TypeAlias = NDArray[np.int64]
    Marks: TypeAlias = NDArray[np.bool_]

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
    connection: Connection,
    found: ManyMet,
    rows: Sequence[Row[Any]],
    today: date,
    names: SymptomNames = NO_NAMES,
) -> CountedFates:
    """Return what became of some jobs by a day; each row has its `id` and `vehicle_id`.

    `names` are those by which the pairs were `found`.
    """
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
    later = np.zeros(jobs.jobs, dtype=bool)
    later[pairs.earlier[~inside & (found.waits | found.came_back)]] = True
    fates = CountedFates(
        window_days=counted_days(promised, open_until),
        back_after=first_days(found, found.came_back & inside)[at],
        waits_after=first_days(found, found.waits & inside)[at],
        lost_after=np.where(lost_inside, np.maximum(lost_after - 1, 0), NEVER),
        aside_after=first_days(found, aside & inside)[at],
        unsure_after=first_days(found, unsure & inside)[at],
        came_later=later[at],
    )
    return with_told(fates, ids, read_told_rows(connection, ids.tolist(), today, names))


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
    aside = linked(connection, found, judged.where(ReturnLink.cause_class.in_(_NOT_OURS)))
    return aside, linked(connection, found, unsure) & ~aside


def linked(connection: Connection, found: ManyMet, wanted: Select[int, int]) -> Marks:
    """Mark the pairs whose two ids, the earlier job's first, a statement finds."""
    import numpy as np

    linked = [tuple(row) for row in connection.execute(wanted)]
    places, known = places_among(
        found.columns.job_ids, np.array(linked, dtype=np.int64).reshape(-1, 2)
    )
    of, many = places[known.all(axis=1)], found.columns.jobs.jobs
    keys = found.pairs.earlier.astype(np.int64) * many + found.pairs.later
    marks: Marks = np.isin(keys, of[:, 0] * many + of[:, 1])
    return marks


def with_told(fates: CountedFates, ids: Days, told: Iterable[ReturnRow]) -> CountedFates:
    """Put what was told of some jobs among what became of them, by the rule of `met_by`.

    `ids` (n,) are the jobs; a return that was told counts from the day on which it was told.
    """
    import numpy as np

    of: dict[int, list[ReturnRow]] = {}
    for row in told:
        of.setdefault(row.earlier_id, []).append(row)
    for place in np.flatnonzero(np.isin(ids, list(of))).tolist():
        met = met_by(of[int(ids[place])])
        for days, first in (
            (fates.back_after, met.back),
            (fates.waits_after, met.waits),
            (fates.aside_after, met.aside),
            (fates.unsure_after, met.unsure),
        ):
            if first is not None:  # NEVER is below all days
                known = (int(days[place]), first.candidate.days)
                days[place] = min(one for one in known if one != NEVER)
        fates.came_later[place] |= met.later is not None
    return fates
