"""What is told of another thing is no symptom of the engine, and a part is called by its name."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.symptom_search.question import read_question
from desktop_app.symptom_search.vocabulary import Vocabulary


def heard(words: Vocabulary, text: str) -> list[str]:
    return [group.id for group in words.groups_in(text)]


@pytest.mark.parametrize(
    ("text", "groups"),
    [
        ("it dies", ["stall-driving"]),
        ("the phone charger dies", []),
        ("battery keeps dying overnight", ["flat-battery"]),
        ("engine dies", ["stall"]),
        ("heater on and it dies", ["stall-driving"]),
        ("the heater only blows hot air when going along", []),
        ("it blows", ["exhaust-noise"]),
        ("the horn roars", []),
        ("wipers judder", []),
        ("clutch judders", ["vibration-pulling"]),
        ("the pedal sticks", ["revs-stay-up"]),
        ("the clutch pedal sticks", ["shift-manual"]),
        ("pedal goes to the floor", ["brake-soft"]),
        ("clutch pedal goes to the floor", ["shift-manual"]),
        ("handbrake does not hold", ["parking-brake"]),
        ("it always jumps when accelerating", ["jerking"]),
        ("temperature gauge jumps up hills", ["gauge-wrong"]),
        ("the rev counter needle jumps when pulling", ["gauge-wrong"]),
        ("needle suddenly jumps when accelerating", ["gauge-wrong"]),
        ("timing chain jumps when accelerating", []),
        ("belt jumps off when accelerating", []),
        ("steering wheel jumps when accelerating", []),
        ("jumps out of second when accelerating", ["shift-manual"]),
        ("starts fine after cooling down", []),
        ("it starts when cooled down", []),
    ],
)
def test_a_word_is_told_of_the_thing_before_it(
    words: Vocabulary, text: str, groups: list[str]
) -> None:
    assert heard(words, text) == groups


@pytest.mark.parametrize(
    ("text", "group"),
    [
        ("it knocks", "engine-knock"),
        ("knocks when hot", "engine-knock"),
        ("knocks on cobbles front right", "clunk-suspension"),
        ("knocking on a bad road", "clunk-suspension"),
        ("ticks on full lock", "clicks-turning"),
    ],
)
def test_a_noise_is_named_by_where_it_is_heard(words: Vocabulary, text: str, group: str) -> None:
    assert heard(words, text) == [group]


@pytest.mark.parametrize(
    ("text", "conditions"),
    [
        ("handbrake slips", ()),
        ("goes into drive from park", ()),
        ("scrapes when parking", ("parking",)),
        ("scrapes when I park", ("parking",)),
        ("smells like a wet dog", ()),
        ("puddle under the car", ()),
        ("cuts out when wet", ("rain",)),
        ("boot full of water", ()),
    ],
)
def test_a_word_for_a_thing_is_no_circumstance(
    words: Vocabulary, text: str, conditions: tuple[str, ...]
) -> None:
    assert words.conditions_in(text) == conditions


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("starters", ("starter",)),
        ("when he starts it", ()),
        ("cap cracked", ("distributor-cap",)),
        ("gunk under the oil cap", ()),
    ],
)
def test_a_part_is_known_by_its_name_alone(
    words: Vocabulary, kinds: dict[str, PartKind], text: str, parts: tuple[str, ...]
) -> None:
    assert read_question(text, words, kinds).part_kinds == parts


def test_parts_alone_are_no_guess(words: Vocabulary) -> None:
    assert words.perhaps_in("the parking brake and the brake pedal") is None
