"""Angles old against new: the same, turned, mirrored."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.bench_sums.turned_or_mirrored import compare_angles
from desktop_app.shop_record.trouble import ShopTrouble

whole_angles = st.lists(st.integers(0, 359), min_size=1, max_size=6)


@pytest.mark.parametrize(
    ("old", "new", "finding", "turn"),
    [
        ([60], [95], "turned", 35),
        ([40], [-40], "mirrored", -80),
        ([359], [1], "same", 2),
        ([350, 20], [20, 50], "turned", 30),
        ([40, 100], [320, 260], "mirrored", -140),
        ([10, 100], [60, 200], "neither", 75),
        ([10], [14.5], "too close to tell", 4.5),
    ],
)
def test_what_angles_say(old: list[float], new: list[float], finding: str, turn: float) -> None:
    found = compare_angles(old, new, allowed=5, off=1.5)
    assert found.finding == finding
    assert found.turn == pytest.approx(turn)


def test_the_sentences() -> None:
    assert "Turned by 35°" in work_out("turned-or-mirrored", {"old": "60", "new": "95"}).sentence
    single = work_out("turned-or-mirrored", {"old": "40", "new": "-40"}).sentence
    assert single.startswith("Mirrored")
    assert "Or it is turned by 80°" in single
    neither = work_out("turned-or-mirrored", {"old": "10; 100", "new": "60; 200"}).sentence
    assert neither.startswith("Neither turned nor mirrored")
    three = {"old": "40; 100; 250", "new": "-40; -100; -250"}
    assert "Or it" not in work_out("turned-or-mirrored", three).sentence


def test_features_on_the_keys_line_can_not_show_a_mirror() -> None:
    assert not compare_angles([0, 180], [0, 180], 5, 1).mirror_seen
    said = work_out("turned-or-mirrored", {"old": "180", "new": "180"}).sentence
    assert "a mirror image looks the same" in said


@given(whole_angles, st.integers(-179, 179))
def test_a_part_that_was_turned_is_found_turned(angles: list[int], turn: int) -> None:
    found = compare_angles(angles, [(one + turn) % 360 for one in angles], 5, 1)
    assert abs(found.turn - turn) < 1e-9
    assert found.turn_fits
    assert (found.finding == "same") == (abs(turn) <= 4)


@given(whole_angles, st.integers(-720, 720).map(lambda one: 360 * (one // 360)))
def test_whole_turns_change_nothing(angles: list[int], rounds: int) -> None:
    mirrored = [-one for one in angles]
    plain = compare_angles(angles, mirrored, 5, 1)
    assert compare_angles([one + rounds for one in angles], mirrored, 5, 1) == plain


@given(whole_angles, whole_angles)
def test_swapping_the_sides_turns_the_sign(old: list[int], new: list[int]) -> None:
    count = min(len(old), len(new))
    there = compare_angles(old[:count], new[:count], 5, 1)
    back = compare_angles(new[:count], old[:count], 5, 1)
    assert there.turn_fits == back.turn_fits
    if there.turn_fits:  # else there is no one turn to speak of
        around = (there.turn + back.turn) % 360
        assert min(around, 360 - around) == pytest.approx(0, abs=1e-6)
    assert (there.finding == "same") == (back.finding == "same")


def test_as_many_angles_on_both_sides() -> None:
    with pytest.raises(ShopTrouble, match="2 angles stand against 1"):
        work_out("turned-or-mirrored", {"old": "60", "new": "95; 100"})
