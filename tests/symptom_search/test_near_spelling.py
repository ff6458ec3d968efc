"""Slips, words written apart or as one, and ordinary words that are no slips."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search import near_spelling, phrase_slips, told_words
from desktop_app.symptom_search.near_spelling import NearSpelling, sounds
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

KNOWN = frozenset(("shudder", "hesitation", "start", "valve", "flicker", "bearing"))
NEAR = NearSpelling(KNOWN, str, ordinary=("startle",))


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("shuder", "shudder"),  # one letter dropped
        ("strat", "start"),  # two letters swapped, in a short word
        ("flikker", "flicker"),
        ("hesatasion", "hesitation"),  # two mistakes in a long word
        ("hesitayshun", "hesitation"),  # written as it is heard
        ("value", "value"),  # short: another word rather than a slip
        ("startle", "startle"),  # an ordinary word
        ("shudder", "shudder"),
        ("shudd3r", "shudd3r"),
        ("", ""),
    ],
)
def test_a_slip_is_taken_for_the_word_that_was_meant(typed: str, meant: str) -> None:
    assert NEAR.meant(typed) == meant


def test_a_slip_between_two_words_stands_for_neither() -> None:
    two = {"packing": "pack", "parking": "park"}
    assert NearSpelling(two, two.__getitem__).meant("pacrking") == "pacrking"
    assert NearSpelling(two, lambda _word: "same").meant("pacrking") != "pacrking"


@given(st.text("abcdehiknrstuv", max_size=14))
def test_a_word_becomes_a_known_one_or_stays(word: str) -> None:
    assert NEAR.meant(word) in {*KNOWN, word}
    assert NEAR.meant(word) == NEAR.meant(word)


def test_words_that_sound_alike_meet() -> None:
    assert sounds("skweel") == sounds("squeal")
    assert sounds("nocking") == sounds("knocking")
    assert sounds("axelerate") == sounds("accelerate")
    assert sounds("squeal") != sounds("shriek")


@pytest.mark.parametrize(
    ("text", "heard"),
    [
        ("over heating", ["overheats"]),
        ("back fires", ["backfire-exhaust"]),
        ("cutsout at idle", ["stall-stopping"]),
        ("fanbelt squealing", ["belt-squeal"]),
        ("it shuderrs", ["vibration-pulling"]),
        ("brakes screetch", ["brake-squeal"]),
        ("breaks are skweeling", ["brake-squeal"]),
        ("wont strat", ["no-fire"]),
        # Everyday words that are spelled nearly like a symptom.
        ("a better picture of the county", []),
        ("waxing and sanding", []),
        ("her father is in the street", []),
        ("it has done 30,000 miles", []),
    ],
)
def test_slips_are_heard_and_ordinary_words_are_not(
    words: Vocabulary, text: str, heard: list[str]
) -> None:
    assert [group.id for group in words.groups_in(text)] == heard


@pytest.mark.parametrize(
    ("text", "heard"),
    [
        ("the brakes on the left side really screech", ["brake-squeal"]),
        ("veers left under braking", ["brake-pull"]),
        ("steering wheel vibrates a lot at high speed", ["vibration-speed"]),
        ("screeching belt", ["belt-squeal"]),
        ("clunks over potholes", ["clunk-suspension"]),
    ],
)
def test_a_phrase_may_be_told_in_other_words_and_with_words_between(
    words: Vocabulary, text: str, heard: list[str]
) -> None:
    assert [group.id for group in words.groups_in(text)] == heard


def test_what_is_told_word_for_word_comes_before_what_is_only_akin(words: Vocabulary) -> None:
    """ "Shudders" stands for a group of its own, though people also say it for "shakes"."""
    assert [g.id for g in words.groups_in("shudders when pulling")] == ["vibration-pulling"]
    assert [g.id for g in words.groups_in("shakes at idle")] == ["idle-rough"]
    assert [g.id for g in words.groups_in("vibrates at idle")] == ["idle-shake"]


def test_what_is_longer_than_any_word_is_taken_for_none(monkeypatch: pytest.MonkeyPatch) -> None:
    """Looking for slips in it would hold the window for a minute."""

    def looked_up(word: str) -> set[str]:
        assert len(word) <= near_spelling.LONGEST_WORD
        return {word}

    vocabulary = shop_vocabulary()
    monkeypatch.setattr(near_spelling, "_with_gaps", looked_up)
    monkeypatch.setattr(phrase_slips, "_with_gaps", looked_up)
    stems: list[str] = []
    monkeypatch.setattr(told_words, "stem", lambda word: (stems.append(word), word)[1])
    long = "shudder" * 2_000
    assert vocabulary.groups_in(long) == ()
    assert vocabulary.conditions_in(f"{long} {long}ing") == ()
    assert len(stems) < 100
