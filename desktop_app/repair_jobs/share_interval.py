"""The interval around a share of jobs: how far k out of n can be trusted when n is small."""

from __future__ import annotations

from math import sqrt

Interval = tuple[float, float]

_OF_95 = 1.9599639845400536  # the factor of 0.95, as the line that works it out gives it


def normal_factor(coverage: float) -> float:
    """Return the factor of the standard normal distribution: 1.96 for 0.95.

    ValueError where the coverage does not lie between 0 and 1.
    """
    if not 0 < coverage < 1:
        raise ValueError(f"{coverage} is not a coverage")
    if coverage == 0.95:  # the usual one, without loading what works it out
        return _OF_95
    from statistics import NormalDist

    return NormalDist().inv_cdf(0.5 + coverage / 2)


def check_share(k: int, n: int) -> None:
    """Raise ValueError where k is not within 0 to n, or n is 0."""
    if not 0 <= k <= n or n == 0:
        raise ValueError(f"{k} of {n} is not a share")


def wilson(k: int, n: int, coverage: float = 0.95) -> Interval:
    """Return the score interval of the share k/n (0 to 1), without continuity correction.

    E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212. ValueError
    where k is not within 0 to n or n is 0.
    """
    check_share(k, n)
    z = normal_factor(coverage)
    share, z2 = k / n, z * z
    middle = (share + z2 / (2 * n)) / (1 + z2 / n)
    half = z * sqrt(share * (1 - share) / n + z2 / (4 * n * n)) / (1 + z2 / n)
    low = 0.0 if k == 0 else max(0.0, middle - half)
    high = 1.0 if k == n else min(1.0, middle + half)
    return low, high
