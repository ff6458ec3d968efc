"""The interval around a share: how far k out of n can be trusted when n is small."""

from __future__ import annotations

from math import sqrt
from statistics import NormalDist


def wilson(k: int, n: int, coverage: float = 0.95) -> tuple[float, float]:
    """Return the low and high end of the share k/n (0 to 1) after Wilson.

    The score interval without continuity correction: E. B. Wilson, Journal of the American
    Statistical Association 22 (1927) 209-212. ValueError where k is not within 0 to n or n is 0.
    """
    if not 0 <= k <= n or n == 0:
        raise ValueError(f"{k} of {n} is not a share")
    z = NormalDist().inv_cdf(0.5 + coverage / 2)
    share, z2 = k / n, z * z
    middle = (share + z2 / (2 * n)) / (1 + z2 / n)
    half = z * sqrt(share * (1 - share) / n + z2 / (4 * n * n)) / (1 + z2 / n)
    low = 0.0 if k == 0 else max(0.0, middle - half)
    high = 1.0 if k == n else min(1.0, middle + half)
    return low, high
