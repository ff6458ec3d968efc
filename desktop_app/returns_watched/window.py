"""The shop's promise after hand-over: so many days or so many miles."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from desktop_app.shop_record.trouble import ShopTrouble

EndsBy = Literal["first", "both"]
DecidedBy = Literal["time", "distance", "time only: odometer unknown"]

TIME_ONLY: DecidedBy = "time only: odometer unknown"


@dataclass(frozen=True, slots=True)
class Window:
    """So many days and miles after hand-over; still open on its last day and at its last mile.

    `rule` is "first" (it ends with whichever ends first) or "both" (it ends when both have ended).
    """

    days: int
    miles: float
    rule: EndsBy = "first"

    def __post_init__(self) -> None:
        if self.days < 1 or not self.miles > 0:
            raise ShopTrouble(
                f"A window of {self.days} days and {self.miles:g} miles cannot be kept.",
                do="Accepted: at least 1 day and more than 0 miles.",
            )

    def share_used(self, days: int, miles: float | None) -> float:
        """Return how much of the window is used; 1 is its last day or mile.

        It is the larger of the shares of days and miles (the smaller where both must end), and
        the days' share alone where `miles` is None.
        """
        by_time = days / self.days
        if miles is None:
            return by_time
        by_distance = miles / self.miles
        return max(by_time, by_distance) if self.rule == "first" else min(by_time, by_distance)

    def in_window(self, days: int, miles: float | None) -> bool:
        """True while the share used is at most 1."""
        return self.share_used(days, miles) <= 1

    def decided_by(self, days: int, miles: float | None) -> DecidedBy:
        """Say whether time or distance gives the share used; at a tie it is time."""
        if miles is None:
            return TIME_ONLY
        by_time, by_distance = days / self.days, miles / self.miles
        if by_time == by_distance:
            return "time"
        further = "distance" if by_distance > by_time else "time"
        nearer = "time" if further == "distance" else "distance"
        return further if self.rule == "first" else nearer  # type: ignore[return-value]

    def days_left(self, handed_over_on: date, today: date) -> int:
        """Return the days left; 0 on the last day, below 0 after it."""
        return self.days - (today - handed_over_on).days

    def miles_left(self, miles: float | None) -> float | None:
        """Return the miles left after `miles` driven, below 0 beyond the end; None if unknown."""
        return None if miles is None else self.miles - miles

    def last_day(self, handed_over_on: date) -> date:
        """Return the last day on which the window is open by time."""
        return handed_over_on + timedelta(days=self.days)


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
) -> ExpectedClose:
    """Return when a window will probably end, given the vehicle's rate in miles a day.

    `known` is the last day with a trusted reading and the miles driven since hand-over until then;
    a window used up by distance that day closes that day. Without a rate, time alone decides.
    """
    by_time = ExpectedClose(window.last_day(handed_over_on), "time")
    seen_on, driven = known if known is not None else (handed_over_on, 0.0)
    left = window.miles - driven
    if left <= 0:
        by_distance = ExpectedClose(seen_on, "distance")
    elif rate is None or rate <= 0:
        return by_time
    else:
        days = left / rate
        if days > (date.max - seen_on).days:
            return by_time if window.rule == "first" else ExpectedClose(date.max, "distance")
        by_distance = ExpectedClose(seen_on + timedelta(days=int(days)), "distance")
    pick_distance = (
        by_distance.on < by_time.on if window.rule == "first" else by_distance.on > by_time.on
    )
    return by_distance if pick_distance else by_time
