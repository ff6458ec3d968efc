"""The ranking: how much speaks for a past job being the one that was asked for, and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.symptom_search.question import Question, Word
from desktop_app.symptom_search.word_forms import alike, bases, tokens

# Points; our own, set so that a named job or car comes first, then the fault, then the words.
JOB_NUMBER = 1000.0
NAMED_CAR = 200.0
SAME_CODE = 14.0
SAME_SYMPTOM = 12.0
NEAR_SYMPTOM = 3.0
RELATED_CODE = 5.0
SAME_PART = 6.0
SAME_CONDITION = 3.0
NEVER_CONDITION = -3.0
ALL_WORDS = 10.0

# How much a word counts where it stands.
_FIELD_WEIGHT = {
    "concern": 1.0,
    "codes": 1.0,
    "parts": 0.9,
    "cause": 0.8,
    "correction": 0.8,
    "conditions": 0.7,
    "vehicle": 0.7,
    "people": 0.6,
}
_NEAR = 0.6

Span = tuple[int, int]


@dataclass(slots=True)
class Evidence:
    """What the indexes say of one job, before it is read itself; ids, each once."""

    named: str = ""
    number: bool = False
    groups: tuple[str, ...] = ()
    near_groups: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    related: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()
    happens: tuple[str, ...] = ()
    never: tuple[str, ...] = ()
    share_of_words: float = 0.0

    def points(self) -> float:
        """Return the points for all but the words."""
        return (
            (JOB_NUMBER if self.number else NAMED_CAR if self.named else 0.0)
            + SAME_SYMPTOM * len(self.groups)
            + NEAR_SYMPTOM * bool(self.near_groups and not self.groups)
            + SAME_CODE * len(self.codes)
            + RELATED_CODE * bool(self.related)
            + SAME_PART * bool(self.parts)
            + SAME_CONDITION * len(self.happens)
            + NEVER_CONDITION * len(self.never)
        )


@dataclass(frozen=True, slots=True)
class Sought:
    """One word as it is sought in a text: how telling it is, and what it may be a slip for.

    `beginning` is what a word may begin with while the sought one is still being typed.
    """

    word: str
    weight: float
    forms: tuple[str, ...]
    beginning: str = ""
    near: tuple[str, ...] = ()

    def fit(self, other: str) -> float:
        """Return how well a word of a text fits, 0 to 1."""
        if self.beginning and other.startswith(self.beginning):
            return 1.0
        if any(alike(form, other) for form in self.forms):
            return 1.0
        if any(other.startswith(stem) or alike(stem, other) for stem in self.near):
            return _NEAR
        return 0.0


def sought_word(word: Word, weight: float, near: tuple[str, ...]) -> Sought:
    """Return a word of a question as it is sought in texts."""
    forms = bases(word.word, unfinished=True) if word.unfinished else (word.word,)
    return Sought(word.word, weight, forms, word.word if word.unfinished else "", near)


@dataclass(frozen=True, slots=True)
class Standing:
    """Where one job comes out: its points, why, and the places to mark in its texts."""

    score: float
    why: tuple[str, ...]
    marks: Mapping[str, tuple[Span, ...]]


class Judge:
    """Weighs jobs against one question; remembers words it has compared before."""

    def __init__(self, question: Question, sought: Sequence[Sought], plain: Mapping[str, str]):
        self._question = question
        self._sought = sought
        self._plain = plain
        self._fits: dict[str, tuple[tuple[int, float], ...]] = {}
        self._whole = sum(one.weight for one in sought)

    def weigh(self, evidence: Evidence, texts: Mapping[str, str]) -> Standing:
        """Weigh one job by what the indexes say of it and by the words of its texts."""
        best: dict[int, float] = {}
        spellings: dict[int, str] = {}
        marks: dict[str, tuple[Span, ...]] = {}
        for name, text in texts.items():
            spans = []
            for token in tokens(text):
                for place, fit in self._fit(token.word):
                    value = fit * _FIELD_WEIGHT[name]
                    if value > best.get(place, 0.0):
                        best[place] = value
                        spellings[place] = token.word
                    spans.append((token.start, token.end))
            if spans:
                marks[name] = tuple(dict.fromkeys(spans))
        share = sum(self._sought[place].weight * value for place, value in best.items())
        words = ALL_WORDS * share / self._whole if self._whole else 0.0
        why = (*self._why(evidence), *self._why_words(spellings))
        return Standing(round(evidence.points() + words, 3), why, marks)

    def _fit(self, word: str) -> tuple[tuple[int, float], ...]:
        known = self._fits.get(word)
        if known is None:
            fits = ((place, one.fit(word)) for place, one in enumerate(self._sought))
            known = self._fits[word] = tuple((place, fit) for place, fit in fits if fit)
        return known

    def _why(self, evidence: Evidence) -> list[str]:
        why = [evidence.named] if evidence.named else []
        wanted = [group.id for group in self._question.groups]
        why += [f"same symptom: {self._plain[g]}" for g in wanted if g in evidence.groups]
        if not evidence.groups:
            why += [f"near symptom: {self._plain[g]}" for g in sorted(evidence.near_groups)[:1]]
        why += [f"same code: {code}" for code in sorted(evidence.codes)]
        why += [f"related code: {code}" for code in sorted(evidence.related)]
        why += [f"same part kind: {kind}" for kind in sorted(evidence.parts)]
        why += [f"happens: {condition_words(one)}" for one in sorted(evidence.happens)]
        why += [f"but never: {condition_words(one)}" for one in sorted(evidence.never)]
        return why

    def _why_words(self, spellings: Mapping[int, str]) -> list[str]:
        said, slips = [], []
        for place, spelling in sorted(spellings.items()):
            one = self._sought[place]
            if one.near:
                slips.append(f"near word: {spelling} for {one.word}")
            else:
                said.append(spelling)
        return ([f"words: {', '.join(dict.fromkeys(said))}"] if said else []) + slips
