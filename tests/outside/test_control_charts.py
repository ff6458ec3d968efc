"""The weeks' exact limits and the cusum against published control charts.

Published charts take counts for nearly normal; the exact limits must flag the same samples where
counts are many. "Recalled" beside a value: the example is known from memory and recomputed, its
page not seen. "Read": a public reproduction was read.
"""

from __future__ import annotations

from math import log

import numpy as np
import pytest

from desktop_app.returns_watched.honest_numbers.few_a_week import TAIL, count_limits, doubled
from desktop_app.returns_watched.honest_numbers.funnel import funnel_limit


def counts(words: str) -> list[int]:
    """Read whole numbers from a line."""
    return [int(word) for word in words.split()]


def beyond(seen: list[int], sizes: list[float]) -> list[int]:
    """Return the samples, from 1, that lie beyond the limits of their average."""
    centre = sum(seen) / sum(sizes)
    found = []
    for place, (count, size) in enumerate(zip(seen, sizes, strict=True), 1):
        limits = count_limits(centre * size)
        if not limits.low <= count <= limits.high:
            found.append(place)
    return found


JUICE = counts("12 15 8 10 4 7 16 9 14 10 5 6 17 12 22 8 10 5 13 11 20 18 24 15 9 12 7 13 9 6")


def test_limits_of_shares_of_uneven_samples() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.3.2: 30 samples of 50, limits 0.0524 to 0.4102, samples 15 and
    # 23 beyond (read). A single count of 50 is 0.02.
    rate = sum(JUICE) / 1500
    low, high = (funnel_limit([50], rate, p)[0] for p in (TAIL, 1 - TAIL))
    assert (low, high) == pytest.approx((0.0524275481, 0.4102391186), abs=0.03)
    shares = [one / 50 for one in JUICE]
    assert [place for place, one in enumerate(shares, 1) if not low <= one <= high] == [15, 23]


def test_many_counts_are_flagged_as_published() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.3.1: wafers, centre 16, limits 4 and 28, the 24th beyond (read).
    wafers = counts("16 14 28 16 12 20 10 12 10 17 19 17 14 16 15 13 14 16 11 20 11 19 16 31 13")
    assert beyond(wafers, [1] * 25) == [24]
    found = count_limits(16)
    assert (found.low, found.high) == pytest.approx((4, 28), abs=2)
    # D. C. Montgomery, circuit boards; the qcc package's output (read): limits 6.48 and 33.21.
    boards = counts("21 24 16 12 15 5 28 20 31 25 20 24 16 19 10 17 13 22 18 39 30 24 16 19 17 15")
    assert beyond(boards, [1] * 26) == [6, 20]
    found = count_limits(516 / 26)
    assert (found.low, found.high) == pytest.approx((6.48, 33.21), abs=2)


def test_uneven_sizes_have_uneven_limits() -> None:
    # D. C. Montgomery, dyed cloth (data read, limits computed): limits of the u chart by size.
    limits = {8: (0.157885, 2.688626), 10: (0.291474, 2.555038), 13: (0.430617, 2.415894)}
    centre = 153 / 107.5
    for size, (low, high) in limits.items():
        found = count_limits(centre * size)
        assert (found.low, found.high) == pytest.approx((low * size, high * size), abs=2.5)
    sizes = [10, 8, 13, 10, 9.5, 10, 12, 10.5, 12, 12.5]
    assert beyond(counts("14 12 20 11 7 10 21 16 19 23"), sizes) == []


def tabular(values: list[float], target: float, allowance: float) -> list[float]:
    """Return the upward sums of the textbook's cusum."""
    sums = [0.0]
    for value in values:
        sums.append(max(0.0, sums[-1] + value - target - allowance))
    return sums[1:]


def test_the_textbook_cusum() -> None:
    # NIST/SEMATECH e-Handbook, 6.3.2.3: target 325, k 0.3175 (recalled): the peer of the next test.
    values = [
        *(324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225),
        *(324.600, 324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775),
        *(326.875, 328.350),
    ]
    rise = {5: 0.0325, 13: 3.0075, 14: 4.94, 15: 7.4475, 16: 10.63, 17: 11.9875, 18: 14.445}
    rise |= {19: 16.0025, 20: 19.035}
    found = tabular(values, 325, 0.3175)
    assert found == pytest.approx([rise.get(n, 0.0) for n in range(1, 21)], abs=1e-9)


def test_with_a_known_level_the_evidence_is_that_cusum() -> None:
    # E. S. Page, Biometrika 41 (1954) 100-115: a week adds count x ln 2 - expected. After very many
    # usual weeks the level is known.
    chance = np.random.default_rng(11)
    some = [int(n) for n in chance.poisson(2.0, 60)]
    evidence = doubled([2_000_000, *some], [1e6, *[1.0] * 60]).evidence[1:]
    wanted = tabular([n * log(2) for n in some], 2.0, 0.0)
    assert evidence == pytest.approx(wanted, abs=1e-3)
