"""What became of the year's jobs, from one look at the record."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.many_visits.last_known import LastKnown, last_known
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, Places
from desktop_app.returns_watched.many_visits.windows_over import (
    Promised,
    counted_days,
    open_days,
)
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_lost import lost_days
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.weekly_report.job_fate import Became, JobFate, quiet_state

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]

_Said: TypeAlias = Mapping[int, tuple[CustomerSaid, ...]]


@dataclass(frozen=True, slots=True)
class Fates:
    """Jobs (n,) in columns: when each left, what is known of its car, and until when it was open.

    Days on which cars came are those from `begin` to `end` of `came`; `told` is what customers
    said, by job.
    """

    job_ids: Sequence[int]
    last: date
    out: Whole
    known: LastKnown
    lost: Whole
    open_until: Days
    counts_from: Days
    came: Days
    begin: Days
    end: Days
    told: _Said

    def of(self, row: int) -> JobFate:
        """Return what is known of one of them."""
        left_on = date.fromordinal(int(self.out[row]))
        said = self.told.get(self.job_ids[row], ())
        lost_on, known_on = int(self.lost[row]), int(self.known.day[row])
        came = self.came[self.begin[row] : self.end[row]].tolist()
        return JobFate(
            left_on=left_on,
            came=tuple(date.fromordinal(day) for day in came),
            told_fine=_fine(said, left_on),
            lost_on=None if lost_on == NO_DAY else date.fromordinal(lost_on),
            miles_known=None if known_on == NO_DAY else float(self.known.miles[row]),
            known_on=None if known_on == NO_DAY else date.fromordinal(known_on),
            open_until=int(self.open_until[row]),
            counts_from=int(self.counts_from[row]),
        )

    def columns(self) -> dict[str, list[Any]]:
        """Return what is known of all of them, by the names that `JobDone` has for it."""
        out, known = self.out.tolist(), self.known.day.tolist()
        days = {day: date.fromordinal(day) for day in {*out, *known} - {NO_DAY}}
        miles = zip(known, self.known.miles.tolist(), strict=True)
        return {
            "left_on": [days[day] for day in out],
            "days_gone": (self.last.toordinal() - self.out).tolist(),
            "counts_from": self.counts_from.tolist(),
            "known_on": [days.get(day) for day in known],
            "miles_known": [None if day == NO_DAY else far for day, far in miles],
        }

    def became(self, met: Mapping[int, tuple[ReturnRow, ...]]) -> list[Became]:
        """Say what became of each until the last day, `met` by its returns, seen and told.

        Most jobs met nothing, and nobody told anything of them: those are looked at all at once.
        """
        import numpy as np

        came = np.append(self.came, NO_DAY)[np.where(self.end > self.begin, self.end - 1, -1)]
        seen = np.maximum(came, self.known.day) > self.out + self.open_until
        is_open = self.last.toordinal() - self.out <= self.open_until
        states = {(a, b): quiet_state(a, b) for a in (False, True) for b in (False, True)}
        days = {day: date.fromordinal(day) for day in set(came.tolist()) - {NO_DAY}}
        cases = zip(seen.tolist(), is_open.tolist(), came.tolist(), strict=True)
        found = [Became(states[a, b], days.get(day)) for a, b, day in cases]
        some = np.array([*self.told, *met], dtype=np.int64)
        loud = np.isin(np.array(self.job_ids, dtype=np.int64), some) | (self.lost != NO_DAY)
        for row in np.flatnonzero(loud).tolist():
            found[row] = self.of(row).became(met.get(self.job_ids[row], ()), self.last)
        return found


def read_fates(connection: Connection, look: Look, job_ids: Sequence[int]) -> Fates:
    """Read what is known of jobs since they left; all are among the look's."""
    import numpy as np

    places, _ = places_among(look.job_ids, np.array(job_ids, dtype=np.int64))
    jobs, of = look.jobs, look.jobs.vehicle[places]
    out = jobs.handed_over[places]
    left_with = Places(jobs.left_with.leg[places], jobs.left_with.miles[places])
    known = last_known(look.odometers.taken, of, out, left_with)
    lost = lost_days(connection, look.met.columns, places, look.period.until)
    promised = Promised(jobs.window_days[places], jobs.window_miles[places], jobs.ends_both[places])
    until = open_days(promised, out, known, lost)
    came = np.sort((look.came.vehicle.astype(np.int64) << 32) | look.came.day)
    own = of.astype(np.int64) << 32
    return Fates(
        job_ids=job_ids,
        last=look.period.until,
        out=out,
        known=known,
        lost=lost,
        open_until=until,
        counts_from=counted_days(promised, until),
        came=came & 0xFFFFFFFF,
        begin=np.searchsorted(came, own | out, "right"),
        end=np.searchsorted(came, own + (1 << 32), "left"),
        told=_told(connection, job_ids, look.period.until),
    )


def _told(connection: Connection, job_ids: Sequence[int], until: date) -> _Said:
    answers = read_answers(connection, job_ids)
    return {job: tuple(one for one in said if one.on <= until) for job, said in answers.items()}


def _fine(said: Sequence[CustomerSaid], left_on: date) -> tuple[date, ...]:
    return tuple(one.on for one in said if one.answer is Answer.FINE and one.on >= left_on)
