"""A symptom that no phrase tells is guessed from its words, and shown as a guess."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.question import Piece, read_question, without
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.symptom_search.asked_sentences import asked_sentences
from tests.symptom_search.test_ordinary_sentences import SENTENCES

# In customers' words; no phrase of the vocabulary tells them.
GUESSED = [
    ("Dash lights flicker and the clock resets itself.", "electrics-odd"),
    ("Fuel needle sits on empty though I just filled it.", "gauge-wrong"),
    ("Pops back through the air filter.", "backfire-intake"),
    ("Revs climb but the car doesn't go any quicker uphill.", "clutch-slip"),
]


@pytest.fixture(scope="module")
def words() -> Vocabulary:
    return shop_vocabulary()


@pytest.mark.parametrize(("text", "group"), GUESSED)
def test_what_no_phrase_tells_is_guessed(words: Vocabulary, text: str, group: str) -> None:
    assert words.groups_in(text) == ()
    guess = words.perhaps_in(text)
    assert guess is not None
    assert guess.id == group


def test_guesses_are_right_four_times_of_five(words: Vocabulary) -> None:
    untold = [one for one in asked_sentences() if not words.groups_in(one.text)]
    guesses = [(words.perhaps_in(one.text), one.means | one.may) for one in untold]
    right = sum(guess is not None and guess.id in meant for guess, meant in guesses)
    wrong = sum(guess is not None and guess.id not in meant for guess, meant in guesses)
    assert right >= 15
    assert wrong * 4 <= right


def test_what_is_said_at_the_counter_is_seldom_taken_for_a_symptom(words: Vocabulary) -> None:
    sentences = SENTENCES.strip().splitlines()
    assert sum(words.perhaps_in(one) is not None for one in sentences) <= len(sentences) // 8


@pytest.mark.parametrize(
    "text",
    ["It misfires under load.", "No misfire now, the dash lights flicker.", "", "the and of", "?"],
)
def test_nothing_is_guessed_beside_what_is_told_or_denied(words: Vocabulary, text: str) -> None:
    assert words.perhaps_in(text) is None


@given(st.text(max_size=120))
def test_whatever_is_typed_can_be_asked(text: str) -> None:
    guess = shop_vocabulary().perhaps_in(text)
    assert guess is None or guess in shop_vocabulary().groups


def test_it_is_shown_as_a_guess_and_can_be_taken_out(words: Vocabulary) -> None:
    text = GUESSED[0][0]
    question = read_question(text, words, {})
    name = words.shown("electrics-odd")
    piece = Piece("perhaps", "electrics-odd", name, name)
    assert question.perhaps is not None
    assert piece in question.pieces
    assert piece.in_words() == "perhaps lamps and gauges act up"
    left = read_question(without(text, piece, words, {}), words, {})
    assert piece not in left.pieces
