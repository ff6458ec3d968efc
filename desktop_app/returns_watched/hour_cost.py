"""What an hour of work costs the shop, now and at any moment before."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, slots=True)
class HourCosts:
    """What an hour costs in cents: `now`, and up to each moment at which that was changed.

    `until` holds these moments, the oldest first, each with the cost that ended at it.
    """

    now: int
    until: tuple[tuple[datetime, int], ...] = ()

    def at(self, moment: datetime | None) -> int:
        """Return what an hour cost at a moment; what it costs now for None."""
        if moment is None:
            return self.now
        return next((cents for end, cents in self.until if moment < end), self.now)
