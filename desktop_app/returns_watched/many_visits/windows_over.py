"""Until when the windows of many jobs were open, as `open_until` says it of one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.returns_watched.many_visits.last_known import LastKnown
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Promised:
    """Windows (n,): their days and miles, 0 is no such limit, and whether both must end."""

    days: Whole
    miles: Column
    both: Marks

    @property
    def by_time_alone(self) -> Marks:
        """Those that a count may take by their days: time ends each of them at the latest."""
        marks: Marks = (self.days > 0) & ~(self.both & (self.miles > 0))
        return marks


def open_days(promised: Promised, out: Whole, known: LastKnown, lost_on: Whole) -> Days:
    """Return the last day (n,) on which each window is open, counted from the hand-over `out`.

    NO_LAST_DAY where it is not known to end. A reading after the car went out of sight says
    nothing: another owner drove it.
    """
    import numpy as np

    by_time = np.where(promised.days > 0, promised.days, NO_LAST_DAY).astype(np.int64)
    driven = (known.day != NO_DAY) & ((lost_on == NO_DAY) | (known.day < lost_on))
    driven &= (promised.miles > 0) & (np.nan_to_num(known.miles) > promised.miles)
    by_miles = known.day.astype(np.int64) - out - 1
    both = promised.both & (promised.days > 0)
    ended = np.where(both, np.maximum(by_time, by_miles), np.minimum(by_time, by_miles))
    waits = both & (promised.miles > 0) & ~known.lost
    return np.where(driven, ended, np.where(waits, NO_LAST_DAY, by_time))


def counted_days(promised: Promised, open_until: Days) -> Days:
    """Return the days (n,) after which each job counts as settled, NO_LAST_DAY where unknown.

    A window that time ends at the latest is over by its days, though distance ended it sooner: a
    quick comeback enters together with its quiet neighbours.
    """
    import numpy as np

    return np.where(promised.by_time_alone, promised.days, open_until).astype(np.int64)
