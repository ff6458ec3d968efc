"""What the program hears in what people say."""

from __future__ import annotations

import string
import time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.vocabulary_file import (
    VocabularyTrouble,
    read_vocabulary,
    shop_vocabulary,
)

VOCABULARY = shop_vocabulary()


def heard(text: str) -> list[str]:
    return [group.plain for group in VOCABULARY.groups_in(text)]


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("misses damp and uphill; P0300", ["misfire"]),
        ("MISSFIRES in the rain", ["misfire"]),
        ("It hesatates on light throttle when cold", ["hesitation"]),
        ("rough idel", ["rough idle"]),
        ("the idle is rough when the engine is warm", ["rough idle"]),
        ("Car won't crank, it just clicks", ["no crank"]),
        ("My check engine light is on", ["engine lamp on"]),
        ("EML on", ["engine lamp on"]),
        ("check engine light flashing when I floor it", ["engine lamp flashing"]),
        ("no power going up hills", ["low power"]),
        ("It jumps and chugs going up the hill", ["misfire"]),
        ("chugs up every hill", ["misfire"]),
        ("it chugs at idle", ["dead cylinder"]),
        ("jumps when I accelerate", ["jerking"]),
        ("it needed a jump start, then drove uphill", ["flat battery"]),
        ("jumps out of gear uphill", ["hard to get into gear"]),
        ("temp gauge jumps about when accelerating", ["gauge reads wrong"]),
        ("starts again when it has cooled down", []),
        ("dies hot, restarts when it has cooled down", ["dies while driving", "no restart hot"]),
        ("stearing wheel shakes when breaking", ["shakes when braking"]),
        ("pulls to the left when braking", ["pulls when braking"]),
        ("pulls to the left", ["wanders or pulls"]),
        ("the A/C is not cold at idle", ["air conditioning warm"]),
        ("misses and a sweet smell", ["misfire", "loses coolant"]),
        ("transmission slips between gears", ["automatic shifts badly"]),
        ("battery is dead in the morning", ["flat battery"]),
        ("smells of petrol", ["fuel smell outside"]),
        ("smells of gas", ["fuel smell outside"]),
        ("customer wants new tyres", []),
        ("service lamp on, oil change", []),
        ("", []),
    ],
)
def test_everyday_sentences_are_understood(text: str, plain: list[str]) -> None:
    assert heard(text) == plain


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("no misfire now", []),
        ("doesn't stall", []),
        ("it does not stall or misfire any more", []),
        ("misfire gone", []),
        ("No longer misfires, but idles rough", ["rough idle"]),
        ("not overheating but loses coolant", ["loses coolant"]),
        ("engine light on, no misfire", ["engine lamp on"]),
        ("don't know why it misfires", ["misfire"]),
        ("not sure if it misfires", ["misfire"]),
        ("No. 3 cylinder misfire", ["dead cylinder"]),
        ("no heat", ["poor heater"]),
        ("will not pull", ["low power"]),
    ],
)
def test_what_is_denied_does_not_count(text: str, plain: list[str]) -> None:
    assert heard(text) == plain


def test_the_longest_phrase_wins() -> None:
    assert heard("backfires") == ["exhaust backfire"]
    assert heard("backfires through the intake") == ["intake backfire"]


def test_conditions_are_heard_beside_the_symptom() -> None:
    assert VOCABULARY.conditions_in("misses cold, in the rain and uphill") == (
        *("cold", "rain", "pulling"),
    )
    assert VOCABULARY.conditions_in("shakes at lights, never when hot") == ("idle",)
    assert VOCABULARY.conditions_in("heater blows cold air") == ()


def test_words_with_two_meanings_are_asked_about_unless_settled() -> None:
    assert [two.word for two in VOCABULARY.to_ask("the rotor is worn")] == ["rotor"]
    assert VOCABULARY.to_ask("the distributor rotor is worn") == ()


def test_all_groups_are_there_and_every_phrase_finds_its_own() -> None:
    assert len(VOCABULARY.groups) == 84
    lost = [
        (group.id, phrase)
        for group in VOCABULARY.groups
        for phrase in group.phrases
        if group not in VOCABULARY.groups_in(phrase)
    ]
    assert lost == []


def test_neighbours_are_offered_and_names_are_shown() -> None:
    assert VOCABULARY.shown("misfire-random") == "misfire"
    assert VOCABULARY.shown("gone") == "gone"
    assert "misfire-one" in [group.id for group in VOCABULARY.near("misfire-random")]
    assert VOCABULARY.near("gone") == ()
    assert VOCABULARY.group("gone") is None


@given(st.text(string.printable + "’äß½", max_size=300))
def test_any_text_can_be_read(text: str) -> None:
    assert len(set(heard(text))) == len(heard(text))
    assert heard(text) == heard(text.upper().lower())


def test_a_long_concern_is_read_while_typing() -> None:
    text = "It misses cold and in the rain, shakes at lights, and the heater blows cold. " * 4
    best = min(timed(text) for _ in range(20))
    assert best < 0.02


def timed(text: str) -> float:
    start = time.perf_counter()
    VOCABULARY.groups_in(text)
    return time.perf_counter() - start


