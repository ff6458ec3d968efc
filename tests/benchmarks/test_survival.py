"""How fast the curve of returns over a whole history is, against a library for such curves."""

from __future__ import annotations

from statistics import median
from time import perf_counter

import numpy as np
import pytest
from lifelines import KaplanMeierFitter

from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier

ROUNDS = 7
JOBS = 1_000_000
GOAL = 0.3  # of the library's time


def test_a_curve_over_a_million_jobs() -> None:
    chance = np.random.default_rng(5)
    days = chance.integers(0, 366, JOBS)
    back = chance.random(JOBS) < 0.06
    ours, theirs = kaplan_meier(days, back), KaplanMeierFitter().fit(days, back)
    bounds = theirs.confidence_interval_survival_function_.loc[ours.ages].to_numpy()
    assert ours.low == pytest.approx(bounds[:, 0], rel=1e-9)
    assert ours.high == pytest.approx(bounds[:, 1], rel=1e-9)
    rounds = []
    for _ in range(ROUNDS):
        start = perf_counter()
        kaplan_meier(days, back)
        between = perf_counter()
        KaplanMeierFitter().fit(days, back)
        rounds.append((between - start, perf_counter() - between))
    ratio = median(mine / peer for mine, peer in rounds)
    took = 1000 * median(mine for mine, _ in rounds)
    print(f"\na curve of {JOBS:,} jobs: {took:.1f} ms, {ratio:.3f} of the library (goal {GOAL})")
    assert ratio < GOAL
