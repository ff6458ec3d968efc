"""Who misfires with whom."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.chi_square import chi_square_beyond
from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder, is_firing_order
from desktop_app.parts_compared.bench_sums.misfire_pattern import (
    EngineMap,
    in_common,
    misfire_pattern,
)
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.shop_record.trouble import ShopTrouble


def said(counters: str, **more: str) -> str:
    return work_out("misfire-pattern", {"counters": counters, **more}).sentence


def test_all_alike_points_to_what_all_share() -> None:
    found = misfire_pattern([14, 11, 9, 16])
    assert found.statistic == pytest.approx(2.32, abs=1e-12)
    assert found.probability == pytest.approx(0.51, abs=0.005)
    assert "shows (chi-square 2.3, p 0.51)" in said("14/11/9/16")


def test_one_cylinder_stands_out() -> None:
    assert misfire_pattern([3, 44, 2, 1]).above == (2,)
    assert said("3, 44, 2, 1").startswith("Cylinder 2 stands out")


def test_a_companion_pair_points_to_a_paired_coil() -> None:
    found = said("22/3/2/25", firing_order="1-3-4-2", coils="1 4 / 2 3")
    assert "companion pair" in found
    assert "not to tracking" in found
    assert "hang on one coil" in found
    assert "side by side" not in found


def test_tower_neighbours_point_to_tracking() -> None:
    assert "side by side on a distributor cap" in said("22/3/25/2", firing_order="1-3-4-2")


def test_a_whole_bank() -> None:
    found = said("20 21 19 2 1 2", banks="1 2 3 / 4 5 6")
    assert "one whole bank" in found


def test_one_that_is_well_among_the_bad() -> None:
    assert said("20 22 21 1").startswith("All but 4 misfire")


def test_small_counts_say_nothing() -> None:
    assert not misfire_pattern([9, 0, 0, 0]).enough
    assert said("9/0/0/0").startswith("Too few to say")
    assert said("0/0/0/0").startswith("Too few to say")


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("counters", "12"),
        ("counters", "a b c d"),
        ("firing_order", "1-3-3-2"),
        ("firing_order", "1-5-3-6-2-4"),
        ("coils", "1 4 / 4 3"),
        ("banks", "1 9"),
        ("banks", "left"),
    ],
)
def test_what_does_not_fit_the_engine_is_refused(field: str, text: str) -> None:
    typed = {"counters": "14/11/9/16", field: text}
    with pytest.raises(ShopTrouble) as caught:
        work_out("misfire-pattern", typed)
    assert caught.value.do.startswith("Accepted: ")


@given(st.lists(st.integers(0, 200), min_size=2, max_size=12), st.randoms(use_true_random=False))
def test_the_cylinders_may_be_counted_in_any_order(
    counters: list[int], shuffle: random.Random
) -> None:
    places = list(range(len(counters)))
    shuffle.shuffle(places)
    plain, mixed = misfire_pattern(counters), misfire_pattern([counters[i] for i in places])
    assert mixed.probability == pytest.approx(plain.probability, rel=1e-9, abs=1e-12)
    assert {places[i - 1] + 1 for i in mixed.above} == set(plain.above)


@given(st.sampled_from([4, 6, 8]).flatmap(lambda n: st.permutations(range(1, n + 1))))
def test_companion_pairs_are_mutual_and_share_out_all_cylinders(order: list[int]) -> None:
    assert is_firing_order(order)
    firing = FiringOrder(tuple(order))
    for one in order:
        companions = [other for other in order if firing.are_companions(one, other)]
        assert len(companions) == 1
        assert firing.are_companions(companions[0], one)


def test_nothing_known_is_nothing_in_common() -> None:
    assert in_common((1, 3), EngineMap()) == []
    assert "Enter the firing order" in said("30/1/28/2")


def test_even_luck_is_called_uneven_one_time_in_twenty() -> None:
    dice = random.Random(20)
    uneven = 0
    for _ in range(2000):
        counters = [0, 0, 0, 0]
        for _ in range(60):
            counters[dice.randrange(4)] += 1
        uneven += misfire_pattern(counters).probability < 0.05
    assert 0.03 < uneven / 2000 < 0.07


def test_uneven_counts_without_one_that_stands_out_ask_to_count_on() -> None:
    counters = [114, 86, 114, 86, 114, 86, 114, 86]
    pattern = misfire_pattern(counters)
    assert (pattern.above, pattern.below, pattern.probability < 0.05) == ((), (), True)
    found = said(" ".join(map(str, counters)))
    assert found.startswith("Uneven (")
    assert found.endswith("no cylinder stands out: count on.")


@pytest.mark.parametrize(
    ("cylinders", "engine", "says", "not_said"),
    [
        ((1, 2), EngineMap(banks=((1, 2, 3), (4, 5, 6))), "lie on one bank", "whole bank"),
        ((1, 2), EngineMap(banks=((1, 2, 3), (4, 5, 6))), "side by side in the block", "cap"),
        ((1, 3), EngineMap(banks=((1, 2, 3), (4, 5, 6))), "lie on one bank", "side by side"),
        ((1, 2), EngineMap(), "side by side in the block", "bank"),
        ((1, 5, 3), EngineMap(FiringOrder((1, 5, 3, 6, 2, 4))), "one side of a cap", "bank"),
    ],
)
def test_what_cylinders_have_in_common(
    cylinders: tuple[int, ...], engine: EngineMap, says: str, not_said: str
) -> None:
    found = " ".join(in_common(cylinders, engine))
    assert says in found
    assert not_said not in found


@pytest.mark.parametrize(
    ("cylinders", "engine"),
    [
        ((1, 4), EngineMap(banks=((1, 2, 3), (4, 5, 6)))),  # on two banks
        ((1, 3, 2), EngineMap(FiringOrder((1, 5, 3, 6, 2, 4)))),  # a gap in the row of towers
        ((1, 5, 3, 6, 2, 4), EngineMap(FiringOrder((1, 5, 3, 6, 2, 4)))),  # all of them
        ((1, 2), EngineMap(banks=((3, 4), (5, 6)))),  # on none that was named
    ],
)
def test_cylinders_that_share_nothing_are_said_to_share_nothing(
    cylinders: tuple[int, ...], engine: EngineMap
) -> None:
    assert in_common(cylinders, engine) == []


@pytest.mark.parametrize(
    ("statistic", "dof", "beyond"),
    # Tables of the chi-square distribution, five places; nothing, and more than any number.
    [(3.84146, 1, 0.05), (7.81473, 3, 0.05), (24.99579, 15, 0.05), (0.35185, 3, 0.95),
     (0.0, 3, 1.0), (math.inf, 3, 0.0)],
)  # fmt: skip
def test_chance_is_that_of_the_tables(statistic: float, dof: int, beyond: float) -> None:
    assert chi_square_beyond(statistic, dof) == pytest.approx(beyond, abs=5e-6)
