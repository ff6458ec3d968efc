"""What the rules of returns know of many jobs, as columns."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.repair_jobs.odometer import RunningMiles
from desktop_app.returns_watched.many_visits.same_day import SameDay, no_same_day

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]

NO_DAY = 0  # date.toordinal() begins with 1
NO_LEG = -1


@dataclass(frozen=True, slots=True)
class Places:
    """Where odometers stood on the vehicles' running scale, (n,); NO_LEG where nobody can say."""

    leg: Whole
    miles: Column

    def at(self, job: int) -> RunningMiles | None:
        """Return one of them as the rules for one job take it."""
        leg, miles = int(self.leg[job]), float(self.miles[job])
        if leg == NO_LEG:
            return None
        return RunningMiles(leg, int(miles) if miles.is_integer() else miles)


@dataclass(frozen=True, slots=True)
class VisitColumns:
    """Jobs (n,), each in one place of all columns; days as `date.toordinal` counts them.

    `vehicle` is equal for one vehicle, 0 or more. `handed_over` and `sold` are NO_DAY where there
    is none; after `sold` a job's window is over. A window of 0 days or miles has no such limit.
    `trait_job` and `trait` (m,) list what each job has that two jobs can share: each symptom,
    system, code, family of codes and part kind is a number of its own, 0 or more. `same_day` has
    the times of the few jobs that share a day with another visit of their vehicle.
    """

    vehicle: Whole
    opened: Whole
    handed_over: Whole
    came_with: Places
    left_with: Places
    window_days: Whole
    window_miles: Column
    ends_both: Marks
    sold: Whole
    says_same: Marks
    trait_job: Whole
    trait: Whole
    same_day: SameDay = field(default_factory=no_same_day)

    @property
    def jobs(self) -> int:
        """How many jobs there are."""
        return len(self.vehicle)

    def later_visits(self, earlier: Whole, later: Whole) -> Marks:
        """Mark the pairs (k,) of jobs of a later visit, among those handed over by that day."""
        import numpy as np

        marks: Marks = self.opened[earlier] != self.opened[later]
        if len(self.same_day.job):
            one_day = np.flatnonzero(~marks)
            marks[one_day] = self.same_day.came_later(earlier[one_day], later[one_day])
        return marks

    def day(self, column: Whole, job: int) -> date | None:
        """Return the day of one job in a column of days, or None."""
        ordinal = int(column[job])
        return None if ordinal == NO_DAY else date.fromordinal(ordinal)
