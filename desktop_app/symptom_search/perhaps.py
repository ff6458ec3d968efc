"""A guess where no phrase was told: the symptom group whose words weigh most in a text.

It is weaker than a phrase found: a search shows it as a guess and ranks by it behind what was read,
and nothing is ever counted as told by it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from math import log

from desktop_app.symptom_search.denials import denials_plain, denied_places
from desktop_app.symptom_search.subjects import Subjects
from desktop_app.symptom_search.told_words import WordReader

# Words that stand in the phrases of many faults and tell none from another.
_SAYING_LITTLE = """not no never but out up down off over all any only after before into back again
    go start stop drive run engine light new first time every day week month year work one two
    high low old check done"""
# A guess weighs at least this, and so many times what the next best group weighs: of the asked
# sentences in the tests that no phrase explains some half are guessed, a fifth of these wrongly.
_LEAST_WEIGHT, _LEAD = 6.5, 1.1
_TWO = 2  # words that must be shared: one alone says too little
_AKIN = 0.7  # what a word akin weighs of the word itself
_SAID_OFTEN = 0.3  # for each e-fold of the phrases in which a group has the word

Meanings = Callable[[str], frozenset[str]]


class Guesser:
    """Knows the words of each group's phrases, each weighed by how few groups have it.

    The weight of a word is log(1 + N/n), n of N groups having it: the inverse document frequency
    of Spärck Jones (1972), smoothed so that it is never 0.
    """

    def __init__(
        self,
        reader: WordReader,
        phrases: Mapping[str, Iterable[str]],
        meanings: Meanings,
        parts: Iterable[str] = (),
    ) -> None:
        """Take phrases by group, what may stand for a compared word, and words for mere parts."""
        self._parts = frozenset(reader.words(" ".join(parts)))
        self._reader = reader
        self._meanings = meanings
        self._little = frozenset(reader.words(" ".join(_SAYING_LITTLE.split())))
        self._said = {
            group: Counter(word for text in texts for word in self._telling(text))
            for group, texts in phrases.items()
        }
        groups_with = Counter(word for said in self._said.values() for word in said)
        self._weights = {
            word: log(1 + len(self._said) / groups) for word, groups in groups_with.items()
        }

    def guess(self, text: str, subjects: Subjects) -> str | None:
        """Return the group that is probably meant; None where it is not clear enough."""
        told = [
            (clause, place)
            for clause in self._reader.clauses(denials_plain(text))
            for denied in (denied_places(clause, ()),)
            for place, word in enumerate(clause)
            if place not in denied and word not in self._little
        ]
        weighed = []
        for group in self._said:
            shared = {
                clause[place]: weight
                for clause, place in told
                if (weight := self._weight(clause[place], group))
                and not subjects.is_of_another(group, clause, (place,), ())
            }
            if len(shared) >= _TWO and not self._parts.issuperset(shared):
                weighed.append((sum(shared.values()), group))
        weighed.sort(reverse=True)
        if not weighed or weighed[0][0] < _LEAST_WEIGHT:
            return None
        if len(weighed) > 1 and weighed[0][0] < _LEAD * weighed[1][0]:
            return None
        return weighed[0][1]

    def _telling(self, text: str) -> set[str]:
        words = {word for clause in self._reader.clauses(text) for word in clause}
        return words - self._little

    def _weight(self, word: str, group: str) -> float:
        said = self._said[group]
        if word in said:
            return self._weights[word] * (1 + _SAID_OFTEN * log(said[word]))
        akin = [self._weights[one] for one in self._meanings(word) if one in said]
        return _AKIN * max(akin, default=0.0)
