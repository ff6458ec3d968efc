"""When a window will probably end, with the days that hold it with 95 %."""

from __future__ import annotations

from datetime import date
from typing import Literal, NamedTuple

from desktop_app.repair_jobs.rate_of_use import RateOfUse, driven_by
from desktop_app.returns_watched.window import Window


class ProbableEnd(NamedTuple):
    """The day on which a window will probably end, the bounds that hold it, and what ends it."""

    on: date
    earliest: date
    latest: date
    by: Literal["time", "distance"]

    @property
    def certain(self) -> bool:
        """True where one day alone is possible."""
        return self.earliest == self.latest

    def not_after(self, day: date | None) -> ProbableEnd:
        """Return the end cut off at a day, on which the window ends for another reason."""
        if day is None or self.latest <= day:
            return self
        on, earliest = min(self.on, day), min(self.earliest, day)
        return ProbableEnd(on, earliest, day, self.by if self.on <= day else "time")


def probable_end(
    handed_over_on: date,
    window: Window,
    use: RateOfUse | None,
    known: tuple[date, float] | None,
) -> ProbableEnd | None:
    """Return when a window will probably end, at a vehicle's rate of use.

    `known` is the last day with a trusted reading and the miles driven from the hand-over until
    then, None where the distance cannot be followed: time alone decides then. None where time has
    no say either. At a tie it is time.
    """
    last = window.last_day(handed_over_on)
    by_time = None if last is None else ProbableEnd(last, last, last, "time")
    by_distance = _by_distance(window, use, known)
    if by_time is None or by_distance is None:
        return by_distance if by_time is None else by_time
    both = by_time, by_distance
    pick = min if window.rule == "first" else max
    on = pick(one.on for one in both)
    return ProbableEnd(
        on=on,
        earliest=pick(one.earliest for one in both),
        latest=pick(one.latest for one in both),
        by="time" if on == by_time.on else "distance",
    )


def _by_distance(
    window: Window, use: RateOfUse | None, known: tuple[date, float] | None
) -> ProbableEnd | None:
    if not window.miles or use is None or known is None:
        return None
    seen_on, driven = known
    found = driven_by(seen_on, window.miles - driven, use)
    return ProbableEnd(found.on, found.earliest, found.latest, "distance")
