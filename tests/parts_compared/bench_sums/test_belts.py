"""A belt's marking, its profile, and its run around two pulleys."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.belt_marking import (
    BeltMarking,
    belt_marking,
    profiles_near,
)
from desktop_app.parts_compared.bench_sums.belt_run import centres_for, open_run
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.mark.parametrize("text", ["6PK1230", "6 pk 1230", " 6PK 1230 "])
def test_a_marking_is_read(text: str) -> None:
    found = belt_marking(text)
    assert found == BeltMarking(6, "PK", 1230)
    # Pitch of the profile PK: ISO 9981, recalled.
    assert found.width == pytest.approx(6 * 3.56)


@pytest.mark.parametrize("text", ["", "1230", "6PX1230", "PK1230", "0PK1230", "6PK1230x"])
def test_what_is_no_marking(text: str) -> None:
    assert belt_marking(text) is None


def test_the_profile_from_the_pitch() -> None:
    assert profiles_near(21.4 / 6, 0.1) == ("PK",)
    assert profiles_near(3.0, 0.1) == ()


def test_a_longer_belt_is_called_longer_and_puts_the_pulleys_farther() -> None:
    marked = work_out("belt-identity", {"new_marking": "6PK1245", "old_marking": "6PK1230"})
    assert "The new one is 15 mm longer, as marked" in marked.sentence
    typed = {"one_pulley": "150", "other_pulley": "60", "belt": "1230", "centres": "400"}
    apart = 1230 - open_run(150, 60, 400)
    found = work_out("belt-run", typed)
    assert apart > 0
    assert "is " in found.sentence
    assert "longer: the pulleys stand" in found.sentence


@pytest.mark.parametrize(("work", "says"), [
    (lambda: open_run(150, 60, 104), "the pulleys overlap"),
    (lambda: centres_for(300, 150, 60), "too short for these pulleys"),
])  # fmt: skip
def test_pulleys_that_can_not_be_have_no_belt(work: Callable[[], float], says: str) -> None:
    with pytest.raises(ValueError, match=says):
        work()


def test_fifteen_millimetres_short_moves_the_tensioner_by_half() -> None:
    found = work_out("belt-identity", {"new_marking": "6PK1215", "old_marking": "6PK1230"})
    assert found.value == -15
    assert found.expanded is None
    assert "15 mm shorter, as marked" in found.sentence
    assert "about 7.5 mm" in found.sentence
    assert [label for label, _ in found.inputs] == [
        "marking on the new belt",
        "marking on the old belt",
    ]


def test_an_old_belt_without_a_marking_is_counted_and_measured() -> None:
    typed = {"new_marking": "6PK1230", "ribs": "6", "width": "21.4", "length": "1231"}
    found = work_out("belt-identity", typed)
    assert "a pitch of 3.57 mm points to PK" in found.sentence
    assert "No difference in length was found" in found.sentence
    other = work_out("belt-identity", {**typed, "width": "14.0"})
    assert other.sentence.startswith("Not the same belt: profile PK against PJ")


def test_other_ribs_are_another_belt() -> None:
    found = work_out("belt-identity", {"new_marking": "5PK1230", "old_marking": "6PK1230"})
    assert found.sentence.startswith("Not the same belt: 5 ribs against 6")


@pytest.mark.parametrize(
    "typed",
    [{}, {"new_marking": "rubber"}, {"new_marking": "6PK1230"},
     {"new_marking": "6PK1230", "ribs": "6", "width": "21"}],
)  # fmt: skip
def test_a_belt_of_which_too_little_is_known(typed: dict[str, str]) -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out("belt-identity", typed)
    assert "Accepted: " in caught.value.sentence()


def test_equal_pulleys_are_two_straights_and_one_circle() -> None:
    assert open_run(80, 80, 300) == pytest.approx(600 + 80 * math.pi)


def test_touching_a_point_is_the_known_triangle() -> None:
    # A pulley of 200 against a point 200 away: tangents of 100*sqrt(3), arc of 240 degrees.
    wanted = 2 * 100 * math.sqrt(3) + 200 * math.pi * 240 / 360
    assert open_run(200, 0, 200) == pytest.approx(wanted)


pulleys = st.floats(20, 200)


@given(pulleys, pulleys, st.floats(201, 600))
def test_the_run_is_one_whichever_pulley_is_first(one: float, other: float, apart: float) -> None:
    assert open_run(one, other, apart) == pytest.approx(open_run(other, one, apart))
    assert open_run(one, other, apart) >= 2 * apart


@given(pulleys, pulleys, st.floats(201, 600), st.floats(0.1, 30))
def test_farther_apart_is_longer_by_no_more_than_twice(
    one: float, other: float, apart: float, more: float
) -> None:
    grown = open_run(one, other, apart + more) - open_run(one, other, apart)
    assert grown > 0
    assert centres_for(open_run(one, other, apart), one, other) == pytest.approx(apart, abs=1e-6)


@given(pulleys, pulleys, st.floats(201, 600))
def test_inches_and_millimetres_give_one_run(one: float, other: float, apart: float) -> None:
    inches = open_run(one / 25.4, other / 25.4, apart / 25.4) * 25.4
    assert inches == pytest.approx(open_run(one, other, apart))


def test_a_belt_held_against_its_run() -> None:
    typed = {"one_pulley": "60", "other_pulley": "150", "centres": "200"}
    run = work_out("belt-run", typed).value
    assert "can't be told" in work_out("belt-run", {**typed, "belt": f"{run:.1f}"}).sentence
    assert "shorter" in work_out("belt-run", {**typed, "belt": "720"}).sentence
    assert "doesn't go around" in work_out("belt-run", {**typed, "belt": "400"}).sentence
    with pytest.raises(ShopTrouble, match="overlap"):
        work_out("belt-run", {**typed, "centres": "100"})
