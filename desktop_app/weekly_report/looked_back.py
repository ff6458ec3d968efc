"""The jobs that left before the year of a book, for a window longer than the year can see."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days = NDArray[np.int64]
    Marks = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class LookedBack:
    """Counted jobs (n,) handed over from `first` to `last`: the window is over for all of them.

    `jobs` says what became of them in that window. `heard_after` (n,) are the days to the last day
    on which the car was seen or read, or its customer said that all is well; 0 where never.
    """

    first: date
    last: date
    numbers: tuple[str, ...]
    jobs: CountedJobs
    heard_after: Days

    def unheard(self) -> Marks:
        """Mark those that were quiet, and of which nothing was heard since (n,)."""
        quiet = self.jobs.settled & ~self.jobs.came_back
        marks: Marks = quiet & (self.heard_after <= self.jobs.window_days)
        return marks

    def silent(self) -> Days:
        """Return how many days each was watched (n,), the quiet ones to the last news alone."""
        import numpy as np

        ages, _ = self.jobs.watched()
        silent: Days = np.where(self.unheard(), np.minimum(ages, self.heard_after), ages)
        return silent
