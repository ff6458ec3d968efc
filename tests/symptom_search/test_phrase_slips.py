"""A slip in one word of a phrase is heard where its other words stand there; others are none."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.phrase_slips import PhraseSlips
from desktop_app.symptom_search.vocabulary import Vocabulary

KNOWN = ("bump", "hard", "rough", "smok", "squeal", "grind")
SLIPS = PhraseSlips(KNOWN, frozenset((*KNOWN, "card", "bum")).__contains__)


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("bup", ("bump",)),  # a letter left out
        ("hrad", ("hard",)),  # two swapped
        ("roughh", ("rough",)),  # one too many
        ("squeel", ("squeal",)),  # another letter, in a longer word
        ("grindng", ("grind",)),  # in the ending
        ("hand", ()),  # another letter in a short word: a word of its own, as like as not
        ("bum", ()),  # an ordinary word
        ("hard", ()),  # known
        ("sqeel", ()),  # two mistakes
        ("b2mp", ()),
        ("", ()),
    ],
)
def test_which_words_are_slips(typed: str, meant: tuple[str, ...]) -> None:
    assert SLIPS.meant(typed) == meant


@given(st.text("bumphardog", max_size=9))
def test_a_slip_stands_for_known_words_alone(typed: str) -> None:
    assert set(SLIPS.meant(typed)) <= set(KNOWN)
    assert not (typed in KNOWN and SLIPS.meant(typed))


@pytest.mark.parametrize(
    ("slipped", "right"),
    [
        ("mises under load", "misses under load"),
        ("stals when cold", "stalls when cold"),
        ("runs ruff", "runs rough"),
        ("brakes squeel", "brakes squeal"),
        ("clunks over bups", "clunks over bumps"),
        ("starts hrad", "starts hard"),
        ("leeks oil", "leaks oil"),
        ("pulls letf", "pulls left"),
        ("grindng brakes", "grinding brakes"),
    ],
)
def test_what_was_meant_is_heard(words: Vocabulary, slipped: str, right: str) -> None:
    assert words.groups_in(right)
    assert words.groups_in(slipped) == words.groups_in(right)


@pytest.mark.parametrize(
    "text",
    [
        "clunks over lunch",
        "starts card games",
        "runs tough",
        "no haet",  # beside a mere “no” it may be anything
        "does not clunk over bups",
        "the court starts at nine",
        "clunks at the rear door of our neighbour while we wait over bups",  # too far apart
        "bup",
    ],
)
def test_ordinary_words_and_denials_stay_what_they_are(words: Vocabulary, text: str) -> None:
    assert words.groups_in(text) == ()


def test_what_is_spelled_right_comes_before_a_slip(words: Vocabulary) -> None:
    assert [one.id for one in words.groups_in("stalls, clunks over bups")] == [
        "stall",
        "clunk-suspension",
    ]
    assert words.groups_in("bucks over bups") == words.groups_in("bucks")
