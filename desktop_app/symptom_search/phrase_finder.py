"""Finds the known phrases in what somebody said, the longest first, and notices denials."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from desktop_app.symptom_search.told_words import WordReader, stem

# "Not sure" or "don't know why" denies nothing, nor does "not only"; "but" ends a denial's reach.
_DENIALS = frozenset(
    map(stem, ("no", "not", "never", "doesnt", "dont", "didnt", "wont", "without"))
)
_NO_DENIALS = frozenset(map(stem, ("know", "sure", "care", "mind", "idea", "only", "always")))
_CURED = frozenset(map(stem, ("gone", "cured", "fixed")))
_BARRIERS = frozenset(("but", "though"))
_REACH = 3
# How many foreign words may stand among those of a phrase told in another order.
_SLACK = 1


@dataclass(frozen=True, slots=True)
class Found:
    """A phrase found: what it stands for, where its first word stands, and whether it is denied."""

    id: str
    clause: int
    place: int
    words: int
    denied: bool


@dataclass(frozen=True, slots=True)
class _Phrase:
    id: str
    words: tuple[str, ...]


class PhraseFinder:
    """Knows phrases by their compared words; the longest that fits takes the words it needs."""

    def __init__(self, reader: WordReader, phrases: Mapping[str, Iterable[str]]) -> None:
        self._reader = reader
        self._by_first: dict[str, list[_Phrase]] = {}
        self._by_rarest: dict[str, list[_Phrase]] = {}
        known: dict[tuple[str, ...], _Phrase] = {}
        for identity, listed in phrases.items():
            for text in listed:
                words = tuple(reader.words(text))
                if words:
                    known.setdefault(words, _Phrase(identity, words))
        use = Counter(word for words in known for word in set(words))
        for words, phrase in known.items():
            self._by_first.setdefault(words[0], []).append(phrase)
            if len(words) > 1:
                rarest = min(words, key=lambda word: (use[word], word))
                self._by_rarest.setdefault(rarest, []).append(phrase)

    def find(self, text: str) -> list[Found]:
        """Return what is found, in the order in which it is told."""
        found: list[Found] = []
        for number, clause in enumerate(self._reader.clauses(text)):
            found.extend(self._in_clause(number, clause))
        return sorted(found, key=lambda one: (one.clause, one.place))

    def _in_clause(self, number: int, clause: list[str]) -> Iterator[Found]:
        fits = [*self._in_order(clause), *self._in_any_order(clause)]
        # Longest first; told in order before told in another order; then as they stand.
        fits.sort(key=lambda fit: (-len(fit[1]), fit[2], fit[1][0]))
        taken: set[int] = set()
        kept = []
        for phrase, places, _ in fits:
            if taken.isdisjoint(places):
                taken.update(places)
                kept.append((phrase, places))
        for phrase, places in kept:
            denied = _is_denied(clause, places, taken)
            yield Found(phrase.id, number, places[0], len(places), denied)

    def _in_order(self, clause: list[str]) -> Iterator[tuple[_Phrase, tuple[int, ...], int]]:
        for start, word in enumerate(clause):
            for phrase in self._by_first.get(word, ()):
                length = len(phrase.words)
                if tuple(clause[start : start + length]) == phrase.words:
                    yield phrase, tuple(range(start, start + length)), 0

    def _in_any_order(self, clause: list[str]) -> Iterator[tuple[_Phrase, tuple[int, ...], int]]:
        for anchor, word in enumerate(clause):
            for phrase in self._by_rarest.get(word, ()):
                places = _near(clause, anchor, phrase.words)
                if places is not None:
                    yield phrase, places, 1


def _near(clause: list[str], anchor: int, words: tuple[str, ...]) -> tuple[int, ...] | None:
    """Return where all the words stand close together around the anchor, or None."""
    reach = len(words) + _SLACK
    for start in range(max(0, anchor - reach + 1), anchor + 1):
        span = clause[start : start + reach]
        places: list[int] = []
        for word in words:
            place = next(
                (i for i, w in enumerate(span, start) if w == word and i not in places), None
            )
            if place is None:
                break
            places.append(place)
        else:
            return tuple(sorted(places))
    return None


def _is_denied(clause: list[str], places: tuple[int, ...], taken: set[int]) -> bool:
    first, last = places[0], places[-1]
    for place in range(first - 1, max(-1, first - 1 - _REACH), -1):
        if clause[place] in _BARRIERS:
            break
        if clause[place] in _DENIALS and place not in taken:
            follower = clause[place + 1] if place + 1 < len(clause) else ""
            return follower not in _NO_DENIALS
    return last + 1 < len(clause) and clause[last + 1] in _CURED and last + 1 not in taken
