"""Two leads crossed, seen on the cap or found from what is dead."""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder
from desktop_app.parts_compared.bench_sums.lead_swap import (
    EXHAUST,
    INTAKE,
    every_swap,
    explaining_swaps,
    is_read_backwards,
    misplaced,
    turned_towers,
)
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.shop_record.trouble import ShopTrouble

FOUR, SIX = FiringOrder((1, 3, 4, 2)), FiringOrder((1, 5, 3, 6, 2, 4))


def said(**typed: str) -> str:
    return work_out("crossed-leads", {"firing_order": "1-3-4-2", **typed}).sentence


def test_one_swap_explains_both_dead_cylinders_and_the_bang() -> None:
    found = work_out(
        "crossed-leads",
        {"firing_order": "1-3-4-2", "dead": "3 4", "bang": "through the intake"},
    )
    assert found.value == 1
    assert found.sentence.startswith("One swap of 6 explains cylinders 3 and 4 dead and a bang")
    assert "3 with 4" in found.sentence


def test_where_it_bangs_follows_from_the_stroke() -> None:
    # Strokes of 180 degrees each; valve overlap is common practice, no source.
    swaps = {(swap.first, swap.second): swap for swap in every_swap(FOUR)}
    assert swaps[1, 3].first_late == 180
    assert swaps[1, 3].second_late == 540
    assert swaps[1, 3].bangs() == {EXHAUST, INTAKE}
    assert swaps[1, 4].first_late == swaps[1, 4].second_late == 360
    assert swaps[1, 4].bangs() == {INTAKE}


def test_three_dead_are_no_swap_of_two() -> None:
    assert explaining_swaps(SIX, (1, 2, 3)) == []
    assert "look elsewhere" in said(dead="1 2 3")


def test_several_that_look_alike_are_all_named() -> None:
    assert said(dead="1").startswith("3 swaps of 6 explain cylinder 1 dead")


def test_the_photo_alone() -> None:
    assert said(found="1-3-4-2") == "Every lead stands on its tower."
    assert said(found="1-4-3-2") == "The leads of 3 and 4 are crossed."
    assert said(found="2-1-3-4") == "All leads stand 1 tower on, in the right order."
    # On four towers a swap of opposite ones looks like a list read backwards: both are said.
    both = said(found="1-2-4-3")
    assert "2 and 3 are crossed" in both
    assert "read against the rotor's turn" in both


@given(st.permutations(range(1, 9)), st.integers(0, 7), st.integers(0, 7))
def test_a_swap_made_is_the_swap_found(order: list[int], one: int, other: int) -> None:
    found = list(order)
    found[one], found[other] = found[other], found[one]
    wanted = () if one == other else tuple(sorted((order[one], order[other])))
    assert misplaced(FiringOrder(tuple(order)), found) == wanted


@given(st.permutations(range(1, 7)), st.integers(1, 5))
def test_leads_moved_on_together_are_seen(order: list[int], steps: int) -> None:
    assert turned_towers(FiringOrder(tuple(order)), order[-steps:] + order[:-steps]) == steps


def test_every_swap_of_two_is_looked_at_once() -> None:
    pairs = [(swap.first, swap.second) for swap in every_swap(SIX)]
    assert len(pairs) == len(set(pairs)) == 15
    assert all(swap.first_late + swap.second_late == 720 for swap in every_swap(SIX))


def test_no_list_is_both_right_and_backwards() -> None:
    for order in permutations(range(1, 5)):
        assert not is_read_backwards(FiringOrder(order), order)


@pytest.mark.parametrize(
    "typed",
    [{}, {"found": "1-3-4"}, {"found": "1-3-4-4"}, {"dead": "7"}, {"bang": "out of the boot"}],
)
def test_what_can_not_be_is_refused(typed: dict[str, str]) -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out("crossed-leads", {"firing_order": "1-3-4-2", **typed})
    assert "Accepted: " in caught.value.sentence()


def test_a_bang_alone_is_a_sign_too() -> None:
    found = said(bang="in the exhaust")
    assert "explain" in found
    assert "a bang in the exhaust" in found
    assert "dead" not in found


def test_three_leads_that_changed_places_are_more_than_one_swap() -> None:
    # 1-3-4-2 with the leads of 1, 3 and 4 each a tower on; that of 2 stands right.
    assert "more than one swap" in said(found="4-1-3-2")
