"""Where a job stands, worked out from dates, miles and judgements; never typed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from desktop_app.language import marked
from desktop_app.returns_watched.window import Window


class Standing(StrEnum):
    """The eleven places where a job can stand."""

    HEARD = marked("heard")
    ON_THE_BENCH = marked("on the bench")
    BACK_ON = marked("back on")
    UNDER_WATCH = marked("under watch")
    SEEN_FINE = marked("seen fine")
    NOTHING_HEARD = marked("nothing heard")
    LOST_SIGHT = marked("lost sight")
    CAME_BACK = marked("came back")
    NOT_OURS = marked("came back, not ours")
    CANNOT_TELL = marked("came back, cannot tell")
    CAME_LATER = marked("came back after the window")


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

    A visit that waits for judgement is no sighting; `waits` says that there is one, or that the
    customer tells of the same trouble. `not_ours` is True where it came back in its window for a
    reason that is not ours, `unsure` where a person judged such a visit and nobody can tell,
    `came_later` where it came with a reason after its window. `lost_on` is
    the day from which the car cannot be followed (its customer says that it is gone, or a sale
    ended the window the day before). `followed` is False where no reading can be held against the
    odometer that it left with; it matters only where time alone does not end the window.
    """

    window: Window
    on_bench: bool = False
    back_on: bool = False
    handed_over_on: date | None = None
    sightings: tuple[Sighting, ...] = ()
    came_back: bool = False
    waits: bool = False
    not_ours: bool = False
    unsure: bool = False
    came_later: bool = False
    lost_on: date | None = None
    followed: bool = True


def stands(course: JobCourse, today: date) -> Standing:
    """Say where a job stands today. On the last day of its window it is still under watch."""
    out = course.handed_over_on
    if out is None or out > today:
        if course.back_on:
            return Standing.BACK_ON
        return Standing.ON_THE_BENCH if course.on_bench else Standing.HEARD
    lost = course.lost_on if course.lost_on is not None and course.lost_on <= today else None
    seen = [one for one in _seen(course, out, today) if lost is None or one.on < lost]
    last = open_until(course.window, out, furthest(seen), followed=course.followed)
    return became(
        course,
        seen_fine=last is not None and any(one.on > last for one in seen),
        lost=lost is not None and (last is None or lost <= last),
        is_open=last is None or today <= last,
    )


def became(course: JobCourse, *, seen_fine: bool, lost: bool, is_open: bool) -> Standing:
    """Say what became of a job that was handed over; what was judged goes before all else."""
    if course.came_back:
        return Standing.CAME_BACK
    if course.waits:
        return Standing.UNDER_WATCH
    if course.not_ours:
        return Standing.NOT_OURS
    if course.unsure:
        return Standing.CANNOT_TELL
    if course.came_later:
        return Standing.CAME_LATER
    if seen_fine:
        return Standing.SEEN_FINE
    if lost:
        return Standing.LOST_SIGHT
    return Standing.UNDER_WATCH if is_open else Standing.NOTHING_HEARD


def window_is_open(course: JobCourse, today: date) -> bool:
    """True where the job was handed over and its window is not known to have ended."""
    out = course.handed_over_on
    if out is None or out > today:
        return False
    seen = furthest(_seen(course, out, today))
    last = open_until(course.window, out, seen, followed=course.followed)
    return last is None or today <= last


def open_until(
    window: Window, out: date, known: Sighting | None, *, followed: bool = True
) -> date | None:
    """Return the last day on which a window is open; None where it is not known to end.

    `known` is the trusted reading with the most miles. Miles that nobody has read end nothing: a
    window that both limits must end, or that has none in time, stays open until they are read. Time
    alone decides where no reading can be held against the odometer that the car left with.
    """
    by_time = window.last_day(out)
    driven = known is not None and known.miles is not None and 0 < window.miles < known.miles
    by_miles = known.on - timedelta(days=1) if driven and known is not None else None
    if by_miles is None:
        return None if window.may_stay_open and followed and window.miles else by_time
    if by_time is None:
        return by_miles
    return min(by_time, by_miles) if window.rule == "first" else max(by_time, by_miles)


def furthest(seen: list[Sighting]) -> Sighting | None:
    """Return the sighting with the most miles, the first of them; None where none has any."""
    read = [one for one in seen if one.miles is not None]
    return max(read, key=lambda one: (one.miles or 0.0, -one.on.toordinal()), default=None)


def _seen(course: JobCourse, out: date, today: date) -> list[Sighting]:
    return [seen for seen in course.sightings if out <= seen.on <= today]
