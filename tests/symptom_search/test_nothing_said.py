"""A condition of which somebody says that nothing happens then is not one that it happens under."""

from __future__ import annotations

from time import perf_counter

import pytest

from desktop_app.symptom_search.nothing_said import Told, nothing_plain
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
    ("misses in the wet, nothing in the dry", ["rain"]),
    ("misses in the rain and nothing in the dry", ["rain"]),
    ("at idle nothing, at 60 it shakes", ["high-speed"]),
    ("shakes at 60, nothing at idle", ["high-speed"]),
    ("squeals cold, goes away when warm", ["cold"]),
    ("Squeals when cold. Once it is hot it goes away.", ["cold"]),
    ("knocks when cold, nothing after ten minutes", ["cold"]),
    ("Misses in the rain. Nothing when it is dry.", ["rain"]),
    ("nothing when it's cold", []),
    ("it goes away when it is warm", []),
    ("it goes away when it gets warm", []),
    ("knocks cold, goes away when it's hot", ["cold"]),
    ("gone when it is dry", []),
    ("none when it is dry", []),
    ("hasn't done it when it is dry", []),
    ("squeals when cold, goes away when it warms up", ["cold"]),
    ("the noise is gone when warm", []),
    ("nothing happens in the dry", []),
    ("Nothing whatsoever when it's dry", []),
    ("It squeals when it's cold, as soon as it's warm there's nothing", ["cold"]),
    ("Rattles in the wet. When the weather is dry, nothing.", ["rain"]),
    ("shakes at 60, at 30 it is calm, nothing at idle", ["high-speed"]),
    ("Clunks when it is cold, when it's warmed up nothing at all", ["cold"]),
    ("misses when it rains but nothing when it is dry", ["rain"]),
    ("In the wet it misses. But in the dry nothing.", ["rain"]),
    ("misses in the rain - dry days nothing", ["rain"]),
    ("Misses in the rain (dry: nothing)", ["rain"]),
    ("whines when hot. Cold, none.", ["hot"]),
    ("Nothing when it is hot, only when it is cold", ["cold"]),
    ("It groans in the cold. Goes away once it is warm.", ["cold"]),
    ("It squeaks first thing this morning, gone when it is warm", ["first-start"]),
    ("In the damp it stutters, none of it when it's dry", ["damp"]),
    ("The knocking disappears when it is hot", []),
    ("hums at 70, nothing at idle", ["high-speed"]),
    ("in wet weather it misfires, in dry weather not at all", ["rain"]),
    ("cold nothing, hot nothing, wet it misses", ["rain"]),
]
# "Nothing" tells of the fault itself, or of something else, or may do so.
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
    ("In the morning nothing, just clicks", ["first-start"]),
    ("In the morning nothing", ["first-start"]),
    ("Cold mornings nothing, just a click", ["cold"]),
    ("When it is cold nothing. Just a click.", ["cold"]),
    ("Won't start. When it's cold, nothing.", ["cold"]),
    ("Cold start: nothing", ["cold"]),
    ("Hot restart: nothing", ["restart-hot"]),
    ("Turn it over in the cold: nothing", ["cold"]),
    ("Battery lamp on. Cold: nothing.", ["cold"]),
    ("Cold, and then nothing", ["cold"]),
    ("Brake pedal: nothing when cold", ["braking", "cold"]),
    ("brakes fade downhill, gone when hot", ["braking", "hot"]),
    ("brakes are gone when it is hot", ["braking", "hot"]),
    ("Steering assist: gone when cold", ["cold"]),
    ("Power steering: gone at idle", ["idle"]),
    ("Horn: nothing in the rain", ["rain"]),
    ("Indicators nothing when wet", ["rain"]),
    ("Rattles when cold. Indicators: nothing when wet.", ["cold", "rain"]),
    ("Headlights nothing in the wet", ["rain"]),
    ("In the wet the wipers do nothing", ["rain"]),
    ("Heat on the motorway, nothing at idle", ["high-speed", "idle"]),
    ("When it's cold I get nothing from the heater", ["cold"]),
    ("drive: nothing when cold", ["cold"]),
    ("brake feel is good cold, it goes away when hot", ["hot"]),
    ("Windows won't go up when cold, nothing in the frost", ["cold", "freezing"]),
    ("Brakes bite cold. Nothing when hot.", ["braking", "cold", "hot"]),
    ("No first gear when cold, nothing when hot", ["hot"]),
    ("I have power when cold, it goes away when hot", ["cold", "hot"]),
    ("clutch gone when hot", ["hot"]),
    ("oil pressure: none when hot", ["hot"]),
    ("in gear nothing", ["in-gear"]),
    ("braking: nothing", ["braking"]),
    ("second gear: none when it's cold", ["one-gear", "cold"]),
    ("nothing in second when cold", ["one-gear", "cold"]),
    ("feel nothing in the pedal when cold", ["cold"]),
    ("can see nothing in the rain", ["rain"]),
    ("nothing but noise when it is cold", ["cold"]),
    ("runs badly, pulls well when warm, cold it does not", ["cold"]),
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


@pytest.mark.parametrize(
    "again",
    ["but when it ", "nothing ", "it does not ", "and in it ", "nothing when cold, ", "cold: no "],
)
def test_a_long_text_is_read_in_time_proportional_to_it(again: str) -> None:
    start = perf_counter()
    nothing_plain(again * 10_000, lambda piece: Told(when="cold" in piece, alone=False))
    assert perf_counter() - start < 2
