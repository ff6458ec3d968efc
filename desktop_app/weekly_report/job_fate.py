"""What became of a job after its hand-over, from what is known of its car."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.year_behind import State


class JobFate(NamedTuple):
    """What was seen and told of a job's car since it left, until the day that is looked from.

    `came` are the days on which it came, `told_fine` those on which its customer said so, in their
    order. `lost_on` is the day from which nobody can say any more. `miles_known` are those of the
    last trusted reading, on `known_on`.
    """

    left_on: date
    came: tuple[date, ...] = ()
    told_fine: tuple[date, ...] = ()
    lost_on: date | None = None
    miles_known: float | None = None
    known_on: date | None = None

    def well_until(self, back: ReturnRow | None, waits: ReturnRow | None) -> date | None:
        """Return the last day on which the car was seen or its customer said that all is well.

        A comeback, or a visit that waits for a judgement, ends what seeing the car can say.
        """
        seen = self.came
        if back is not None or waits is not None:
            ill = min(row.came_on for row in (back, waits) if row is not None)
            seen = tuple(day for day in seen if day < ill)
        return max((*self.told_fine[-1:], *seen[-1:]), default=None)

    def lost_after(self, window_days: int) -> int | None:
        """Return the days after which nobody could say any more, inside the window's days."""
        if self.lost_on is None:
            return None
        days = (self.lost_on - self.left_on).days
        return days if not window_days or days <= window_days else None

    def state(
        self,
        back: ReturnRow | None,
        waits: ReturnRow | None,
        window_days: int,
        is_open: bool,
        last: date,
    ) -> State:
        """Say what became of the job; what a person said of its visits goes before all else."""
        if back is not None:
            return "came back"
        if waits is not None:
            return "maybe"
        if self.lost_on is not None and self.lost_after(window_days) is not None:
            return "lost sight"
        if self.came or self.told_fine:
            well = self.well_until(None, None)
            days = window_days or (last - self.left_on).days
            if well is not None and (well - self.left_on).days > days:
                return "seen fine"
        return "open" if is_open else "nothing heard"
