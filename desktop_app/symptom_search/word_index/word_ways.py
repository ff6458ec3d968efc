"""The ways in which a word may stand in past jobs: its stems, joined, parted, or a near word."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple, Protocol

from desktop_app.symptom_search.points import ALL_WORDS, JOINED_FIT, NEAR_FIT
from desktop_app.symptom_search.question import Word
from desktop_app.symptom_search.typing_mistake import mistakes_allowed, nearest, stem_lengths
from desktop_app.symptom_search.word_forms import forms_to_find
from desktop_app.symptom_search.word_index.arrays import Arrays, Part
from desktop_app.symptom_search.word_index.asked import AskedWord, Way
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import rarity, word_weights

SHORTEST_PART = 3  # letters of each of two words that were written as one


class Known(Protocol):
    """Knows which terms past jobs have, and in how many of the `jobs` there are."""

    @property
    def jobs(self) -> int:
        """How many jobs there are."""

    def having(self, term: str) -> int:
        """Return in how many jobs a term stands."""

    def having_way(self, way: Way) -> int:
        """Return in how many jobs, at most, a word may stand in this way."""

    def shelf(self, beginning: str, word: str, allowed: int) -> Mapping[str, int]:
        """Return all stems that begin so and are near a word, and others, with the jobs of each.

        `allowed` mistakes are near.
        """


class KnownInParts(NamedTuple):
    """The terms of all parts together."""

    parts: Sequence[Part]

    def _arrays(self) -> Iterator[Arrays]:
        return (part.arrays for part in self.parts)

    @property
    def jobs(self) -> int:
        """How many jobs there are."""
        return sum(one.jobs for one in self._arrays())

    def having(self, term: str) -> int:
        """Return in how many jobs a term stands."""
        return sum(len(one.jobs_with(term)) for one in self._arrays())

    def having_way(self, way: Way) -> int:
        """Return in how many jobs, at most, a word may stand in this way."""
        if not way.begins:
            return min(map(self.having, way.terms))
        spans = (one.span(*one.terms.beginning(way.terms[0])) for one in self._arrays())
        return sum(span.stop - span.start for span in spans)

    def shelf(self, beginning: str, word: str, allowed: int) -> dict[str, int]:
        """Return all stems that begin so and are near a word, and others, with the jobs of each."""
        found: dict[str, int] = {}
        lengths = stem_lengths(word, allowed)
        for one in self._arrays():
            places = one.terms.beginning(beginning)
            for place in one.terms.maybe_near(*places, word, lengths, allowed):
                span = one.span(place, place + 1)
                term = one.terms[place].decode()
                found[term] = found.get(term, 0) + span.stop - span.start
        return found


def asked_words(words: Sequence[Word], known: Known) -> tuple[AskedWord, ...]:
    """Return the words of a question with their ways, weighed against each other."""
    joined: dict[int, list[Way]] = {}
    for one, other in pairwise(words):
        term = porter_stem(one.word + other.word)
        if other.place == one.place + 1 and known.having(term):
            for word in (one, other):
                joined.setdefault(word.place, []).append(Way((term,), JOINED_FIT))
    asked = [_asked(word, known, joined.get(word.place, [])) for word in words]
    weights = word_weights([rarity(known.jobs, one.jobs) for one in asked], ALL_WORDS)
    return tuple(one._replace(weight=weight) for one, weight in zip(asked, weights, strict=True))


def _asked(word: Word, known: Known, joined: list[Way]) -> AskedWord:
    forms = forms_to_find(word.word, word.unfinished)
    stems = dict.fromkeys(map(porter_stem, (word.word, *forms.whole)))
    ways = [Way((stem,)) for stem in stems] + joined
    ways += [Way((letters,), begins=True) for letters in forms.beginnings]
    jobs = sum(map(known.having_way, ways))
    if not jobs and not word.understood and not word.known:
        ways = [Way((stem,), NEAR_FIT) for stem in _near(word.word, known)]
        ways = ways or _parted(word.word, known)
        jobs = sum(map(known.having_way, ways))
    return AskedWord(word.word, tuple(ways), min(jobs, known.jobs))


def _near(word: str, known: Known) -> tuple[str, ...]:
    """Return the nearest stems that somebody wrote.

    Most mistakes leave the first two letters right, so those stems are looked at first; then
    those with the same first letter, and those that begin as if it had been swapped or dropped.
    """
    allowed = mistakes_allowed(word)
    if not word.isalpha() or not allowed:
        return ()
    for beginnings in ((word[:2],), (word[0], word[1] + word[0], word[1:3])):
        shelf: dict[str, int] = {}
        for beginning in beginnings:
            shelf |= known.shelf(beginning, word, allowed)
        near = nearest(word, ((stem, jobs) for stem, jobs in shelf.items() if stem.isalpha()))
        if near:
            return near
    return ()


def _parted(word: str, known: Known) -> list[Way]:
    """Return the two words that were written as one, where past jobs have both; else nothing."""
    cuts = range(SHORTEST_PART, len(word) - SHORTEST_PART + 1)
    parts = [Way((porter_stem(word[:cut]), porter_stem(word[cut:])), JOINED_FIT) for cut in cuts]
    likeliest = max(parts, key=known.having_way, default=None)
    return [likeliest] if likeliest and known.having_way(likeliest) else []
