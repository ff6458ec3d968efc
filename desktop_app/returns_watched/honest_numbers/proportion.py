"""A share such as 3 comebacks of 40 jobs: how far it can be trusted, and how far two differ."""

from __future__ import annotations

from math import hypot, sqrt
from statistics import NormalDist

Interval = tuple[float, float]


def normal_factor(coverage: float) -> float:
    """Return the factor of the standard normal distribution: 1.96 for 0.95.

    ValueError where the coverage does not lie between 0 and 1.
    """
    if not 0 < coverage < 1:
        raise ValueError(f"{coverage} is not a coverage")
    return NormalDist().inv_cdf(0.5 + coverage / 2)


def wilson(k: int, n: int, coverage: float = 0.95) -> Interval:
    """Return the score interval of the share k/n (0 to 1), without continuity correction.

    E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212. ValueError
    where k is not within 0 to n or n is 0.
    """
    _check(k, n)
    z = normal_factor(coverage)
    share, z2 = k / n, z * z
    middle = (share + z2 / (2 * n)) / (1 + z2 / n)
    half = z * sqrt(share * (1 - share) / n + z2 / (4 * n * n)) / (1 + z2 / n)
    low = 0.0 if k == 0 else max(0.0, middle - half)
    high = 1.0 if k == n else min(1.0, middle + half)
    return low, high


def clopper_pearson(k: int, n: int, coverage: float = 0.95) -> Interval:
    """Return the exact interval of the share k/n: never too narrow, often too wide.

    C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413. ValueError as for `wilson`.
    """
    from scipy.special import betaincinv

    _check(k, n)
    if not 0 < coverage < 1:
        raise ValueError(f"{coverage} is not a coverage")
    tail = (1 - coverage) / 2
    low = 0.0 if k == 0 else float(betaincinv(k, n - k + 1, tail))
    high = 1.0 if k == n else float(betaincinv(k + 1, n - k, 1 - tail))
    return low, high


def newcombe(k1: int, n1: int, k2: int, n2: int, coverage: float = 0.95) -> Interval:
    """Return the interval of the difference k1/n1 - k2/n2 of two independent shares (-1 to 1).

    The square-and-add way from two Wilson intervals, method 10 of R. G. Newcombe, Statistics in
    Medicine 17 (1998) 873-890. ValueError as for `wilson`.
    """
    low1, high1 = wilson(k1, n1, coverage)
    low2, high2 = wilson(k2, n2, coverage)
    p1, p2 = k1 / n1, k2 / n2
    return p1 - p2 - hypot(p1 - low1, high2 - p2), p1 - p2 + hypot(high1 - p1, p2 - low2)


def _check(k: int, n: int) -> None:
    if not 0 <= k <= n or n == 0:
        raise ValueError(f"{k} of {n} is not a share")
