"""How far each job of the year was watched by distance, for the curve of returns by miles."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from statistics import median

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.year_behind import JobDone

# With fewer cars read again nobody knows how far the others go; common practice, no source.
FEWEST_READ = 10
_GOLDEN = (5**0.5 - 1) / 2


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
    that can be trusted, cut where its window ended, by distance or by time; a visit that nobody
    has judged ends what is known too.
    """
    limit = float(figures.shop.window_miles)
    by_time = figures.shop.window_rule == "first"
    waits = _miles_of_waiting(figures)
    read = {job.number: _miles(job, waits, by_time) for job in figures.year.counted}
    rates = _miles_a_day(figures, read, by_time)
    enough = len(rates) >= FEWEST_READ
    known: list[tuple[JobDone, float, bool]] = []
    left_out: list[JobDone] = []
    estimated = 0
    for job in figures.year.counted:
        until = read[job.number]
        if until is None and enough and not job.came_back and job.waits_after is None:
            gone = job.days_gone if job.lost_after is None else job.lost_after
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


def _miles(job: JobDone, waits: Mapping[str, float | None], by_time: bool) -> float | None:
    """Return how far a job's car is known to have gone, to its return or without one."""
    if job.came_back:
        return job.back_miles
    if job.waits_after is not None:
        return waits.get(job.number)
    if job.miles_known is None:
        return None
    seen = _days_seen(job)
    # Of a reading that is later than the window's last day its share of the miles, driven evenly.
    return job.miles_known * _days_inside(job, seen, by_time) / seen if seen else job.miles_known


def _miles_a_day(
    figures: WeekFigures, read: Mapping[str, float | None], by_time: bool
) -> list[float]:
    """Return what the cars that were read again drive a day, the least first."""
    rates = []
    for job in figures.year.counted:
        miles, days = read[job.number], job.back_after or job.waits_after or _days_seen(job)
        if miles is not None and days > 0:
            rates.append(miles / _days_inside(job, days, by_time))
    return sorted(rates)


def _days_inside(job: JobDone, days: int, by_time: bool) -> int:
    """Return the days as far as the job's window has any limit in time that can end it."""
    return min(days, job.window_days) if by_time and job.window_days else days


def _days_seen(job: JobDone) -> int:
    return 0 if job.known_on is None else (job.known_on - job.left_on).days


def _miles_of_waiting(figures: WeekFigures) -> dict[str, float | None]:
    """Return by job the miles to its first visit that nobody has judged."""
    found: dict[str, float | None] = {}
    for one in sorted(figures.year.returns, key=lambda one: one.row.candidate.days):
        if one.row.waits:
            found.setdefault(one.row.earlier, one.row.candidate.distance_miles)
    return found
