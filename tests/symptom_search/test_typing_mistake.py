"""A word that nobody wrote is taken for the nearest one that somebody did."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.typing_mistake import (
    distance,
    distance_to_stem,
    mistakes_allowed,
    nearest,
)

# Stems as the index keeps them, with the number of jobs that have each.
STEMS = {
    "over": 50,
    "steam": 5,
    "coolant": 9,
    "cold": 30,
    "altern": 4,
    "misfir": 20,
    "steer": 7,
    "brak": 40,
    "rotor": 8,
}
LETTERS = st.text(alphabet="abcde", max_size=8)


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("colant", "coolant"),
        ("coolnat", "coolant"),
        ("alternater", "altern"),
        ("missfire", "misfir"),
        ("stering", "steer"),
        ("steerring", "steer"),
        ("brkae", "brak"),
        ("roter", "rotor"),
    ],
)
def test_the_nearest_known_word_is_found(typed: str, meant: str) -> None:
    assert nearest(typed, STEMS.items())[0] == meant


@pytest.mark.parametrize("typed", ["xyzzy", "col", "abs", "carburettor", "overheat"])
def test_nothing_is_guessed_where_nothing_is_near(typed: str) -> None:
    assert nearest(typed, STEMS.items()) == ()


def test_short_words_may_have_no_mistake_and_long_ones_two() -> None:
    assert [mistakes_allowed("x" * n) for n in (3, 4, 7, 8)] == [0, 1, 1, 2]


@given(LETTERS, LETTERS)
def test_the_distance_is_the_same_both_ways_and_nought_only_for_equals(one: str, two: str) -> None:
    assert distance(one, two) == distance(two, one)
    assert (distance(one, two) == 0) == (one == two)
    assert abs(len(one) - len(two)) <= distance(one, two) <= max(len(one), len(two))


@given(LETTERS, LETTERS, st.integers(0, 3))
def test_giving_up_early_changes_nothing_within_the_bound(typed: str, stem: str, most: int) -> None:
    whole, bounded = distance_to_stem(typed, stem), distance_to_stem(typed, stem, most)
    assert bounded == whole or min(bounded, whole) > most
