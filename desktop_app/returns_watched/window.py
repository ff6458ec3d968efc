"""The shop's promise after hand-over: so many days or so many miles."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from desktop_app.language import marked, tr
from desktop_app.shop_record.trouble import ShopTrouble

EndsBy = Literal["first", "both"]
DecidedBy = Literal[
    "time", "distance", "time only: odometer unknown", "not decided: odometer unknown", "sale"
]

BY_TIME: DecidedBy = marked("time")
BY_DISTANCE: DecidedBy = marked("distance")
TIME_ONLY: DecidedBy = marked("time only: odometer unknown")
NOT_DECIDED: DecidedBy = marked("not decided: odometer unknown")
SALE: DecidedBy = marked("sale")


@dataclass(frozen=True, slots=True)
class Window:
    """So many days and miles after hand-over; still open on its last day and at its last mile.

    0 days is no limit in time, 0 miles none in distance; one of the two there must be. `rule` is
    "first" (it ends with whichever ends first) or "both" (it ends when both have ended); with one
    limit alone they say the same.
    """

    days: int
    miles: float
    rule: EndsBy = "first"

    def __post_init__(self) -> None:
        if not (self.days >= 0 and self.miles >= 0 and self.days + self.miles > 0):
            raise ShopTrouble(
                tr(
                    "A window of {days} days and {miles:g} miles cannot be kept.",
                    days=self.days,
                    miles=self.miles,
                ),
                do=tr("Accepted: at least 1 day, more than 0 miles, or both. 0 is no such limit."),
            )

    @property
    def may_stay_open(self) -> bool:
        """True where time alone can never end it."""
        return self.days == 0 or (self.rule == "both" and self.miles > 0)

    def share_used(self, days: int, miles: float | None) -> float | None:
        """Return how much of the window is used; 1 is its last day or mile.

        It is the larger of the shares of days and miles (the smaller where both must end), the
        days' share alone where `miles` is None, and None where nothing else could say.
        """
        by_time, by_distance = self._shares(days, miles)
        if by_time is None or by_distance is None:
            return by_distance if by_time is None else by_time
        return max(by_time, by_distance) if self.rule == "first" else min(by_time, by_distance)

    def in_window(self, days: int, miles: float | None) -> bool:
        """True while the share used is at most 1; also where nobody can know it."""
        return holds(self.share_used(days, miles))

    def decided_by(self, days: int, miles: float | None) -> DecidedBy:
        """Say whether time or distance gives the share used; at a tie it is time."""
        by_time, by_distance = self._shares(days, miles)
        if by_distance is None:
            if by_time is None:
                return NOT_DECIDED
            return TIME_ONLY if self.miles else BY_TIME
        if by_time is None:
            return BY_DISTANCE
        if by_time == by_distance:
            return BY_TIME
        further = by_distance > by_time
        return BY_DISTANCE if further == (self.rule == "first") else BY_TIME

    def days_left(self, handed_over_on: date, today: date) -> int | None:
        """Return the days left; 0 on the last day, below 0 after it; None without such a limit."""
        return self.days - (today - handed_over_on).days if self.days else None

    def miles_left(self, miles: float | None) -> float | None:
        """Return the miles left after `miles` driven, below 0 beyond the end; None if unknown."""
        return None if miles is None or not self.miles else self.miles - miles

    def last_day(self, handed_over_on: date) -> date | None:
        """Return the last day on which the window is open by time; None without such a limit."""
        if not self.days:
            return None
        return handed_over_on + timedelta(days=min(self.days, (date.max - handed_over_on).days))

    def _shares(self, days: int, miles: float | None) -> tuple[float | None, float | None]:
        by_time = days / self.days if self.days else None
        return by_time, miles / self.miles if self.miles and miles is not None else None


def kept_window(days: int, miles: float, rule: str) -> Window:
    """Return a window as a job or the house rules keep it: what is not "both" ends by the first."""
    return Window(days, miles, "both" if rule == "both" else "first")


def holds(used: float | None) -> bool:
    """True while the share of a window that is used is at most 1, or nobody can know it."""
    return used is None or used <= 1


MAIN_WINDOW = Window(90, 3000)
LONG_WINDOW = Window(365, 12_000)


@dataclass(frozen=True, slots=True)
class ExpectedClose:
    """When a window will probably end, and by what."""

    on: date
    by: Literal["time", "distance"]


def expected_close(
    handed_over_on: date,
    window: Window,
    rate: float | None,
    known: tuple[date, float] | None = None,
) -> ExpectedClose | None:
    """Return when a window will probably end, given the vehicle's rate in miles a day.

    `known` is the last day with a trusted reading and the miles driven since hand-over until then;
    a window used up by distance that day closes that day. Without a rate, time alone decides; None
    where it has no say or the end lies beyond all calendars.
    """
    last = window.last_day(handed_over_on)
    by_time = None if last is None else ExpectedClose(last, "time")
    if not window.miles:
        return by_time
    by_distance = _by_distance(handed_over_on, window, rate, known)
    if by_time is None:
        return by_distance
    if by_distance is None:
        unknown = rate is None or rate <= 0
        return by_time if unknown or window.rule == "first" else None
    pick_distance = (
        by_distance.on < by_time.on if window.rule == "first" else by_distance.on > by_time.on
    )
    return by_distance if pick_distance else by_time


def _by_distance(
    handed_over_on: date,
    window: Window,
    rate: float | None,
    known: tuple[date, float] | None,
) -> ExpectedClose | None:
    seen_on, driven = known if known is not None else (handed_over_on, 0.0)
    left = window.miles - driven
    if left <= 0:
        return ExpectedClose(seen_on, "distance")
    if rate is None or rate <= 0 or left / rate > (date.max - seen_on).days:
        return None
    return ExpectedClose(seen_on + timedelta(days=int(left / rate)), "distance")
