"""Comebacks seen against those expected of such work, so that the hardest cars blame nobody."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.returns_watched.honest_numbers.proportion import Interval


@dataclass(frozen=True, slots=True)
class SeenAgainstExpected:
    """How often more than expected, with its interval; 1 is as expected."""

    seen: int
    expected: float
    ratio: float
    low: float
    high: float


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
