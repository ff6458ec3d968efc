"""Pearson's chi-square over counts that should be equal, without a heavy library."""

from __future__ import annotations

import math
from collections.abc import Sequence

_TINY = 1e-300
_MOST_STEPS = 10_000


def chi_square(counts: Sequence[int]) -> float:
    """Return the sum of (seen - even share) squared over the even share."""
    share = math.fsum(counts) / len(counts)
    return math.fsum((one - share) ** 2 for one in counts) / share


def chi_square_beyond(statistic: float, dof: int) -> float:
    """Return the probability of at least this chi-square by chance (NIST DLMF 8.2.4, Q(a, x))."""
    a, x = dof / 2, statistic / 2
    if x <= 0:
        return 1.0
    if math.isinf(x):
        return 0.0
    front = math.exp(a * math.log(x) - x - math.lgamma(a))
    return 1.0 - front * _series(a, x) if x < a + 1 else front * _fraction(a, x)


def _series(a: float, x: float) -> float:
    """Return P(a, x) without its front factor (NIST DLMF 8.11.4)."""
    term = total = 1.0 / a
    for step in range(1, _MOST_STEPS):  # pragma: no branch - it converges long before
        term *= x / (a + step)
        total += term
        if term < total * 1e-16:
            break
    return total


def _fraction(a: float, x: float) -> float:
    """Return Q(a, x) without its front factor (NIST DLMF 8.9.2, evaluated from the front)."""
    b = x + 1.0 - a
    c, d = 1.0 / _TINY, 1.0 / b
    result = d
    for step in range(1, _MOST_STEPS):  # pragma: no branch - it converges long before
        top, b = -step * (step - a), b + 2.0
        d = 1.0 / ((top * d + b) or _TINY)
        c = (b + top / c) or _TINY
        result *= c * d
        if abs(c * d - 1.0) < 1e-15:
            break
    return result
