"""Where a job stands, worked out from dates, miles and judgements; never typed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop_app.returns_watched.window import Window, expected_close


class Standing(StrEnum):
    """The eight places where a job can stand."""

    HEARD = "heard"
    ON_THE_BENCH = "on the bench"
    BACK_ON = "back on"
    UNDER_WATCH = "under watch"
    SEEN_FINE = "seen fine"
    NOTHING_HEARD = "nothing heard"
    LOST_SIGHT = "lost sight"
    CAME_BACK = "came back"


@dataclass(frozen=True, slots=True)
class Sighting:
    """The car was seen, or its customer asked, and nothing was wrong with our repair.

    `miles` is the distance since hand-over; None where the odometer cannot say.
    """

    on: date
    miles: float | None = None


@dataclass(frozen=True, slots=True)
class JobCourse:
    """What is known about the course of one job.

    A visit that waits for judgement is no sighting; `waits` says that there is one. `lost_on` is
    the day from which the car cannot be followed (its customer says that it is gone, or a sale
    ended the window the day before). `rate` is its use in miles a day and matters only where time
    alone does not end the window.
    """

    window: Window
    on_bench: bool = False
    back_on: bool = False
    handed_over_on: date | None = None
    sightings: tuple[Sighting, ...] = ()
    came_back: bool = False
    waits: bool = False
    lost_on: date | None = None
    rate: float | None = None


def stands(course: JobCourse, today: date) -> Standing:
    """Say where a job stands today. On the last day of its window it is still under watch."""
    out = course.handed_over_on
    if out is None or out > today:
        if course.back_on:
            return Standing.BACK_ON
        return Standing.ON_THE_BENCH if course.on_bench else Standing.HEARD
    if course.came_back:
        return Standing.CAME_BACK
    if course.waits:
        return Standing.UNDER_WATCH
    lost = course.lost_on
    seen = (one for one in _seen(course, out, today) if lost is None or one.on < lost)
    if any(_ended_by(course, out, one) for one in seen):
        return Standing.SEEN_FINE
    if lost is not None and lost <= today and not _ended_on(course, out, lost):
        return Standing.LOST_SIGHT
    return Standing.NOTHING_HEARD if _ended_on(course, out, today) else Standing.UNDER_WATCH


def window_is_open(course: JobCourse, today: date) -> bool:
    """True where the job was handed over and its window is not known to have ended."""
    out = course.handed_over_on
    if out is None or out > today or _ended_on(course, out, today):
        return False
    return not any(_ended_by(course, out, seen) for seen in _seen(course, out, today))


def _seen(course: JobCourse, out: date, today: date) -> tuple[Sighting, ...]:
    return tuple(seen for seen in course.sightings if out <= seen.on <= today)


def _ended_by(course: JobCourse, out: date, seen: Sighting) -> bool:
    return not course.window.in_window((seen.on - out).days, seen.miles)


def _ended_on(course: JobCourse, out: date, day: date) -> bool:
    """True where the window has ended by that day without anyone reading the odometer."""
    last = course.window.last_day(out)
    if last is not None and day <= last:
        return False
    if not course.window.may_stay_open:
        return True
    read = [(s.on, s.miles) for s in _seen(course, out, day) if s.miles is not None]
    known = max(read) if read else None
    close = expected_close(out, course.window, course.rate, known)
    return close is not None and day > close.on
