"""A condition of which somebody says that nothing happens then is not one that it happens under."""

from __future__ import annotations

from time import perf_counter

import pytest

from desktop_app.symptom_search.nothing_said import nothing_plain
from desktop_app.symptom_search.vocabulary import Vocabulary

NOTHING = [
    (
        "When it rains it jumps and chugs going up the hill, and the lamp flashed at me. "
        "Dry days nothing.",
        ["rain", "pulling"],
    ),
    ("Misfires when it is wet, mostly uphill. Never in the dry.", ["rain", "pulling"]),
    ("dry days nothing", []),
    ("dry days are no trouble", []),
    ("on dry days it is fine", []),
    ("in the dry nothing", []),
    ("nothing in the dry", []),
    ("nothing at all in dry weather", []),
    ("none in the dry", []),
    ("cold, nothing", []),
    ("Hot: nothing.", []),
    ("when dry it's gone", []),
    ("gone when dry", []),
    ("dry: no problem", []),
    ("on dry days not a thing", []),
    ("cold it never does it", []),
    ("in the dry it doesn't do it", []),
    ("when dry it does not", []),
    ("cold, it won't do it", []),
    ("hasn't done it in the dry", []),
    ("never happens when it is dry", []),
    ("never happens on the flat when cold", []),
    ("only when wet, not a problem when dry", ["rain"]),
    ("no trouble when cold", []),
    ("never in the dry", []),
    ("In the rain it misses, in the dry it does not.", ["rain"]),
    ("in the rain yes, in the dry no", ["rain"]),
    ("cold no, hot yes", ["hot"]),
    ("misses in the wet nothing in the dry", ["rain"]),
    ("misses in the rain and nothing in the dry", ["rain"]),
    ("at idle nothing, at 60 it shakes", ["high-speed"]),
    ("shakes at 60, nothing at idle", ["high-speed"]),
    ("squeals cold, goes away when warm", ["cold"]),
    ("Squeals when cold. Once it is hot it goes away.", ["cold"]),
    ("knocks on cold start, nothing after ten minutes", ["cold"]),
]
# "Nothing" tells of the fault itself, or of something else.
SOMETHING = [
    ("nothing works when cold", ["cold"]),
    ("nothing in the car works when cold", ["cold"]),
    ("nothing helps in the rain", ["rain"]),
    ("nothing found when hot", ["hot"]),
    ("nothing but trouble when cold", ["cold"]),
    ("nothing until it is hot", ["hot"]),
    ("no power when cold", ["cold"]),
    ("power is gone when hot", ["hot"]),
    ("nothing happens when I turn the key in the cold", ["cold"]),
    ("nothing when I turn the key in the cold", ["cold"]),
    ("turn the key in the cold: nothing", ["cold"]),
    ("starter does nothing when cold", ["cold"]),
    ("does nothing in the rain", ["rain"]),
    ("put my foot down uphill and nothing", ["pulling"]),
    ("reverse: nothing when cold", ["in-gear", "cold"]),
    ("dies when hot and nothing for an hour", ["hot"]),
    ("rattles when cold and goes away", ["cold"]),
    ("cold it never starts", ["cold"]),
    ("when cold it won't", ["cold"]),
    ("in the rain it never starts", ["rain"]),
    ("hot starts are fine, cold starts are not", ["cold"]),
]


@pytest.mark.parametrize(("text", "happens"), NOTHING)
def test_where_nothing_happens_the_trouble_does_not(
    words: Vocabulary, text: str, happens: list[str]
) -> None:
    assert list(words.conditions_in(text)) == happens


@pytest.mark.parametrize(("text", "happens"), SOMETHING)
def test_a_nothing_that_tells_of_the_fault_denies_no_condition(
    words: Vocabulary, text: str, happens: list[str]
) -> None:
    assert list(words.conditions_in(text)) == happens


@pytest.mark.parametrize("again", ["but when it ", "nothing ", "it does not ", "and in it "])
def test_a_long_text_is_read_in_time_proportional_to_it(again: str) -> None:
    start = perf_counter()
    nothing_plain(again * 10_000)
    assert perf_counter() - start < 2
