"""What a new user told of the weather, the night, the hill and the idle is read as it was meant."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.symptom_search.question import Question, read_question
from desktop_app.symptom_search.vocabulary import Vocabulary
from tests.symptom_search.conftest import OldJobs

SENTENCES = {
    "kicks and stumbles up a hill when the air is wet": (
        "misfire-random hesitation",
        "pulling damp",
    ),
    "misses when the weather is damp": ("misfire-random", "damp"),
    "coughs in heavy mist": ("misfire-random", "damp"),
    "only misses when it's pouring down": ("misfire-random", "rain"),
    "wet air filter": ("", ""),
    "stutters when accelerating uphill": ("misfire-random", "pulling"),
    "runs like a bag of nails when it's wet out": ("misfire-random", "rain"),
    "kicks going up hills": ("misfire-random", "pulling"),
    "kicks and bucks in the rain": ("jerking", "rain"),
    "kicks when changing gear": ("shift-automatic", "shifting"),
    "turbo kicks in uphill": ("", "pulling"),
    "it wont idle": ("stall-stopping", ""),
    "smells of petrol and wont idle": ("fuel-smell-outside stall-stopping", ""),
    "won't tick over": ("stall-stopping", ""),
    "wont hold an idle": ("stall-stopping", "idle"),
    "no idle": ("stall-stopping", ""),
    "wont idle when cold": ("stall-stopping", "cold"),
    "won't idle right": ("idle-rough", ""),
    "idles fine": ("", ""),
    "wont stay running": ("starts-then-dies", ""),
    "wont fire up after sitting all night": ("no-fire", "after-standing first-start"),
    "wont start after the night": ("no-fire", "first-start"),
    "wont start after it was left over night": ("no-fire", "first-start"),
    "battery flat after a night outside": ("flat-battery", "first-start"),
    "battery dies in the night": ("flat-battery", "first-start"),
    "drove all night and then it overheated": ("overheats", ""),
    "lamps dim at night": ("charge-lamp", "lamps-on"),
    "noise in the dark": ("", "lamps-on"),
    "won't crank after sitting for a week": ("no-crank", "after-standing"),
    "boils over sitting in traffic": ("overheats", "idle"),
    "temp gauge climbs in traffic": ("overheats", ""),
    "temperature climbs on hills": ("overheats", "pulling"),
    "handbrake won't hold on a hill": ("parking-brake", ""),
    "shudders when taking off from a stop": ("vibration-pulling", "take-up"),
    "take off the wheel": ("", ""),
    "wipers pack up when it rains": ("wipers-windows", "rain"),
    "windows won't go down in cold weather": ("wipers-windows", "cold"),
    "engine revs by itself at a stop light": ("", "idle"),
    "engine turns slowly": ("", ""),
    "brakes pull when wet": ("brake-pull", "rain"),
}


@pytest.mark.parametrize(("said", "meant"), SENTENCES.items())
def test_it_is_read_as_it_was_meant(words: Vocabulary, said: str, meant: tuple[str, str]) -> None:
    groups, conditions = meant
    assert [group.id for group in words.groups_in(said)] == groups.split()
    assert sorted(words.conditions_in(said)) == sorted(conditions.split())


def _looked_for(question: Question) -> list[str]:
    return [word.word for word in question.words]


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("misses when the air is wet ", ["misses", "wet"]),
        ("misses in damp air ", ["misses", "damp"]),
        ("misses in wet weather ", ["misses", "wet"]),
        ("misses when the engine is cold ", ["misses", "cold"]),
        ("air hose split ", ["air", "hose", "split"]),
        ("always a little ", ["little"]),
        ("full tank ", ["full", "tank"]),
        ("wont start on a cold start ", ["start", "cold"]),
    ],
)
def test_a_word_that_goes_along_with_a_condition_is_not_looked_for(
    words: Vocabulary, kinds: dict[str, PartKind], said: str, left: list[str]
) -> None:
    question = read_question(said, words, kinds)
    assert sorted(_looked_for(question)) == sorted(left)


def test_wet_air_finds_no_air_meter(old_jobs: OldJobs) -> None:
    old_jobs.job("Warning lamp.", correction="Air meter renewed, air hose put right.")
    old_jobs.job("It misses when it is damp and going uphill.", happens=("damp", "pulling"))
    assert old_jobs.numbers("misses uphill when the air is wet ") == ["J-002"]
    assert old_jobs.numbers("air meter ") == ["J-001"]
