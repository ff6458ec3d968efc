"""How far the rate of a small group may lie from the shop's by luck alone."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


def funnel_limit(
    sizes: Sequence[int] | NDArray[np.int64], rate: float, probability: float
) -> NDArray[np.float64]:
    """Return for groups of these sizes the rate below which luck falls with that probability.

    The exact binomial limit with interpolation of D. J. Spiegelhalter, Statistics in Medicine 24
    (2005) 1185-1202, appendix; it can lie below 0, where it is to be drawn at 0. Limits of 95 %
    are those of 0.025 and 0.975. ValueError for a size below 1, or a rate or probability that
    does not lie between 0 and 1.
    """
    import numpy as np
    from scipy.special import bdtr

    size = np.asarray(sizes, dtype=np.int64)
    if not (0 < rate < 1 and 0 < probability < 1 and (size.size == 0 or size.min() >= 1)):
        raise ValueError(f"No limit for a rate of {rate} and a probability of {probability}")
    low, high = np.full_like(size, -1), size.copy()
    while (high - low > 1).any():  # the smallest count that is reached with the probability
        middle = (low + high) // 2
        enough = bdtr(middle, size, rate) >= probability
        high, low = np.where(enough, middle, high), np.where(enough, low, middle)
    reached = bdtr(high, size, rate)
    before = np.where(high > 0, bdtr(np.maximum(high - 1, 0), size, rate), 0.0)
    limit: NDArray[np.float64] = (high - (reached - probability) / (reached - before)) / size
    return limit
