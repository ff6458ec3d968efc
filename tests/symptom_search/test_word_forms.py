"""Words are the same word whatever their ending, their accents and the signs around them."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.word_forms import (
    alike,
    bases,
    fold,
    forms_to_find,
    plain_words,
    tokens,
)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("Won't start", "wont start"),
        ("A/C warm, 5w-30", "ac warm 5w 30"),
        ("and/or 50%", "and or 50"),
        ("Kühler — O’Brien", "kuhler obrien"),
        ("", ""),
        ("…!?", ""),
    ],
)
def test_a_text_falls_into_plain_words(text: str, words: str) -> None:
    assert plain_words(text) == words


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("overheats", "overheating"),
        ("overheated", "overheat"),
        ("stop", "stopped"),
        ("misfire", "misfiring"),
        ("battery", "batteries"),
        ("vibrates", "vibration"),
        ("dies", "die"),
    ],
)
def test_endings_make_no_other_word(one: str, other: str) -> None:
    assert alike(one, other)
    assert alike(other, one)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("cold", "coolant"),
        ("brake", "break"),
        ("idle", "idol"),
        ("rod", "road"),
        ("talls", "stalls"),
        ("", "stalls"),
        ("", "s"),
    ],
)
def test_other_words_stay_other_words(one: str, other: str) -> None:
    assert not alike(one, other)


def test_a_word_still_being_typed_is_also_asked_for_without_its_begun_ending() -> None:
    asked = forms_to_find("stoppi", unfinished=True)
    assert asked.beginnings == ("stoppi",)
    assert "stop" in asked.whole


@given(st.text(max_size=60))
def test_places_are_those_of_the_words(text: str) -> None:
    for token in tokens(text):
        assert token.word
        assert plain_words(text[token.start : token.end]) == token.word


@given(st.text(alphabet="aeioußüéñ bcdst", max_size=30))
def test_composed_and_decomposed_letters_are_the_same(text: str) -> None:
    apart = unicodedata.normalize("NFD", text)
    assert plain_words(apart) == plain_words(unicodedata.normalize("NFC", text))


@given(st.text(alphabet="abcdeghinrst", min_size=1, max_size=12))
def test_a_word_is_always_among_its_own_forms(word: str) -> None:
    assert alike(word, word)
    assert word in bases(word)
    assert word in forms_to_find(word, unfinished=False).whole
    assert fold(word) == word
