"""Whether the curves of several groups of jobs differ by more than luck."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from desktop_app.returns_watched.honest_numbers.survival import watched_columns

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Group = tuple[Sequence[float] | NDArray[Any], Sequence[bool] | NDArray[np.bool_]]


@dataclass(frozen=True, slots=True)
class LogRank:
    """The log-rank test: what came back in each group, what would have if all were alike, and p.

    `chi_squared` has `dof` degrees of freedom; p is 1 where nothing came back at all.
    """

    observed: tuple[int, ...]
    expected: tuple[float, ...]
    chi_squared: float
    dof: int
    p: float


def log_rank(groups: Sequence[Group]) -> LogRank:
    """Test two or more groups, each given as (ages, came back) like for `kaplan_meier`.

    N. Mantel, Cancer Chemotherapy Reports 50 (1966) 163-170, with the hypergeometric variance.
    ValueError for fewer than two groups, or columns that `kaplan_meier` refuses.
    """
    import numpy as np
    from scipy.special import chdtrc

    if len(groups) < 2:
        raise ValueError("A comparison takes two groups or more")
    columns = [watched_columns(ages, back) for ages, back in groups]
    times = np.unique(np.concatenate([age[back] for age, back in columns]))
    at_risk = np.array([_at_risk(age, times) for age, _ in columns], dtype=np.float64)
    came = np.array([_came(age[back], times) for age, back in columns], dtype=np.float64)
    risk, events = at_risk.sum(axis=0), came.sum(axis=0)
    share = at_risk / risk
    expected = share @ events
    luck = events * (risk - events) / np.maximum(risk - 1, 1)
    covariance = np.diag(share @ luck) - (share * luck) @ share.T
    # The groups' differences sum to nothing, so that one of them is left out.
    off = (came.sum(axis=1) - expected)[:-1]
    chi_squared = float(off @ np.linalg.pinv(covariance[:-1, :-1]) @ off)
    dof = len(groups) - 1
    return LogRank(
        observed=tuple(int(count) for count in came.sum(axis=1)),
        expected=tuple(float(value) for value in expected),
        chi_squared=chi_squared,
        dof=dof,
        p=float(chdtrc(dof, chi_squared)),
    )


def _at_risk(age: NDArray[Any], times: NDArray[Any]) -> NDArray[np.int64]:
    import numpy as np

    return age.size - np.searchsorted(np.sort(age), times, "left")


def _came(age: NDArray[Any], times: NDArray[Any]) -> NDArray[np.int64]:
    import numpy as np

    return np.bincount(np.searchsorted(times, age), minlength=times.size)
