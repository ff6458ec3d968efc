"""What became of the year's jobs, from one look at the record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, same_trouble_since
from desktop_app.returns_watched.many_visits.last_known import last_known
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, Places
from desktop_app.returns_watched.many_visits.windows_over import (
    Promised,
    counted_days,
    open_days,
)
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.weekly_report.job_fate import JobFate

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]

_Days: TypeAlias = Mapping[int, date]


def read_fates(connection: Connection, look: Look, job_ids: Sequence[int]) -> Iterator[JobFate]:
    """Yield what became of each of the jobs, in their order; all are among the look's."""
    import numpy as np

    places, _ = places_among(look.job_ids, np.array(job_ids, dtype=np.int64))
    jobs, of = look.jobs, look.jobs.vehicle[places]
    out = jobs.handed_over[places]
    left_with = Places(jobs.left_with.leg[places], jobs.left_with.miles[places])
    known = last_known(look.odometers.taken, of, out, left_with)
    lost = lost_days(connection, look.met.columns, places, look.period.until)
    days = {day: date.fromordinal(day) for day in {*out.tolist(), *look.came.day.tolist()}}
    came = _came(look, of, out, days)
    told = _told(connection, job_ids, look.period.until)
    promised = Promised(jobs.window_days[places], jobs.window_miles[places], jobs.ends_both[places])
    until = open_days(promised, out, known, lost)
    rows = zip(
        *(job_ids, out.tolist(), came, lost.tolist()),
        *(known.miles.tolist(), known.day.tolist()),
        *(until.tolist(), counted_days(promised, until).tolist()),
        strict=True,
    )
    for job_id, left, seen, lost_on, miles, known_on, open_until, counts_from in rows:
        left_on, said = days[left], told.get(job_id, ())
        yield JobFate(
            left_on=left_on,
            came=seen,
            told_fine=_fine(said, left_on) if said else (),
            told_same=same_trouble_since(said) if said else None,
            lost_on=None if lost_on == NO_DAY else date.fromordinal(lost_on),
            miles_known=None if known_on == NO_DAY else miles,
            known_on=None if known_on == NO_DAY else date.fromordinal(known_on),
            open_until=open_until,
            counts_from=counts_from,
        )


def _came(look: Look, vehicle: Whole, out: Whole, days: _Days) -> Iterator[tuple[date, ...]]:
    """Yield on which days the car of each job came after it left, in their order."""
    import numpy as np

    order = np.lexsort((look.came.day, look.came.vehicle))
    of, day = look.came.vehicle[order].astype(np.int64), look.came.day[order]
    keys = (of << 32) | day
    begin = np.searchsorted(keys, (vehicle.astype(np.int64) << 32) | out, "right").tolist()
    end = np.searchsorted(of, vehicle, "right").tolist()
    came = day.tolist()
    for start, stop in zip(begin, end, strict=True):
        yield tuple(days[one] for one in came[start:stop]) if stop > start else ()


def _told(
    connection: Connection, job_ids: Sequence[int], until: date
) -> dict[int, tuple[CustomerSaid, ...]]:
    answers = read_answers(connection, job_ids)
    return {job: tuple(one for one in said if one.on <= until) for job, said in answers.items()}


def _fine(said: Sequence[CustomerSaid], left_on: date) -> tuple[date, ...]:
    return tuple(one.on for one in said if one.answer is Answer.FINE and one.on >= left_on)
