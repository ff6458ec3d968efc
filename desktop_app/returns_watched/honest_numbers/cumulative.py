"""How many returns a job has had by an age, on the average, where one can come back again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from desktop_app.returns_watched.honest_numbers.proportion import normal_factor

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Numbers = NDArray[np.float64]
    Counts = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class MeanCumulative:
    """The mean number of returns of a job by each age at which one was seen; columns of one length.

    `standard_error` is the robust one, which holds too where a few jobs come back again and
    again; `low` to `high` is the interval on the log scale, which never falls below 0.
    """

    ages: Numbers
    at_risk: Counts
    events: Counts
    mean: Numbers
    standard_error: Numbers
    low: Numbers
    high: Numbers


def mean_cumulative(
    ends: Sequence[float] | NDArray[Any],
    jobs: Sequence[int] | NDArray[Any],
    ages: Sequence[float] | NDArray[Any],
    coverage: float = 0.95,
) -> MeanCumulative:
    """Return the mean cumulative function of jobs watched to `ends` (n,), in days or miles.

    Each return is a job's place in `ends` (`jobs`, (m,)) and the job's age then (`ages`, (m,)). A
    job whose watch ends at an age is still at risk at it. W. B. Nelson, Journal of Quality
    Technology 20 (1988) 24-35; variance: J. F. Lawless and C. Nadeau, Technometrics 37 (1995)
    158-168. ValueError for a return below 0, after the end of its job, or of no job.
    """
    import numpy as np

    z = normal_factor(coverage)
    end, job, age = np.asarray(ends), np.asarray(jobs, dtype=np.int64), np.asarray(ages)
    if job.shape != age.shape or (job.size and not 0 <= job.min() <= job.max() < end.size):
        raise ValueError("A return belongs to no job")
    if age.size and not (age.min() >= 0 and (age <= end[job]).all()):
        raise ValueError("A return lies outside the time in which its job was watched")
    times, place, events = np.unique(age, return_inverse=True, return_counts=True)
    gone = np.searchsorted(np.sort(end), times, "left")
    at_risk = end.size - gone
    mean = np.cumsum(events / at_risk)
    error = np.sqrt(_variance(end, job, place, times, at_risk, events))
    with np.errstate(divide="ignore", invalid="ignore"):
        stretch = np.exp(z * error / mean)
    return MeanCumulative(
        times.astype(np.float64), at_risk, events, mean, error, mean / stretch, mean * stretch
    )


def _variance(
    end: NDArray[Any],
    job: Counts,
    place: Counts,
    times: NDArray[Any],
    at_risk: Counts,
    events: Counts,
) -> Numbers:
    """Return the robust variance of the mean at each time.

    It is the sum over jobs of (own - even)^2: `own` adds 1 / at risk for each return of the job
    so far, `even` what falls on it if all returns are shared out evenly while it is watched. The
    square is taken apart, so that every sum runs over times once instead of over jobs at each.
    """
    import numpy as np

    even = np.cumsum(events / at_risk.astype(np.float64) ** 2)
    weight = (1 / at_risk)[place]
    order = np.lexsort((place, job))
    own = np.cumsum(weight[order])
    first = np.searchsorted(job[order], job[order])
    own -= own[first] - weight[order][first]
    before = own - weight[order]
    by_time = place[order]
    own_sum = np.cumsum(np.bincount(place, weight, times.size))
    own_squares = np.cumsum(np.bincount(by_time, own**2 - before**2, times.size))

    last = np.bincount(job, weight, end.size)
    even_to_end = np.concatenate(([0.0], even))[np.searchsorted(times, end, "right")]
    leaving = np.argsort(end, kind="stable")
    gone = end.size - at_risk

    def of_the_gone(values: NDArray[Any]) -> Numbers:
        sums: Numbers = np.concatenate(([0.0], np.cumsum(values[leaving])))[gone]
        return sums

    found: Numbers = (
        own_squares
        - of_the_gone(last**2)
        - 2 * even * (own_sum - of_the_gone(last))
        + at_risk * even**2
        + of_the_gone((last - even_to_end) ** 2)
    )
    return np.maximum(found, 0.0)
