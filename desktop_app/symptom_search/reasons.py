"""The reasons: why a past job was found, and where its texts say so."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.symptom_search.points import NEAR_FIT
from desktop_app.symptom_search.question import Question
from desktop_app.symptom_search.word_forms import Token, tokens
from desktop_app.symptom_search.word_index.asked import AskedWord
from desktop_app.symptom_search.word_index.entry import FIELDS
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import FIELD_WEIGHTS

_WEIGHT_OF = dict(zip(FIELDS, FIELD_WEIGHTS, strict=True))

# The texts as somebody wrote them; the others are the index's words already.
_WRITTEN = frozenset(["concern", "cause", "correction"])

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Evidence:
    """What holds for one job; ids, each once, and what became of it."""

    groups: tuple[str, ...] = ()
    near_groups: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    related: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()
    happens: tuple[str, ...] = ()
    never: tuple[str, ...] = ()
    named: str = ""
    stayed_fixed: bool = False
    came_back: bool = False


@dataclass(frozen=True, slots=True)
class Reasons:
    """Why a job was found, and the places to mark in each of the texts that somebody wrote."""

    why: tuple[str, ...]
    marks: Mapping[str, tuple[Span, ...]]


NO_REASONS = Reasons((), {})


class ReasonFinder:
    """Finds the reasons for jobs against one question; remembers words it has compared before.

    `plain` gives the names of the question's symptoms and of their neighbours.
    """

    def __init__(
        self, question: Question, words: Sequence[AskedWord], plain: Mapping[str, str]
    ) -> None:
        self._question = question
        self._words = words
        self._plain = plain
        self._fits: dict[str, tuple[tuple[int, int], ...]] = {}
        self._whole: dict[str, list[tuple[int, int]]] = {}
        self._begun: list[tuple[str, tuple[int, int]]] = []
        for place, word in enumerate(words):
            for way in word.ways:
                if way.begins:
                    self._begun.append((way.terms[0], (place, way.fit)))
                else:
                    for term in way.terms:
                        self._whole.setdefault(term, []).append((place, way.fit))

    def reasons(self, evidence: Evidence, texts: Mapping[str, str]) -> Reasons:
        """Return the reasons for one job, from what holds for it and from its texts."""
        best: dict[int, float] = {}
        spellings: dict[int, tuple[str, int]] = {}
        marks: dict[str, tuple[Span, ...]] = {}
        for name, text in texts.items():
            spans = []
            said = _tokens(text) if name in _WRITTEN else [(w, 0, 0) for w in text.split()]
            for word, start, end in said:
                for place, fit in self._fit(word):
                    value = fit * _WEIGHT_OF[name]
                    if value > best.get(place, 0.0):
                        best[place] = value
                        spellings[place] = (word, fit)
                    spans.append((start, end))
            if spans and name in _WRITTEN:
                marks[name] = tuple(dict.fromkeys(spans))
        why = (*self._why(evidence), *self._why_words(spellings), *_why_fate(evidence))
        return Reasons(why, marks)

    def _fit(self, word: str) -> tuple[tuple[int, int], ...]:
        """Return for which of the question's words a word of a text stands, and how well."""
        known = self._fits.get(word)
        if known is None:
            stem = porter_stem(word)
            fits = self._whole.get(stem, ())
            begun = (one for letters, one in self._begun if stem.startswith(letters))
            known = self._fits[word] = (*fits, *begun)
        return known

    def _why(self, evidence: Evidence) -> list[str]:
        why = [evidence.named] if evidence.named else []
        why += [f"same symptom: {self._plain[group]}" for group in evidence.groups]
        if not evidence.groups:
            why += [f"near symptom: {self._plain[g]}" for g in sorted(evidence.near_groups)[:1]]
        why += [f"same code: {code}" for code in sorted(evidence.codes)]
        if evidence.related:
            why.append(f"related code: {', '.join(sorted(evidence.related)[:3])}")
        why += [f"same part kind: {kind}" for kind in sorted(evidence.parts)]
        why += [f"happens: {condition_words(one)}" for one in sorted(evidence.happens)]
        why += [f"but never: {condition_words(one)}" for one in sorted(evidence.never)]
        return why

    def _why_words(self, spellings: Mapping[int, tuple[str, int]]) -> list[str]:
        said, slips = [], []
        for place, (spelling, fit) in sorted(spellings.items()):
            if fit == NEAR_FIT:
                slips.append(f"near word: {spelling} for {self._words[place].word}")
            else:
                said.append(spelling)
        return ([f"words: {', '.join(dict.fromkeys(said))}"] if said else []) + slips


@lru_cache(2048)
def _tokens(text: str) -> tuple[Token, ...]:
    """Return the words of a text; while somebody types the same jobs come again and again."""
    return tuple(tokens(text))


def _why_fate(evidence: Evidence) -> list[str]:
    if evidence.came_back:
        return ["came back"]
    return ["stayed fixed"] if evidence.stayed_fixed else []
