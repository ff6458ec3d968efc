"""Comebacks seen against those expected of such work, so that the hardest cars blame nobody."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.proportion import Interval

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


@dataclass(frozen=True, slots=True)
class SeenAgainstExpected:
    """How often more than expected, with its interval; 1 is as expected."""

    seen: int
    expected: float
    ratio: float
    low: float
    high: float


def expected_shares(
    kinds_of_work: Sequence[Hashable], came_back: NDArray[np.bool_]
) -> NDArray[np.float64]:
    """Return for each job (n,) the share of all jobs of its kind of work that came back.

    Summed over one group of the jobs it is what that group would have had, if its work came back
    as often as all such work does: indirect standardisation, N. E. Breslow and N. E. Day,
    Statistical Methods in Cancer Research II, IARC 1987, chapter 2. Summed over all jobs it is
    what came back of them.
    """
    import numpy as np

    places: dict[Hashable, int] = {}
    place = np.fromiter(
        (places.setdefault(kind, len(places)) for kind in kinds_of_work),
        dtype=np.int64,
        count=len(kinds_of_work),
    )
    jobs = np.bincount(place)
    shares: NDArray[np.float64] = (np.bincount(place, came_back, jobs.size) / jobs)[place]
    return shares


def seen_against_expected(
    seen: int, expected: float, coverage: float = 0.95
) -> SeenAgainstExpected | None:
    """Return the ratio with its exact Poisson interval; None where nothing was expected."""
    if not expected > 0:
        return None
    low, high = poisson_interval(seen, coverage)
    return SeenAgainstExpected(seen, expected, seen / expected, low / expected, high / expected)


def poisson_interval(count: int, coverage: float = 0.95) -> Interval:
    """Return the exact interval of the mean of a Poisson count.

    F. Garwood, Biometrika 28 (1936) 437-442. ValueError for a count below 0.
    """
    from scipy.special import gammaincinv

    if count < 0 or not 0 < coverage < 1:
        raise ValueError(f"{count} is not a count, or {coverage} not a coverage")
    tail = (1 - coverage) / 2
    low = 0.0 if count == 0 else float(gammaincinv(count, tail))
    return low, float(gammaincinv(count + 1, 1 - tail))
