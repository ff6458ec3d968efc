"""Customers' and technicians' own sentences are understood, those never tuned on included."""

from __future__ import annotations

import re

from desktop_app.symptom_search.vocabulary import Vocabulary
from tests.symptom_search.asked_sentences import Asked, asked_sentences, understood

ASKED = asked_sentences()
TUNED = [one for one in ASKED if one.tune]
UNSEEN = [one for one in ASKED if not one.tune]


def plain(text: str) -> list[str]:
    return re.findall("[a-z0-9]+", text.casefold().replace("'", "").replace("’", ""))


def test_there_are_enough_sentences_for_every_group(words: Vocabulary) -> None:
    assert len(UNSEEN) >= 100
    assert len(TUNED) >= 100
    assert len({one.text for one in ASKED}) == len(ASKED)
    meant = {group for one in ASKED for group in one.means}
    assert meant == {group.id for group in words.groups}


def test_no_sentence_is_copied_from_the_vocabulary(words: Vocabulary) -> None:
    """No phrase of two or more words stands in a sentence word for word, and none is a sentence."""
    phrases = [plain(phrase) for group in words.groups for phrase in group.phrases]

    def copies(one: Asked) -> bool:
        said = plain(one.text)
        return said in phrases or any(
            said[i : i + len(phrase)] == phrase
            for phrase in phrases
            for i in range(len(said))
            if len(phrase) > 1
        )

    assert [one.text for one in ASKED if copies(one)] == []


def test_the_sentences_that_were_tuned_on_are_understood(words: Vocabulary) -> None:
    found = understood(TUNED, words)
    assert found.precision >= 0.95
    assert found.recall >= 0.9


def test_the_sentences_that_were_not_tuned_on_are_understood(words: Vocabulary) -> None:
    found = understood(UNSEEN, words)
    assert found.precision >= 0.9
    assert found.recall >= 0.65