GOOD = '[[groups]]\nid = "a"\nplain = "thump"\nmeans = "it thumps"\nheard = ["thumps"]\n'


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("[[groups]\n", "own.toml cannot be read"),
        (GOOD.replace("plain", "plane"), "plane"),
        (GOOD.replace('heard = ["thumps"]', ""), "group a has nothing in “heard”"),
        (GOOD.replace('["thumps"]', '"thumps"'), "a.heard is not a list"),
        (GOOD + 'when = ["sunday"]\n', "“sunday” in “when” is not known"),
        (GOOD + 'systems = ["flux"]\n', "“flux” in “systems” is not known"),
        (GOOD + 'codes = ["P03"]\n', "“P03” is not a trouble code"),
        (GOOD + 'near = ["b"]\n', "there is no such group"),
        (GOOD + GOOD, "Two symptom groups are called “a”"),
        (GOOD + '[conditions]\nsunday = ["on sundays"]\n', "there is no condition “sunday”"),
        (GOOD + "[mended]\nx = 3\n", "“x” in “mended” has no meaning"),
        ('groups = "none"\n', "“groups” is not a list of tables"),
        (GOOD + "[colours]\n", "“colours” is not a part of a vocabulary"),
        (GOOD + '[[two_meanings]]\nword = "cap"\n', "“cap” has no “ask”"),
        ("groups = [3]\n", "a group is not a table"),
        (GOOD.replace('"thump"', '" "'), "group a has no “plain”"),
        ('mended = "x"\n' + GOOD, "“mended” is not a table"),
        (GOOD + '[[two_meanings]]\nask = "Which?"\n', "an entry of two_meanings has no “word”"),
        ("", "No symptom groups were found"),
    ],
)
def test_a_mistake_in_a_file_is_named_in_plain_words(tmp_path: Path, text: str, says: str) -> None:
    (tmp_path / "own.toml").write_text(text, encoding="utf-8")
    with pytest.raises(VocabularyTrouble) as caught:
        read_vocabulary(tmp_path)
    assert says in caught.value.sentence()


def test_a_shops_own_file_is_read_like_ours(tmp_path: Path) -> None:
    (tmp_path / "own.toml").write_text(GOOD, encoding="utf-8")
    own = read_vocabulary(tmp_path)
    assert [group.plain for group in own.groups_in("It thumped twice")] == ["thump"]


def test_what_is_made_of_signs_or_little_words_alone_stands_for_nothing(tmp_path: Path) -> None:
    replaced = '[mended]\n"?!" = "thumps"\n[one_word]\nthe = "thumps"\n'
    (tmp_path / "own.toml").write_text(GOOD + replaced, encoding="utf-8")
    own = read_vocabulary(tmp_path)
    assert own.groups_in("The lamp?!") == ()
    assert own.with_own({"it has the": "a"}).groups_in("It has the lamp.") == ()


@pytest.mark.parametrize(
    ("text", "groups", "conditions"),
    [
        ("It squeals since last week.", [], []),
        ("Since Monday the brakes squeal.", ["brake squeal"], ["braking"]),
        ("The heater hasn't worked since Monday.", [], []),
        ("It has been here since Tuesday.", [], []),
        ("We have had it since new.", [], []),
        ("You had it in May for the tyres.", [], []),
        ("Needs a repair after hitting a kerb.", [], []),
        ("New battery after service, please.", [], []),
        ("Since you had it, it rattles.", ["new since our work"], ["since-last-visit"]),
        ("It rattles since you worked on it.", ["new since our work"], ["since-last-visit"]),
        ("It never did that before you worked on it.", ["new since our work"], []),
        ("There is a smell after your repair.", ["new since our work"], []),
        ("Since it was here it is odd.", ["new since our work"], ["since-last-visit"]),
        ("It is now noisy.", [], []),
        ("I turned it off and on again.", [], []),
        ("Comes on and off, now and then.", [], ["random"]),
        ("It takes a second to start.", [], []),
        ("Only in second gear.", [], ["one-gear"]),
        ("The third owner told me so.", [], []),
        ("The wheel cap is missing.", [], []),
        ("The light switch is broken.", [], []),
        ("It whistles when I switch it on.", [], ["with-switch"]),
        ("Filled with coolant twice.", [], []),
        ("I just filled it with fuel.", [], ["just-filled"]),
        ("The water pump was replaced.", [], []),
        ("Water in the car after rain.", ["water inside"], ["rain"]),
        ("The door lock is stiff and clicks.", [], []),
        ("It just clicks.", ["no crank"], []),
        ("Creaks on lock.", [], ["full-lock"]),
        ("Every time it rains.", [], ["rain"]),
        ("Mirror knocked off.", [], []),
        ("It has done 60,000 miles.", [], []),
        ("Hums at 60.", ["drones with speed"], ["high-speed"]),
        ("Shudders when I give it gas.", ["shudders when pulling"], ["pulling"]),
        ("I put my foot down and it hesitates.", ["hesitation"], ["pulling"]),
        ("The gas light is on.", [], []),
        ("Hums when turning.", ["drones with speed"], ["turning"]),
        ("It turns on by itself.", [], []),
        ("Could you park it outside?", [], []),
        ("Revs go up and down by itself.", ["hunting idle"], []),
        ("It does the same as this morning.", [], []),
        ("You had it this morning.", [], []),
        ("Misses in the morning.", ["misfire"], ["first-start"]),
    ],
)
def test_ordinary_words_name_no_symptom_and_no_condition(
    text: str, groups: list[str], conditions: list[str]
) -> None:
    assert heard(text) == groups
    assert list(VOCABULARY.conditions_in(text)) == conditions


def test_a_shops_own_phrase_may_be_read_word_for_word_only(tmp_path: Path) -> None:
    whole = '\n[whole]\nphrases = ["since you had it"]\n'
    group = '[[groups]]\nid = "new"\nplain = "n"\nmeans = "x"\nheard = ["since you had it"]\n'
    (tmp_path / "own.toml").write_text(group + whole, encoding="utf-8")
    words = read_vocabulary(tmp_path)
    assert [one.id for one in words.groups_in("It hums since you had it.")] == ["new"]
    assert words.groups_in("It hums since Monday.") == ()
