"""The share of jobs that came back by a day or a mile, where most have not been watched so far."""

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

# Counting whole days in bins is quicker than sorting, while the bins are not far more than jobs.
MOST_BINS = 100_000


@dataclass(frozen=True, slots=True)
class Curve:
    """A Kaplan-Meier curve at the ages at which something came back, all columns of one length.

    `at_risk` are the jobs still watched at that age, `events` those that came back at it, `left`
    the share that has not come back, with its standard error after Greenwood (not a number where
    nothing is left), and `low` to `high` its interval on the log-log scale.
    """

    ages: Numbers
    at_risk: Counts
    events: Counts
    left: Numbers
    standard_error: Numbers
    low: Numbers
    high: Numbers


def kaplan_meier(
    ages: Sequence[float] | NDArray[Any],
    came_back: Sequence[bool] | NDArray[np.bool_],
    coverage: float = 0.95,
) -> Curve:
    """Return the curve of jobs that came back at their age, or were watched that far and had not.

    `ages` (n,) are days or miles of any unit, at least 0. A job whose watch ends at an age is
    still at risk at it, so that returns come before ends at a tie. E. L. Kaplan and P. Meier,
    Journal of the American Statistical Association 53 (1958) 457-481; interval: J. D. Kalbfleisch
    and R. L. Prentice, The Statistical Analysis of Failure Time Data, 1980. Where the last one
    watched came back, the upper end is that of the step before. ValueError for ages below 0, or
    columns of different lengths.
    """
    import numpy as np

    z = normal_factor(coverage)
    age, back = watched_columns(ages, came_back)
    at, at_risk, events = _steps(age, back)
    with np.errstate(divide="ignore", invalid="ignore"):
        left: Numbers = np.cumprod(1 - events / at_risk, dtype=np.float64)
        squared = np.cumsum(events / (at_risk * (at_risk - events).astype(np.float64)))
        spread: Numbers = np.sqrt(squared, dtype=np.float64)
        stretch = np.exp(z * spread / -np.log(left))
        low: Numbers = left**stretch
        high: Numbers = left ** (1 / stretch)
        error: Numbers = left * spread
    none_left = left == 0
    if none_left.any():  # it can only be the last step
        low[-1], high[-1] = 0.0, high[-2] if len(high) > 1 else 1.0
    return Curve(at, at_risk, events, left, error, low, high)


def watched_columns(
    ages: Sequence[float] | NDArray[Any], came_back: Sequence[bool] | NDArray[np.bool_]
) -> tuple[NDArray[Any], NDArray[np.bool_]]:
    """Return both as columns (n,); ValueError where they are not ages and marks of one length."""
    import numpy as np

    age, back = np.asarray(ages), np.asarray(came_back, dtype=bool)
    if age.ndim != 1 or age.shape != back.shape:
        raise ValueError(f"{age.shape} ages and {back.shape} marks are not two columns of jobs")
    if age.size and not (age.min() >= 0 and np.isfinite(age.max())):
        raise ValueError("An age is below 0 or not a number")
    return age, back


def _steps(age: NDArray[Any], back: NDArray[np.bool_]) -> tuple[Numbers, Counts, Counts]:
    """Return the ages at which any job came back, how many were at risk, and how many came."""
    import numpy as np

    if age.size and age.dtype.kind in "iu" and age.max() <= MOST_BINS + age.size:
        ended = np.bincount(age)
        came = np.bincount(age[back], minlength=ended.size)
        at = np.flatnonzero(came)
        at_risk = age.size - (np.cumsum(ended) - ended)[at]
        return at.astype(np.float64), at_risk, came[at]
    times, events = np.unique(age[back], return_counts=True)
    at_risk = age.size - np.searchsorted(np.sort(age), times, "left")
    return times.astype(np.float64), at_risk, events
