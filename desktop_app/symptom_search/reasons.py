"""The reasons: why a past job was found, and where its texts say so."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from functools import lru_cache
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.repair_jobs.concern_conditions import condition_as_written, condition_words
from desktop_app.symptom_search.points import NEAR_FIT
from desktop_app.symptom_search.word_forms import Token, plain_words, tokens
from desktop_app.symptom_search.word_index.asked import AskedWord
from desktop_app.symptom_search.word_index.entry import FIELDS
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import FIELD_WEIGHTS

_WEIGHT_OF = dict(zip(FIELDS, FIELD_WEIGHTS, strict=True))

# The texts as somebody wrote them; the others are the index's words already.
_WRITTEN = frozenset(["concern", "cause", "correction"])

Span = tuple[int, int]
# Where a job has but one of the words, it must be so much of what all say, weighed by rarity.
LEAST_SAID = 0.4
_STRONG = ("named", "groups", "near_groups", "codes", "related", "parts")


class Evidence(NamedTuple):
    """What holds for one job; ids, each once, and what became of it."""

    groups: tuple[str, ...] = ()
    near_groups: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    related: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()
    happens: tuple[str, ...] = ()
    never: tuple[str, ...] = ()
    named: str = ""
    became: str = ""


class Spelling(NamedTuple):
    """How a word that was asked for stands in a job, how well that fits, and in which text."""

    word: str
    fit: int
    text: str


class Reasons(NamedTuple):
    """Why a job was found, and the places to mark in each of the texts that somebody wrote.

    `is_weak` where nothing speaks for it but a small share of what the words say.
    """

    why: tuple[str, ...]
    marks: Mapping[str, tuple[Span, ...]]
    is_weak: bool = False


NO_REASONS = Reasons((), {})


class ReasonFinder:
    """Finds the reasons for jobs against one question; remembers words it has compared before.

    `plain` gives the names of the question's symptoms and of their neighbours, `parts` those of
    the part kinds.
    """

    def __init__(
        self, words: Sequence[AskedWord], plain: Mapping[str, str], parts: Mapping[str, str]
    ) -> None:
        self._words = words
        self._plain = plain
        self._parts = parts
        self._all_words = sum(word.weight for word in words)
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
        begun = (letters for letters, _ in self._begun)
        self._first_letters = {_first_letters(term) for term in (*self._whole, *begun)}

    def reasons(self, evidence: Evidence, texts: Mapping[str, str]) -> Reasons:
        """Return the reasons for one job, from what holds for it and from its texts."""
        known = self._fits  # looked into for each word of each job: no call for what is there
        best: dict[int, float] = {}
        spellings: dict[int, Spelling] = {}
        marks: dict[str, tuple[Span, ...]] = {}
        for name, text in texts.items():
            if not self._may_hold(text):
                continue
            spans = []
            said = _tokens(text) if name in _WRITTEN else [(w, 0, 0) for w in text.split()]
            for word, start, end in said:
                fits = known.get(word)
                for place, fit in self._fit(word) if fits is None else fits:
                    value = fit * _WEIGHT_OF[name]
                    if value > best.get(place, 0.0):
                        best[place] = value
                        spellings[place] = Spelling(word, fit, name)
                    spans.append((start, end))
            if spans and name in _WRITTEN:
                marks[name] = tuple(dict.fromkeys(spans))
        became = (tr(evidence.became),) if evidence.became else ()
        why = (*self._why(evidence), *self._why_words(evidence, spellings), *became)
        return Reasons(why, marks, self._is_weak(evidence, spellings))

    def _is_weak(self, evidence: Evidence, said: Collection[int]) -> bool:
        if len(said) > 1 or any(getattr(evidence, name) for name in _STRONG):
            return False
        return sum(self._words[place].weight for place in said) < LEAST_SAID * self._all_words

    def _may_hold(self, text: str) -> bool:
        """Tell quickly whether a text may have one of the words; most have none."""
        if not text.isascii() or "'" in text or "/" in text:
            return True  # a word may be written otherwise than it is compared
        lower = text.lower()
        return any(letters in lower for letters in self._first_letters)

    def _fit(self, word: str) -> tuple[tuple[int, int], ...]:
        """Return for which of the question's words a word of a text stands, and how well."""
        stem = porter_stem(word)
        begun = (one for letters, one in self._begun if stem.startswith(letters))
        fits = self._fits[word] = (*self._whole.get(stem, ()), *begun)
        return fits

    def _why(self, evidence: Evidence) -> list[str]:
        why = [evidence.named] if evidence.named else []
        names = self._plain
        why += [tr("same symptom: {symptom}", symptom=names[group]) for group in evidence.groups]
        if not evidence.groups:
            near = sorted(evidence.near_groups)[:1]
            why += [tr("near symptom: {symptom}", symptom=names[group]) for group in near]
        why += [tr("same code: {code}", code=code) for code in sorted(evidence.codes)]
        if evidence.related:
            codes = ", ".join(sorted(evidence.related)[:3])
            why.append(tr("related code: {codes}", codes=codes))
        why += [
            tr("same part kind: {part_kind}", part_kind=self._parts.get(kind, kind))
            for kind in sorted(evidence.parts)
        ]
        why += [
            tr("happens: {condition}", condition=condition_words(one))
            for one in sorted(evidence.happens)
        ]
        why += [
            tr("but never: {condition}", condition=condition_words(one))
            for one in sorted(evidence.never)
        ]
        return why

    def _why_words(self, evidence: Evidence, spellings: Mapping[int, Spelling]) -> list[str]:
        named = [plain_words(condition_as_written(one)).split() for one in evidence.happens]
        said, slips, ticked = [], [], []
        for place, (spelling, fit, text) in sorted(spellings.items()):
            if text == "conditions":  # nobody wrote that word: it names what was ticked or found
                if not any(spelling in words for words in named):
                    ticked.append(spelling)
            elif fit == NEAR_FIT:
                asked = self._words[place].word
                slips.append(tr("near word: {found} for {asked}", found=spelling, asked=asked))
            else:
                said.append(spelling)
        if said:
            slips.insert(0, tr("words: {words}", words=", ".join(dict.fromkeys(said))))
        if ticked:
            words = ", ".join(dict.fromkeys(ticked))
            slips.append(tr("condition or finding: {words}", words=words))
        return slips


def _first_letters(stem: str) -> str:
    """Return letters with which every word of a stem begins; the last one may be another."""
    return stem[: min(4, max(1, len(stem) - 1))]


@lru_cache(2048)
def _tokens(text: str) -> tuple[Token, ...]:
    """Return the words of a text; while somebody types the same jobs come again and again."""
    return tuple(tokens(text))
