"""Where a job on watch stands in its window, and the way that it will probably take."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.repair_jobs.rate_of_use import driven_by
from desktop_app.returns_watched.watching import WatchedJob

Spot = tuple[float | None, float | None]
Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class PlanePath:
    """A job in shares of its own window, (days, distance): 1 is the last day, the last mile.

    `spot` is where it is expected today; None where its window has no such limit, or where the
    distance cannot be followed. `read` is the last reading, and `ahead` where the promised distance
    will be used up: expected, at the earliest and at the latest (95 %). Both are None where either
    share is unknown; `ahead` also where the distance is used up already.
    """

    spot: Spot
    read: Point | None = None
    ahead: tuple[Point, Point, Point] | None = None


def plane_path(job: WatchedJob, today: date) -> PlanePath:
    """Return a job's place and way in the plane of days and distance."""
    window = job.window
    days = job.days_gone / window.days if window.days else None
    gone = job.miles_expected(today)
    if not window.miles or gone is None or job.known is None or job.use is None:
        return PlanePath((days, None))
    far = gone / window.miles
    if days is None:
        return PlanePath((None, far))
    read_on, read = job.known
    start = ((read_on - job.left_on).days / window.days, read / window.miles)
    if read >= window.miles:
        return PlanePath((days, far), start)
    found = driven_by(read_on, window.miles - read, job.use)
    on, early, late = (
        ((day - job.left_on).days / window.days, 1.0)
        for day in (found.on, found.earliest, found.latest)
    )
    return PlanePath((days, far), start, (on, early, late))
