"""Which of many jobs may be returns of which: what `all_candidates` finds, all at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.repair_jobs.odometer import MOST_MILES_A_DAY
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.many_visits.sharing_pairs import sharing_pairs
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, NO_LEG, VisitColumns
from desktop_app.returns_watched.window import Window

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]

_FOREVER = 2**31 - 2
_AT_ONCE = 500_000  # pairs that are put together in one step


@dataclass(frozen=True, slots=True)
class ManyCandidates:
    """Pairs of jobs (k,), by the places of the earlier and the later one in the columns.

    `days` lie between hand-over and return; `in_window` marks the pairs in the main window.
    """

    earlier: Whole
    later: Whole
    days: Whole
    in_window: Marks

    def only(self, marks: Marks) -> ManyCandidates:
        """Return the pairs that are marked."""
        return ManyCandidates(
            self.earlier[marks], self.later[marks], self.days[marks], self.in_window[marks]
        )


def many_candidates(
    jobs: VisitColumns, long_window: Window, judged: tuple[Whole, Whole] | None = None
) -> ManyCandidates:
    """Return each pair of a job and a later one that the rules propose or a person judged, once.

    They are the pairs that `all_candidates` gives with each job's own window and `long_window`.
    `judged` names pairs by places, earlier and later; they need no reason. Order: by later job,
    then by earlier one.
    """
    import numpy as np

    found = GrowingColumns("q")
    for earlier, later in sharing_pairs(jobs, _last_days(jobs, long_window)):
        inside = _in_windows(jobs, earlier, later, long_window)
        found.add_arrays(_packed(jobs, earlier[inside], later[inside]))
    if judged is not None:
        found.add_arrays(_packed(jobs, *_possible(jobs, *judged)))
    (keys,) = found.joined()
    keys.sort()
    once = GrowingColumns("iiib")
    for start in range(0, len(keys), _AT_ONCE):
        some = keys[start : start + _AT_ONCE]
        fresh = np.ones(len(some), dtype=bool)
        fresh[1:] = some[1:] != some[:-1]
        fresh[0] = start == 0 or some[0] != keys[start - 1]
        once.add_arrays(*_unpacked(jobs, some[fresh]))
    earlier, later, days, in_window = once.joined()
    return ManyCandidates(earlier, later, days, in_window.view(np.bool_))


def inside_of(jobs: VisitColumns, pairs: ManyCandidates, window: Window) -> Marks:
    """Mark the pairs (k,) that lie in a window which is the same for all, and before a sale."""
    miles = _miles(jobs, pairs.earlier, pairs.later, pairs.days)
    inside = _inside(pairs.days, miles, window.days, window.miles, window.rule == "both")
    return inside & _before_sale(jobs, pairs.earlier, pairs.later)


def _unpacked(
    jobs: VisitColumns, keys: NDArray[np.int64]
) -> tuple[Whole, Whole, Whole, NDArray[np.int8]]:
    import numpy as np

    later = (keys >> _bits(jobs)).astype(np.int32)
    earlier = (keys & ((1 << _bits(jobs)) - 1)).astype(np.int32)
    days = jobs.opened[later] - jobs.handed_over[earlier]
    in_window = _in_own(jobs, earlier, later, days, _miles(jobs, earlier, later, days))
    return earlier, later, days, in_window.view(np.int8)


def _packed(jobs: VisitColumns, earlier: Whole, later: Whole) -> NDArray[np.int64]:
    import numpy as np

    keys = later.astype(np.int64)
    keys <<= _bits(jobs)
    keys |= earlier
    return keys


def _bits(jobs: VisitColumns) -> int:
    return max(jobs.jobs - 1, 1).bit_length()


def _possible(jobs: VisitColumns, earlier: Whole, later: Whole) -> tuple[Whole, Whole]:
    """Return those of the pairs that can be a return at all."""
    can = jobs.vehicle[earlier] == jobs.vehicle[later]
    can &= jobs.later_visits(earlier, later)
    out = jobs.handed_over[earlier]
    can &= (out != NO_DAY) & (out <= jobs.opened[later])
    return earlier[can], later[can]


def _last_days(jobs: VisitColumns, long_window: Window) -> Whole:
    """Return the last day on which a later job can lie in a window of each job, by time."""
    import numpy as np

    for_ever = (jobs.window_days == 0) | (jobs.ends_both & (jobs.window_miles > 0))
    if long_window.may_stay_open:
        for_ever[:] = True
    reach = np.maximum(jobs.window_days, long_window.days)
    last: Whole = np.where(for_ever, _FOREVER, jobs.handed_over + reach).astype(np.int32)
    return last


def _in_windows(jobs: VisitColumns, earlier: Whole, later: Whole, long_window: Window) -> Marks:
    import numpy as np

    days = jobs.opened[later] - jobs.handed_over[earlier]
    miles = _miles(jobs, earlier, later, days)
    both = long_window.rule == "both"
    inside = _inside(days, miles, long_window.days, long_window.miles, both)
    rest = np.flatnonzero(~inside)
    if len(rest):
        beyond = None if miles is None else miles[rest]
        inside[rest] = _in_own(jobs, earlier[rest], later[rest], days[rest], beyond)
    return inside


def _in_own(
    jobs: VisitColumns, earlier: Whole, later: Whole, days: Whole, miles: Column | None
) -> Marks:
    inside = _inside(
        days,
        miles,
        jobs.window_days[earlier],
        jobs.window_miles[earlier],
        jobs.ends_both[earlier],
    )
    return inside & _before_sale(jobs, earlier, later)


def _before_sale(jobs: VisitColumns, earlier: Whole, later: Whole) -> Marks:
    sold = jobs.sold[earlier]
    marks: Marks = (sold == NO_DAY) | (jobs.opened[later] <= sold)
    return marks


def _inside(
    days: Whole,
    miles: Column | None,
    most_days: Whole | int,
    most_miles: Column | float,
    both: Marks | bool,
) -> Marks:
    """Mark what lies in a window; a limit of 0 is none, miles of NaN are unknown, None all are."""
    import numpy as np

    timed = np.asarray(most_days) > 0
    in_days: Marks = days <= most_days
    if miles is None:
        return in_days | ~timed
    by_distance = (np.asarray(most_miles) > 0) & ~np.isnan(miles)
    with np.errstate(invalid="ignore", divide="ignore"):
        in_miles = miles / most_miles <= 1
    inside: Marks = np.where(
        timed & by_distance,
        np.where(both, in_days | in_miles, in_days & in_miles),
        np.where(timed, in_days, ~by_distance | in_miles),
    )
    return inside


def _miles(jobs: VisitColumns, earlier: Whole, later: Whole, days: Whole) -> Column | None:
    """Return the miles between the jobs of pairs, NaN where the odometers cannot say.

    None where they can say it of no pair.
    """
    import numpy as np

    leg = jobs.left_with.leg[earlier]
    if not (leg != NO_LEG).any():
        return None
    driven = jobs.came_with.miles[later] - jobs.left_with.miles[earlier]
    with np.errstate(invalid="ignore"):
        odd = (driven < 0) | (driven > MOST_MILES_A_DAY * np.maximum(days, 1))
    odd |= (leg == NO_LEG) | (leg != jobs.came_with.leg[later])
    driven[odd] = np.nan
    return driven
