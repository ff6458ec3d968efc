"""What a shop's own phrases mean: read like the built-in ones, and which are not accepted."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.own_phrases import (
    MOST_LETTERS,
    PhraseKept,
    accepted,
    kept_as,
    meant_until_now,
    tidy,
)
from desktop_app.symptom_search.question import read_question
from desktop_app.symptom_search.untold_words import untold
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

WORDS = shop_vocabulary()
TOLD = ["it yodels", "not", "never", "brakes squeal,", "gobbles.", "used to", "gone", "1,000"]
OURS = {
    "gobbles like a turkey": "hesitation",
    "stalls": "flat-battery",
    "no oomph uphill": "low-power",
    "gone to sleep": "no-such-group",
}


@pytest.fixture(scope="module")
def ours() -> Vocabulary:
    return WORDS.with_own(OURS)


def heard(words: Vocabulary, text: str) -> list[str]:
    return [group.id for group in words.groups_in(text)]


@pytest.mark.parametrize(
    ("text", "groups"),
    [
        ("It gobbles like a turkey!", ["hesitation"]),
        ("gobbling like some turkeys since Monday", ["hesitation"]),
        ("it does not gobble like a turkey", []),
        ("it gobbles like a turkey and the brakes squeal", ["hesitation", "brake-squeal"]),
        ("no oomph uphill", ["low-power"]),
        ("a turkey in the boot", []),
        ("it stalled", ["flat-battery"]),  # the shop's word holds over the built-in one
        ("it has gone to sleep", []),  # means a group that this program does not know
    ],
)
def test_a_shops_phrases_are_read_like_the_built_in_ones(
    ours: Vocabulary, text: str, groups: list[str]
) -> None:
    assert heard(ours, text) == groups


def test_conditions_and_the_built_in_words_stay_as_they_are(ours: Vocabulary) -> None:
    said = "gobbles like a turkey when cold"
    assert ours.conditions_in(said) == WORDS.conditions_in(said) == ("cold",)
    assert heard(ours, "misses under load") == heard(WORDS, "misses under load")
    assert heard(WORDS, "it gobbles like a turkey") == []


def test_without_them_everything_is_as_before(ours: Vocabulary) -> None:
    assert heard(ours.with_own({}), "it stalled") == heard(WORDS, "it stalled")
    assert ours.with_own({}).groups == WORDS.groups


@pytest.mark.parametrize(
    ("phrase", "symptom", "said"),
    [
        ("", "hesitation", "No words were told"),
        (" . ", "hesitation", "No words were told"),
        ("it has the", "hesitation", "only little words"),
        ("a" * (MOST_LETTERS + 1), "hesitation", "too long"),
        ("one two three four five six seven eight", "hesitation", "too many words"),
        ("gobbles, then coughs up", "hesitation", "more than one piece of a sentence"),
        ("used to gobble", "hesitation", "would never be found"),
        ("it hesitates", "hesitation", "is read as hesitation already"),
        ("gobbles", "no-such-group", "There is no symptom"),
    ],
)
def test_what_cannot_be_kept_is_refused_with_the_reason(
    phrase: str, symptom: str, said: str
) -> None:
    with pytest.raises(ShopTrouble, match=said) as told:
        accepted(phrase, symptom, WORDS)
    assert told.value.kept == "Nothing was changed."
    assert told.value.do


def test_what_a_phrase_was_read_as_is_known_before_it_is_kept() -> None:
    assert [one.id for one in meant_until_now("it hesitates", "jerking", WORDS)] == ["hesitation"]
    assert meant_until_now("it hesitates", "hesitation", WORDS) == ()
    assert meant_until_now("it gobbles", "hesitation", WORDS) == ()


def test_the_same_phrase_in_other_forms_of_its_words_is_the_same() -> None:
    kept = PhraseKept(3, "gobbles like a turkey", "hesitation")
    assert kept_as("It gobbled like turkeys", WORDS, [kept]) == kept
    assert kept_as("gobbles", WORDS, [kept]) is None
    assert kept_as("", WORDS, [PhraseKept(4, "the", "hesitation")]) is None


SAID = st.text(max_size=90) | st.lists(st.sampled_from(TOLD), max_size=5).map(" ".join)


@given(SAID, st.sampled_from([group.id for group in WORDS.groups]))
def test_whatever_is_accepted_is_heard_from_then_on(phrase: str, symptom: str) -> None:
    try:
        kept = accepted(phrase, symptom, WORDS)
    except ShopTrouble:
        return
    assert kept == tidy(kept)
    assert symptom in heard(WORDS.with_own({kept: symptom}), f"Well: {kept}.")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("it gobbles like a turkey when cold", "gobbles like a turkey"),
        ("brakes squeal", ""),
        ("squeals, gobbles a lot of grain", "gobbles a lot of grain"),
        ("gobbles; yodels", "gobbles"),
        ("", ""),
    ],
)
def test_the_words_that_nobody_understood_are_offered(text: str, words: str) -> None:
    assert untold(read_question(text, WORDS, {})).words == words


def test_a_guess_is_offered_with_its_words() -> None:
    said = untold(read_question("Revs climb but it doesn't go any quicker uphill.", WORDS, {}))
    assert said.perhaps == "clutch-slip"
    assert said.words == "Revs"


@pytest.mark.parametrize(
    "phrase", ["no", "P0300", "12 34", "AB12", "J-1042", "cold", "in the rain", "it is"]
)
def test_what_tells_no_fault_is_refused(phrase: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        accepted(phrase, "hesitation", WORDS)
    assert refused.value.do
