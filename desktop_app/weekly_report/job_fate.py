"""What became of a job after its hand-over, from what is known of its car."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.returns_watched.met_by import MetBy, met_by
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.standing import JobCourse, Standing, became
from desktop_app.returns_watched.window import MAIN_WINDOW
from desktop_app.weekly_report.year_behind import State

_IN_THE_BOOK: dict[Standing, State] = {
    Standing.CAME_BACK: "came back",
    Standing.NOT_OURS: "came back, not ours",
    Standing.CANNOT_TELL: "came back, cannot tell",
    Standing.CAME_LATER: "came back after the window",
    Standing.SEEN_FINE: "seen fine",
    Standing.LOST_SIGHT: "lost sight",
    Standing.NOTHING_HEARD: "nothing heard",
}


class Became(NamedTuple):
    """What became of a job, by the names that `JobDone` has for it."""

    state: State
    well_until: date | None = None
    back_after: int | None = None
    waits_after: int | None = None
    aside_after: int | None = None
    unsure_after: int | None = None
    back_miles: float | None = None
    in_sight: int | None = None
    lost_after: int | None = None


class JobFate(NamedTuple):
    """What was seen and told of a job's car since it left, until the day that is looked from.

    `came` are the days on which it came, `told_fine` those on which its customer said so, in their
    order. `lost_on` is the day from which nobody can say any more. `miles_known` are those of the
    last trusted reading, on `known_on`. `open_until` is the last day of its window and
    `counts_from` the one after which it counts as settled, in days since it left, NO_LAST_DAY where
    nobody knows.
    """

    left_on: date
    came: tuple[date, ...] = ()
    told_fine: tuple[date, ...] = ()
    lost_on: date | None = None
    miles_known: float | None = None
    known_on: date | None = None
    open_until: int = NO_LAST_DAY
    counts_from: int = NO_LAST_DAY

    def became(self, rows: tuple[ReturnRow, ...], last: date) -> Became:
        """Say what became of the job until a day, by its returns, seen and told."""
        by = met_by(rows)
        return Became(
            state=self.state(by, last),
            well_until=self.well_until(by),
            back_after=_days_to(by.back),
            waits_after=_days_to(by.waits),
            aside_after=_days_to(by.aside),
            unsure_after=_days_to(by.unsure),
            back_miles=None if by.back is None else by.back.candidate.distance_miles,
            in_sight=self.in_sight(),
            lost_after=self.lost_after(),
        )

    def well_until(self, met: MetBy) -> date | None:
        """Return the last day on which the car was seen or its customer said that all is well.

        A visit that has a reason, or that was judged a comeback, ends what seeing the car can say,
        and so does the same trouble told.
        """
        if not self.came and not self.told_fine:
            return None
        rows = (met.back, met.waits, met.aside, met.unsure, met.later)
        ill = min((row.came_on for row in rows if row is not None), default=date.max)
        seen = next((day for day in reversed(self.came) if day < ill), None)
        fine = next((day for day in reversed(self.told_fine) if day < ill), None)
        return max((day for day in (seen, fine) if day is not None), default=None)

    def in_sight(self) -> int | None:
        """Return the days until its car was last in sight, whenever it was lost."""
        return None if self.lost_on is None else max(0, (self.lost_on - self.left_on).days - 1)

    def is_inside(self, days: int | None) -> bool:
        """True where so many days after it left its window was open; False where nobody says."""
        return days is not None and days <= self.open_until

    def lost_after(self) -> int | None:
        """Return the days until its car was last in sight, where it was lost in its window."""
        lost = None if self.lost_on is None else (self.lost_on - self.left_on).days
        return self.in_sight() if self.is_inside(lost) else None

    def state(self, met: MetBy, last: date) -> State:
        """Say what became of the job by the rule of its own page, `became`."""
        course = JobCourse(
            MAIN_WINDOW,
            came_back=met.back is not None,
            waits=met.waits is not None,
            not_ours=met.aside is not None,
            unsure=met.unsure is not None,
            came_later=met.later is not None,
        )
        return _named(
            course,
            seen_fine=self._seen_after(self.open_until),
            lost=self.lost_after() is not None,
            is_open=(last - self.left_on).days <= self.open_until,
        )

    def _seen_after(self, days: int) -> bool:
        """True where the car was seen, read or told fine later than so many days after it left."""
        read = () if self.known_on is None else (self.known_on,)
        return any(
            (day - self.left_on).days > days and (self.lost_on is None or day < self.lost_on)
            for day in (*self.came, *self.told_fine, *read)
        )


def quiet_state(seen_fine: bool, is_open: bool) -> State:
    """Say what became of a job that met no other, whose car is in sight, and nobody told more."""
    return _named(JobCourse(MAIN_WINDOW), seen_fine=seen_fine, lost=False, is_open=is_open)


def _named(course: JobCourse, *, seen_fine: bool, lost: bool, is_open: bool) -> State:
    standing = became(course, seen_fine=seen_fine, lost=lost, is_open=is_open)
    if standing is Standing.UNDER_WATCH:
        return "maybe" if course.waits else "open"
    return _IN_THE_BOOK[standing]


def _days_to(met: ReturnRow | None) -> int | None:
    return None if met is None else met.candidate.days
