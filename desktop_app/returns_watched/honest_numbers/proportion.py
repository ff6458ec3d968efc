"""A share such as 3 comebacks of 40 jobs: how far it can be trusted, and how far two differ."""

from __future__ import annotations

from math import hypot

from desktop_app.repair_jobs.share_interval import Interval, check_share, normal_factor, wilson

__all__ = ["Interval", "clopper_pearson", "newcombe", "normal_factor", "wilson"]


def clopper_pearson(k: int, n: int, coverage: float = 0.95) -> Interval:
    """Return the exact interval of the share k/n: never too narrow, often too wide.

    C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413. ValueError as for `wilson`.
    """
    from scipy.special import betaincinv

    check_share(k, n)
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
