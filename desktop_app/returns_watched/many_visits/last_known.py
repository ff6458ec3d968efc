"""How far vehicles are known to have gone since their jobs left, by their last trusted reading."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.repair_jobs.odometer import MOST_MILES_A_DAY
from desktop_app.returns_watched.many_visits.running_places import ReadingColumns
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, NO_LEG, Places

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Taken:
    """Readings (r,) by vehicle and in the order they were taken, on their running scales.

    `stood_until` is the day on which the visit ended that each belongs to, NO_DAY where nobody
    knows it.
    """

    readings: ReadingColumns
    places: Places
    stood_until: Whole

    def of(self, vehicle: Whole) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
        """Return where the readings of vehicles begin, and where they end."""
        import numpy as np

        return (
            np.searchsorted(self.readings.vehicle, vehicle, "left"),
            np.searchsorted(self.readings.vehicle, vehicle, "right"),
        )

    def trusted(self) -> Taken:
        """Return the readings that have a place on a running scale."""
        known = self.places.leg != NO_LEG
        places = Places(self.places.leg[known], self.places.miles[known])
        return Taken(self.readings.only(known), places, self.stood_until[known])


@dataclass(frozen=True, slots=True)
class LastKnown:
    """What the readings after hand-overs (n,) say.

    `day` and `miles` are those of the last trusted one, NO_DAY and NaN where there is none; `read`
    is the day of the vehicle's last reading, trusted or not, NO_DAY where there is none. `lost`
    marks the jobs since which an odometer was replaced, or which left with none to go by, so that
    no reading can be held against them.
    """

    day: Whole
    miles: Column
    read: Whole
    lost: Marks


def last_known(taken: Taken, vehicle: Whole, out: Whole, left_with: Places) -> LastKnown:
    """Return what is known since jobs (n,) left on their days `out`, as `sightings_since` says it.

    The last sighting with miles is also the one with the most of them: trusted readings only rise.
    """
    import numpy as np

    begin, end = taken.of(vehicle)
    read = np.full(len(vehicle), NO_DAY, dtype=np.int32)
    some = end > begin
    read[some] = taken.readings.day[end[some] - 1]
    trusted = taken.trusted()
    day, miles = _last_fitting(trusted, vehicle, out, left_with)
    return LastKnown(day, miles, read, _lost(trusted, vehicle, out, left_with))


def _last_fitting(
    trusted: Taken, vehicle: Whole, out: Whole, left_with: Places
) -> tuple[Whole, Column]:
    import numpy as np

    day, miles = np.full(len(vehicle), NO_DAY, dtype=np.int32), np.full(len(vehicle), np.nan)
    begin, end = trusted.of(vehicle)
    at = end - 1
    left = np.flatnonzero((left_with.leg != NO_LEG) & (at >= begin))
    while len(left):
        left = left[trusted.readings.day[at[left]] > out[left]]
        here = at[left]
        days = trusted.readings.day[here] - out[left]
        driven = trusted.places.miles[here] - left_with.miles[left]
        fits = trusted.places.leg[here] == left_with.leg[left]
        fits &= (driven >= 0) & (driven <= MOST_MILES_A_DAY * np.maximum(days, 1))
        day[left[fits]], miles[left[fits]] = trusted.readings.day[here[fits]], driven[fits]
        left = left[~fits]
        at[left] -= 1
        left = left[at[left] >= begin[left]]
    return day, miles


def _lost(trusted: Taken, vehicle: Whole, out: Whole, left_with: Places) -> Marks:
    import numpy as np

    lost: Marks = left_with.leg == NO_LEG
    changed = np.unique(trusted.readings.vehicle[trusted.places.leg > 0])
    begin, end = trusted.of(vehicle)
    for job in np.flatnonzero(np.isin(vehicle, changed) & ~lost).tolist():
        own = slice(int(begin[job]), int(end[job]))
        after = trusted.readings.day[own] > out[job]
        lost[job] = (trusted.places.leg[own][after] != left_with.leg[job]).any()
    return lost
