"""How fast pairs are judged: one at the bench, and many at once for the report."""

from __future__ import annotations

from statistics import median
from time import perf_counter

import numpy as np
from scipy.stats import ttest_ind_from_stats

from desktop_app.parts_compared.many_pairs.judge_many import judge_many
from desktop_app.parts_compared.many_pairs.pair_columns import PairColumns
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from tests.benchmarks.many_measured_pairs import measured_pairs, mixed_kind, readings_of

ROUNDS = 9
HEADROOM = 1.5  # short timings move by a third between rounds on a busy machine
MANY = 20_000
TIMES_A_BARE_TEST = 5.0  # roles, instruments, angles, words and limits come on top of it


def test_a_verdict_at_the_bench() -> None:
    part = mixed_kind(lengths=5, worn_ones=3)
    columns = measured_pairs(part, pairs=60, repeats=10)
    pairs = [readings_of(part, columns, number) for number in range(60)]
    assert len(part.dimensions) == 12
    assert all(len(one.values) == 10 for one in pairs[0])
    took = []
    for readings in pairs:
        start = perf_counter()
        compare(part, readings)
        took.append(1000 * (perf_counter() - start))
    print(f"\na verdict: median {median(took):.2f} ms, most {max(took):.2f} ms (goal 2)")
    assert median(took) < 2 * HEADROOM


def test_many_verdicts_at_once() -> None:
    part = mixed_kind()
    columns = measured_pairs(part, MANY, repeats=3)
    judge_many(part, measured_pairs(part, 10, repeats=3))
    rounds = [(_seconds(part, columns), _bare_test(columns)) for _ in range(ROUNDS)]
    rate = MANY / median(ours for ours, _ in rounds)
    ratio = median(ours / bare for ours, bare in rounds)
    alone = [readings_of(part, columns, number) for number in range(0, MANY, MANY // 20)]
    start = perf_counter()
    expected = [compare(part, readings).verdict for readings in alone]
    one_by_one = (perf_counter() - start) / len(alone)
    print(
        f"\n{rate:,.0f} pairs a second (goal 20,000), {rate * one_by_one:.0f} times as fast as one "
        f"by one, {ratio:.2f} times a bare t test of the same readings"
    )
    assert judge_many(part, columns).verdicts()[:: MANY // 20] == expected
    assert rate > 20_000 / HEADROOM
    assert rate * one_by_one > 20
    assert ratio < TIMES_A_BARE_TEST * HEADROOM


def _seconds(part: PartKind, columns: PairColumns) -> float:
    start = perf_counter()
    judge_many(part, columns)
    return perf_counter() - start


def _bare_test(columns: PairColumns) -> float:
    """Time what a statistics library needs for a difference and its p-value, and no verdict."""
    seen = columns.readings
    value = np.ascontiguousarray(seen.value)
    start = perf_counter()
    sides = value.reshape(-1, 2, 3)
    mean, spread = sides.mean(axis=2), sides.std(axis=2, ddof=1) + 1e-3
    ttest_ind_from_stats(mean[:, 1], spread[:, 1], 3, mean[:, 0], spread[:, 0], 3, equal_var=False)
    return perf_counter() - start
