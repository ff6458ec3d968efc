"""Jobs of vehicles that came more than once on a day: the few of which the time of day matters."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]

NO_CLOCK = -(2**62)  # before all times: where only the day is known


@dataclass(frozen=True, slots=True)
class SameDay:
    """Such jobs (t,) by their rising places in the columns, with their times in seconds of UTC.

    `came` and `left` are NO_CLOCK where only the day is known; `apart` marks the jobs of a day
    of which the clock knows when each visit came.
    """

    job: Whole
    came: Ids
    left: Ids
    apart: Marks

    def came_later(self, earlier: Whole, later: Whole) -> Marks:
        """Mark the pairs (k,) of jobs opened on one day of which `came_later` holds."""
        import numpy as np

        marks = np.zeros(len(earlier), dtype=bool)
        if len(self.job):
            then, known = self._at(earlier)
            now, known_too = self._at(later)
            left = self.left[then]
            marks = known & known_too & (left != NO_CLOCK)
            marks &= (left < self.came[now]) & (self.came[then] <= left)
        return marks

    def times(self, job: int) -> tuple[int | None, int | None, bool]:
        """Return one job's times, and whether its day's visits are told apart, as for one job."""
        import numpy as np

        at = int(np.searchsorted(self.job, job))
        if at == len(self.job) or self.job[at] != job:
            return None, None, False
        came, left = int(self.came[at]), int(self.left[at])
        return (
            None if came == NO_CLOCK else came,
            None if left == NO_CLOCK else left,
            bool(self.apart[at]),
        )

    def _at(self, jobs: Whole) -> tuple[Ids, Marks]:
        import numpy as np

        at = np.minimum(np.searchsorted(self.job, jobs), len(self.job) - 1)
        return at, self.job[at] == jobs


def no_same_day() -> SameDay:
    """Return what there is where no vehicle came more than once on a day."""
    import numpy as np

    none = np.zeros(0, dtype=np.int64)
    return SameDay(np.zeros(0, dtype=np.int32), none, none, np.zeros(0, dtype=bool))


def shared_days(vehicle: Whole, day: Whole) -> Marks:
    """Mark the visits (v,) of vehicles that came more than once on that day."""
    import numpy as np

    keys = _days_of(vehicle, day)
    keys.sort()
    twice = np.unique(keys[1:][keys[1:] == keys[:-1]])
    if not len(twice):
        return np.zeros(len(vehicle), dtype=bool)
    keys = _days_of(vehicle, day)
    at = np.minimum(np.searchsorted(twice, keys), len(twice) - 1)
    marks: Marks = twice[at] == keys
    return marks


def _days_of(vehicle: Whole, day: Whole) -> Ids:
    import numpy as np

    keys = vehicle.astype(np.int64)
    keys <<= 32
    keys |= day
    return keys
