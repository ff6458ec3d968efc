"""When repeats scatter too much for the usual spread of their instrument (an F test)."""

from __future__ import annotations

import math
from functools import lru_cache

from desktop_app.parts_compared.student_t import incomplete_beta

#: So rarely does an honest usual spread have to give way by chance.
BY_CHANCE = 0.05


def f_beyond(f: float, dof: float, other_dof: float) -> float:
    """Return the probability that an F variable is above `f` (NIST DLMF 8.17; F by beta)."""
    if f <= 0:
        return 1.0
    return incomplete_beta(other_dof / 2, dof / 2, other_dof / (other_dof + dof * f))


@lru_cache(maxsize=512)
def refuting_factor(dof: float, usual_dof: float) -> float:
    """Return how many times the usual spread the repeats must scatter to set it aside.

    `dof` are those of the repeats, `usual_dof` those with which the usual spread is known.
    """
    low, high = 1.0, 2.0
    while f_beyond(high * high, dof, usual_dof) > BY_CHANCE:
        high *= 2
    while high - low > 1e-12 * high:
        middle = (low + high) / 2
        if f_beyond(middle * middle, dof, usual_dof) > BY_CHANCE:
            low = middle
        else:
            high = middle
    return high if math.isfinite(high) else 1.0
