"""Slips within a phrase: which of the words in phrases a word may stand for that nobody knows.

The words beside it speak for the phrase, so shorter words are mended here than alone
(near_spelling.py): "clunks over bups", "mises under load".
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import cached_property

from desktop_app.symptom_search.near_spelling import LONGEST_WORD
from desktop_app.symptom_search.typing_mistake import distance

SHORTEST = 4  # letters of a word that may be told with a slip
ANY_SLIP = 5  # letters from which one letter may be another; before, only swapped or left out
_MOST = 4  # words that one slip may stand for; with more it stands for none


class PhraseSlips:
    """Finds the words one mistake away; what `is_word` knows is no slip at all.

    Mistakes are those of the restricted Damerau distance: a letter added, left out or another,
    or two neighbours swapped. Both begin with the same letter, or with the first two swapped.
    """

    def __init__(self, words: Iterable[str], is_word: Callable[[str], bool]) -> None:
        self._is_word = is_word
        self._words = frozenset(words)

    @cached_property
    def _stands_for(self) -> dict[str, str]:
        """The word by each form of it."""
        forms: dict[str, str] = {}
        for word in sorted(self._words):
            if len(word) >= SHORTEST and word.isalpha():
                for form in (word, f"{word}ing"):  # a slip in an ending hides it: "grindng"
                    forms.setdefault(form, word)
        return forms

    @cached_property
    def _by_gap(self) -> dict[str, list[str]]:
        """The forms by what is left of them; made with the first slip, not at the start."""
        found: dict[str, list[str]] = {}
        for form in self._stands_for:
            for left in _with_gaps(form):
                found.setdefault(left, []).append(form)
        return found

    def meant(self, word: str) -> tuple[str, ...]:
        """Return the few words that a compared word may be a slip for."""
        looked_up = SHORTEST - 1 <= len(word) <= LONGEST_WORD and word.isalpha()
        if not looked_up or self._is_word(word):
            return ()
        near = {one for left in _with_gaps(word) for one in self._by_gap.get(left, ())}
        meant = sorted({self._stands_for[one] for one in near if _is_slip(word, one)})
        return tuple(meant) if len(meant) <= _MOST else ()


def _is_slip(word: str, other: str) -> bool:
    if word[0] != other[0] and word[:2] != other[1::-1]:
        return False
    short_and_another = len(word) == len(other) < ANY_SLIP and sorted(word) != sorted(other)
    return not short_and_another and distance(word, other) == 1


def _with_gaps(word: str) -> set[str]:
    """Return the word and what is left of it without one letter; words that near share one."""
    return {word} | {word[:i] + word[i + 1 :] for i in range(len(word))}
