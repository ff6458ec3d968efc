"""How far each job of the year was watched by distance, for the curve of returns by miles."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from statistics import median
from typing import TypeAlias

from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.year_behind import JobDone

# With fewer cars read again nobody knows how far the others go; common practice, no source.
FEWEST_READ = 10
_GOLDEN = (5**0.5 - 1) / 2
_Ended: TypeAlias = Mapping[tuple[str, int], float]
_Read: TypeAlias = tuple[float, int]  # miles, and the days in which they were driven


@dataclass(frozen=True, slots=True)
class MilesWatched:
    """Counted jobs with the miles to which each was watched, and whether it came back then.

    `estimated` are those whose odometer nobody has read since: they are taken to be driven as the
    others are, some more and some less; `miles_a_day` is what the middle car drives. To leave them
    out would count nearly all comebacks and few of the quiet cars. `left_out` came back with an
    odometer that cannot say how far. `limit` is the shop's window in miles, 0 is none.
    """

    jobs: tuple[JobDone, ...]
    miles: tuple[float, ...]
    came_back: tuple[bool, ...]
    estimated: int
    left_out: tuple[JobDone, ...]
    miles_a_day: float
    limit: float


def miles_watched(figures: WeekFigures) -> MilesWatched:
    """Return how far each counted job of the year was watched.

    A comeback counts at the miles of its visit. A job without one is watched to the last reading
    that can be trusted, cut where its window ended, by distance or by time. What ends the curve by
    days ends this one too: a visit that nobody judged or can tell, or that is not ours, the same
    trouble told, a car out of sight.
    """
    limit = float(figures.shop.window_miles)
    by_time = figures.shop.window_rule == "first"
    ended = _miles_of_ends(figures)
    read = {job.number: _read(job, ended, by_time) for job in figures.year.counted}
    # What the cars that were read again drive a day, the least first.
    rates = sorted(one[0] / one[1] for one in read.values() if one is not None and one[1])
    enough = len(rates) >= FEWEST_READ
    known: list[tuple[JobDone, float, bool]] = []
    left_out: list[JobDone] = []
    estimated = 0
    for job in figures.year.counted:
        driven = read[job.number]
        until = None if driven is None else driven[0]
        if until is None and enough and not job.came_back:
            gone = min(job.days_gone, _well_for(job))
            # The golden section spreads the jobs evenly over the rates, in whatever order they are.
            rate = rates[int(estimated * _GOLDEN % 1 * len(rates))]
            until = rate * _days_inside(job, gone, by_time)
            estimated += 1
        if until is None or not enough:
            left_out.append(job)
            continue
        most = min(job.window_miles or until, limit or until)
        known.append((job, min(until, most), job.came_back and until <= most))
    return MilesWatched(
        tuple(job for job, _, _ in known),
        tuple(miles for _, miles, _ in known),
        tuple(back for _, _, back in known),
        estimated,
        tuple(left_out),
        median(rates) if enough else 0.0,
        limit,
    )


def _read(job: JobDone, ended: _Ended, by_time: bool) -> _Read | None:
    """Return how far a job's car is known to have gone, to its return or without one."""
    days = _well_for(job)
    to_its_end = job.back_miles if job.came_back else ended.get((job.number, days))
    if job.came_back or to_its_end is not None:
        days = days if job.back_after is None else job.back_after
        return None if to_its_end is None else (to_its_end, _days_inside(job, days, by_time))
    if job.miles_known is None:
        return None
    seen = _days_seen(job)
    # Of a reading that is later than what ends the watch its share of the miles, driven evenly.
    inside = _days_inside(job, min(seen, days), by_time)
    return (job.miles_known * inside / seen if seen else job.miles_known), inside


def _well_for(job: JobDone) -> int:
    """Return for how many days a job that did not come back is known to be none that did."""
    ends = (job.waits_after, job.aside_after, job.unsure_after, job.lost_after)
    if ends == (None, None, None, None):
        return NO_LAST_DAY
    return min((day for day in ends if day is not None), default=NO_LAST_DAY)


def _days_inside(job: JobDone, days: int, by_time: bool) -> int:
    """Return the days as far as the job's window has any limit in time that can end it."""
    return min(days, job.window_days) if by_time and job.window_days else days


def _days_seen(job: JobDone) -> int:
    return 0 if job.known_on is None else (job.known_on - job.left_on).days


def _miles_of_ends(figures: WeekFigures) -> _Ended:
    """Return the miles to the visits that may end a watch, by job and days since it left.

    Of several visits of one day the first has gone the least.
    """
    ended: dict[tuple[str, int], float] = {}
    for row in (one.row for one in figures.year.returns):
        far = row.candidate.distance_miles
        if row.in_window and not row.is_comeback and far is not None:
            key = (row.earlier, row.candidate.days)
            ended[key] = min(far, ended.get(key, far))
    return ended
