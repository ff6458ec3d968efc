"""How far the rate of a small group may lie from the shop's by luck alone."""

from __future__ import annotations

from collections.abc import Sequence
from math import inf, isinf
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
    reached_at = _first_reached(size, rate, probability)
    reached = bdtr(reached_at, size, rate)
    before = np.where(reached_at > 0, bdtr(np.maximum(reached_at - 1, 0), size, rate), 0.0)
    limit: NDArray[np.float64] = (reached_at - (reached - probability) / (reached - before)) / size
    return limit


def luck_gives(
    size: int, rate: float, coverage: float = 0.95, worth: float = inf
) -> tuple[int, int]:
    """Return the fewest and the most comebacks that luck alone gives so many jobs.

    Fewer come with a chance of less than (1 - coverage) / 2, and so do more: the exact binomial
    limits of a funnel, in whole jobs. Where the rate is not known but seen in `worth` other jobs,
    they are those of the beta-binomial distribution, which are wider. ValueError as for
    `funnel_limit`.
    """
    import numpy as np

    tail = (1 - coverage) / 2
    if not isinf(worth):
        reached = np.cumsum(_chances(size, rate, worth))
        fewest, most = (int(np.searchsorted(reached, p)) for p in (tail, 1 - tail))
        return fewest, min(most, size)
    one = np.array([size], dtype=np.int64)
    return int(_first_reached(one, rate, tail)[0]), int(_first_reached(one, rate, 1 - tail)[0])


def chance_of_so_many(comebacks: int, size: int, rate: float, worth: float = inf) -> float:
    """Return how likely luck alone lies so far from what is expected, to either side (a p-value).

    Twice the smaller tail of the binomial distribution, at most 1; of the beta-binomial one where
    the rate was seen in `worth` other jobs. ValueError for no such count.
    """
    from scipy.special import bdtr, bdtrc

    if not 0 <= comebacks <= size or not 0 < rate < 1:
        raise ValueError(f"{comebacks} of {size} at a rate of {rate} cannot be")
    if not isinf(worth):
        chances = _chances(size, rate, worth)
        tails = float(chances[: comebacks + 1].sum()), float(chances[comebacks:].sum())
        return min(1.0, 2 * min(tails))
    as_few = float(bdtr(comebacks, size, rate))
    as_many = 1.0 if comebacks == 0 else float(bdtrc(comebacks - 1, size, rate))
    return min(1.0, 2 * min(as_few, as_many))


def _chances(size: int, rate: float, worth: float) -> NDArray[np.float64]:
    """Return the beta-binomial chance of each count from 0 to the size."""
    import numpy as np
    from scipy.special import betaln

    if not (0 < rate < 1 and worth > 0 and size >= 1):
        raise ValueError(f"No chances for {size} jobs, a rate of {rate} and a worth of {worth}")
    counts = np.arange(size + 1)
    back, quiet = rate * worth, (1 - rate) * worth
    ways = -betaln(size - counts + 1, counts + 1) - np.log(size + 1)
    chances: NDArray[np.float64] = np.exp(
        ways + betaln(counts + back, size - counts + quiet) - betaln(back, quiet)
    )
    return chances


def _first_reached(size: NDArray[np.int64], rate: float, probability: float) -> NDArray[np.int64]:
    """Return the smallest counts that are reached with the probability."""
    import numpy as np
    from scipy.special import bdtr

    if not (0 < rate < 1 and 0 < probability < 1 and (size.size == 0 or size.min() >= 1)):
        raise ValueError(f"No limit for a rate of {rate} and a probability of {probability}")
    low, high = np.full_like(size, -1), size.copy()
    while (high - low > 1).any():
        middle = (low + high) // 2
        enough = bdtr(middle, size, rate) >= probability
        high, low = np.where(enough, middle, high), np.where(enough, low, middle)
    return high
