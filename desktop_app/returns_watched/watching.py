"""A job on watch: what is left of its window, and when that will probably end."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal, TypedDict

from desktop_app.repair_jobs.odometer import RunningMiles, miles_between
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.standing import JobCourse, Sighting, window_is_open
from desktop_app.returns_watched.window import MAIN_WINDOW, Window, expected_close

Readings = Sequence[tuple[date, RunningMiles | None]]


class WatchJson(TypedDict):
    """A job on watch as the `watch` command prints it."""

    job: str
    vehicle: str
    days_left: int
    miles_left: float | None
    expected_close: str
    expected_close_by: Literal["time", "distance"]


@dataclass(frozen=True, slots=True)
class WatchedJob:
    """A job whose window is open today.

    `miles_gone` is what the last trusted reading since the hand-over says, read on `read_on`; None
    where the odometer cannot say. `came_back` is True where a comeback was judged already.
    """

    job_id: int
    job: str
    vehicle: str
    concern: str
    left_on: date
    window: Window
    days_gone: int
    miles_gone: float | None
    read_on: date | None
    days_left: int
    miles_left: float | None
    expected_close: date
    expected_close_by: Literal["time", "distance"]
    came_back: bool = False
    waits: bool = False

    @property
    def share_used(self) -> float:
        """How much of the window is used, 0 to 1, by what is known."""
        return self.window.share_used(self.days_gone, self.miles_gone)

    def as_json(self) -> WatchJson:
        """Return the fields of the command contract."""
        return {
            "job": self.job,
            "vehicle": self.vehicle,
            "days_left": self.days_left,
            "miles_left": self.miles_left,
            "expected_close": self.expected_close.isoformat(),
            "expected_close_by": self.expected_close_by,
        }


@dataclass(frozen=True, slots=True)
class WatchSaid:
    """What stands beside a watched job and is not worked out: its id and its words."""

    job_id: int
    vehicle: str
    concern: str
    came_back: bool = False
    waits: bool = False


def watched(
    job: JobFacts, said: WatchSaid, readings: Readings, rate: float | None, today: date
) -> WatchedJob | None:
    """Return the job as it is watched today, or None where its window is not open.

    `readings` are those of its vehicle until today, on the running scale; `rate` is the vehicle's
    use in miles a day.
    """
    out = job.handed_over_on
    if out is None:
        return None
    window = job.window or MAIN_WINDOW
    sightings = tuple(sightings_since(job, out, readings))
    course = JobCourse(window, handed_over_on=out, sightings=sightings, rate=rate)
    if not window_is_open(course, today):
        return None
    known = max(((s.on, s.miles) for s in sightings if s.miles is not None), default=None)
    if known is None and job.odometer_out is not None:
        known = (out, 0.0)
    gone = None if known is None or _unread_since(readings, known[0]) else known[1]
    close = expected_close(out, window, rate, known)
    return WatchedJob(
        job_id=said.job_id,
        job=job.number,
        vehicle=said.vehicle,
        concern=said.concern,
        left_on=out,
        window=window,
        days_gone=(today - out).days,
        miles_gone=gone,
        read_on=None if gone is None or known is None else known[0],
        days_left=window.days_left(out, today),
        miles_left=window.miles_left(gone),
        expected_close=close.on,
        expected_close_by=close.by,
        came_back=said.came_back,
        waits=said.waits,
    )


def what_ends_first(jobs: Iterable[WatchedJob]) -> tuple[WatchedJob, ...]:
    """Return the jobs in the order in which their windows will probably end."""
    return tuple(sorted(jobs, key=lambda job: (job.expected_close, job.days_left, job.job)))


def sightings_since(job: JobFacts, out: date, readings: Readings) -> Iterable[Sighting]:
    """Yield when the car was seen after it left, with the miles since, where they are known."""
    for on, place in readings:
        if on > out:
            miles = miles_between(job.odometer_out, place, (on - out).days)
            if miles is not None:
                yield Sighting(on, miles)


def _unread_since(readings: Readings, known_on: date) -> bool:
    """Tell whether the odometer was replaced, or gave no sense, after the last trusted reading."""
    return any(on > known_on for on, _ in readings)
