"""Rates of small groups drawn towards the shop's own, as far as the groups really differ."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean, variance
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np

    Numbers = np.ndarray[tuple[int], np.dtype[np.float64]]


@dataclass(frozen=True, slots=True)
class Spread:
    """How the groups' true rates spread: a beta distribution, worth `alpha + beta` jobs."""

    alpha: float
    beta: float

    @property
    def mean(self) -> float:
        """The rate towards which small groups are drawn."""
        return self.alpha / (self.alpha + self.beta)


@dataclass(frozen=True, slots=True)
class Shrunken:
    """A group's rate as it is believed once the other groups are known; an interval of 95 %.

    The interval takes the spread between the groups as known, so that it is a little too narrow.
    """

    mean: float
    low: float
    high: float


def spread_by_moments(shares: Sequence[float]) -> Spread | None:
    """Return the spread from the mean and variance of the groups' shares.

    A. Gelman and others, Bayesian Data Analysis, 3rd ed. 2013, section 5.1. None where the shares
    do not differ, or by more than a beta distribution can.
    """
    if len(shares) < 2:
        return None
    mean, squared = fmean(shares), variance(shares)
    if not 0 < squared < mean * (1 - mean):
        return None
    worth = mean * (1 - mean) / squared - 1
    return Spread(mean * worth, (1 - mean) * worth)


def spread_of_groups(comebacks: Sequence[int], jobs: Sequence[int]) -> Spread | None:
    """Return the beta-binomial spread that makes the groups' counts most likely.

    It counts for one job at least, and for no more than there are, so that no group is drawn
    wholly to the rest.
    None where fewer than two groups have jobs, or none or all of the jobs came back. ValueError
    where a count does not lie within 0 and its number of jobs.
    """
    import numpy as np
    from scipy.optimize import minimize
    from scipy.special import betaln, expit, logit, psi

    if any(not 0 <= k <= n for k, n in zip(comebacks, jobs, strict=True)):
        raise ValueError("More came back in a group than it has jobs")
    told = [pair for pair in zip(comebacks, jobs, strict=True) if pair[1]]
    k, n = np.array(told, dtype=np.float64).reshape(-1, 2).T
    if len(n) < 2 or not 0 < k.sum() < n.sum():
        return None

    def unlikely(at: Numbers) -> tuple[float, Numbers]:
        mean, worth = expit(at[0]), np.exp(at[1])
        a, b = mean * worth, (1 - mean) * worth
        value = float(np.sum(betaln(k + a, n - k + b) - betaln(a, b)))
        shared = psi(worth) - psi(n + worth)
        by_a = np.sum(psi(k + a) - psi(a) + shared)
        by_b = np.sum(psi(n - k + b) - psi(b) + shared)
        slope = np.array([(by_a - by_b) * worth * mean * (1 - mean), by_a * a + by_b * b])
        return -value, -slope

    total = float(n.sum())
    guess = spread_by_moments((k / n).tolist())
    worth = min(total, max(1.0, guess.alpha + guess.beta)) if guess else total
    start = np.array([logit(k.sum() / total), np.log(worth)])
    bounds = [(-30.0, 30.0), (0.0, np.log(total))]
    best = minimize(
        unlikely,
        start,
        jac=True,
        method="L-BFGS-B",
        bounds=bounds,
        options={"ftol": 1e-14, "gtol": 1e-8, "maxiter": 200},
    )
    mean, worth = float(expit(best.x[0])), float(np.exp(best.x[1]))
    return Spread(mean * worth, (1 - mean) * worth)


def shrunken(comebacks: int, jobs: int, spread: Spread, coverage: float = 0.95) -> Shrunken:
    """Return a group's rate drawn towards the mean of the spread, with its interval."""
    from scipy.special import betaincinv

    a, b = spread.alpha + comebacks, spread.beta + jobs - comebacks
    tail = (1 - coverage) / 2
    low, high = float(betaincinv(a, b, tail)), float(betaincinv(a, b, 1 - tail))
    return Shrunken(a / (a + b), low, high)
