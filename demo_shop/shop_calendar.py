"""The demo's calendar: its written days, moved so that the last Monday is this week's Monday."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

# The Monday on which the written story ends.
WRITTEN_MONDAY = date(2026, 9, 28)


@dataclass(frozen=True, slots=True)
class ShopCalendar:
    """Turns written days ("03-02") and hours into moments of the shop's own time.

    `now` is an aware moment. Days move by whole weeks, so that weekdays hold.
    """

    now: datetime

    @property
    def today(self) -> date:
        """The day on which the demo is made."""
        return self.now.date()

    @property
    def monday(self) -> date:
        """The Monday of the week in which the demo is made."""
        return self.today - timedelta(days=self.today.weekday())

    def day(self, written: str) -> date:
        """Return the real day of a written "month-day"."""
        month, day = (int(part) for part in written.split("-"))
        return date(WRITTEN_MONDAY.year, month, day) + (self.monday - WRITTEN_MONDAY)

    def at(self, written: str) -> datetime:
        """Return the real moment of a written "month-day hour:minute".

        "back2 15:40" is two working days before today, whatever day today is.
        """
        day, clock = written.split(" ")
        if day.startswith("back"):
            real = self.workday_before_today(int(day.removeprefix("back")))
        else:
            real = self.day(day)
        return self.moment(real, time.fromisoformat(clock))

    def moment(self, day: date, clock: time) -> datetime:
        """Return a moment on a real day, in the time zone of `now`."""
        return datetime.combine(day, clock, tzinfo=self.now.tzinfo)

    def workday_before_today(self, back: int = 1) -> date:
        """Return the day `back` working days (Monday to Friday) before today."""
        day = self.today
        while back:
            day -= timedelta(days=1)
            back -= day.weekday() < 5
        return day
