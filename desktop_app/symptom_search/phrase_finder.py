"""Finds the known phrases in what somebody said, the longest first, and notices denials."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cached_property, lru_cache
from itertools import chain, pairwise
from typing import NamedTuple

from desktop_app.symptom_search.all_well import unwell_denials, well_places
from desktop_app.symptom_search.denials import DENIALS, denials_plain, denied_places, is_cured
from desktop_app.symptom_search.nothing_said import CIRCUMSTANCES, STARTS, Told, nothing_plain
from desktop_app.symptom_search.phrase_slips import PhraseSlips
from desktop_app.symptom_search.subjects import Subjects
from desktop_app.symptom_search.told_words import WordReader, stem
from desktop_app.symptom_search.well_said import well_plain

# Where it is and how strong it is may be told within any phrase.
_PASSED_OVER = """left right front rear side sound noise loud too so much badly lot rough
    terribly awful real well"""
_BETWEEN = frozenset(map(stem, _PASSED_OVER.split()))
_MOST_BETWEEN = 2
_SAY_LITTLE = _BETWEEN | DENIALS  # they don't speak for a phrase whose other word is unknown
# How many foreign words may stand among those of a phrase, told in its order or in another.
_SLACK = 1
# What a fit loses for each word that is only akin, for each foreign word and for another order.
_AKIN, _FOREIGN, _OTHER_ORDER = 0.5, 0.1, 0.05
_SLIP = 1.05  # for a word with a slip: less is left than for the others told as a phrase alone
# Clauses are said again and again ("comes and goes"); longer ones hardly twice.
_REMEMBERED, _LONGEST_REMEMBERED = 20_000, 40


class Found(NamedTuple):
    """A phrase found: what it stands for, where its first word stands, and whether it is denied.

    `said` are the compared words that it takes.
    """

    id: str
    clause: int
    place: int
    said: tuple[str, ...]
    denied: bool

    @property
    def words(self) -> int:
        """How many words it takes."""
        return len(self.said)


class _Phrase(NamedTuple):
    id: str
    words: tuple[str, ...]
    denies: bool  # a denial within a phrase ("no start") belongs to what follows it


class _Meanings(dict[str, frozenset[str]]):
    """What may stand for a word; one that is not among them stands for itself."""

    def __missing__(self, word: str) -> frozenset[str]:
        self[word] = alone = frozenset((word,))
        return alone


class _Fit(NamedTuple):
    phrase: _Phrase
    places: tuple[int, ...]
    value: float


class PhraseFinder:
    """Knows phrases by their compared words; the one that explains most takes the words it needs.

    `own` phrases, with what each means, hold where others are told with the same words.
    `akin` gives what people say for a word in a phrase of several words ("brakes screech" for
    "brakes squeal"); `slack` foreign words may stand in between. What is
    told word for word always explains more than the same number of words told nearly. One word of
    a phrase may be told with a slip where the others are told as they are. What `subjects` say is
    told of another thing is not found. Where phrases tell `conditions`, one under which all is well
    ("fine when dry") is denied, and what denies in a phrase of `symptoms` denies none.
    """

    def __init__(
        self,
        reader: WordReader,
        phrases: Mapping[str, Iterable[str]],
        akin: Mapping[str, Iterable[str]] | None = None,
        slack: int = _SLACK,
        own: Mapping[str, str] | None = None,
        subjects: Subjects | None = None,
        conditions: bool = False,
        symptoms: PhraseFinder | None = None,
    ) -> None:
        self._reader = reader
        self._conditions, self._symptoms = conditions, symptoms
        self._subjects = subjects
        self._slack = slack
        self._by_first: dict[str, list[_Phrase]] = {}
        self._by_rarest: dict[str, list[_Phrase]] = {}
        self._akin: dict[str, frozenset[str]] = {}
        for word, others in (akin or {}).items():
            compared = reader.word(word)
            kin = self._akin.get(compared, frozenset((compared,)))
            self._akin[compared] = kin | {one for other in others if (one := reader.word(other))}
        known: dict[tuple[str, ...], _Phrase] = {}
        listed = ((identity, (text,)) for text, identity in (own or {}).items())
        self._meanings = meanings = _Meanings(self._akin)
        for identity, texts in (*listed, *phrases.items()):
            for text in texts:
                words = reader.words(text)
                if words and words not in known:
                    known[words] = _Phrase(identity, words, not DENIALS.isdisjoint(words))
        use = Counter(chain.from_iterable(map(set, known)))
        order = {word: place for place, word in enumerate(sorted(use, key=lambda w: (use[w], w)))}
        for words, phrase in known.items():
            self._by_first.setdefault(words[0], []).append(phrase)
            if len(words) > 1:
                rarest = min(words, key=order.__getitem__)
                for word in meanings[rarest]:
                    self._by_rarest.setdefault(word, []).append(phrase)
        self._phrases = tuple(known.values())
        self._remembered = lru_cache(_REMEMBERED)(self._in_clause)

    def find(self, text: str) -> list[Found]:
        """Return what is found, in the order in which it is told."""
        if self._conditions:
            text = well_plain(nothing_plain(text, self._when))
        return sorted(self._found_in(text), key=lambda one: (one.clause, one.place))

    def _when(self, piece: str) -> Told:
        """Tell of a piece of a text whether it tells when it happens, and whether that alone."""
        found = self._found_in(piece)
        circumstances = [one for one in found if one.id in CIRCUMSTANCES]
        words = sum(one.words for one in circumstances)
        return Told(
            when=bool(circumstances) or any(one.id in STARTS for one in found),
            alone=bool(words) and words == sum(map(len, _clauses(self._reader, piece))),
        )

    def _found_in(self, text: str) -> list[Found]:
        found: list[Found] = []
        for number, clause in enumerate(_clauses(self._reader, text)):
            short = len(clause) <= _LONGEST_REMEMBERED
            told = self._remembered(clause) if short else self._in_clause(clause)
            found += [one._replace(clause=number) for one in told] if number else told
        return found

    def meanings(self, word: str) -> frozenset[str]:
        """Return what may stand for a compared word within a phrase, itself among it."""
        return self._akin.get(word) or frozenset((word,))

    def _in_clause(self, clause: tuple[str, ...]) -> tuple[Found, ...]:
        """Return what is found in a clause, as if it were the first."""
        fits = self._fits(clause)
        said = _without_overlap(fits, frozenset())
        own = _denials_of(clause, said)
        if self._conditions:
            told = [fit.places for fit in said if fit.phrase.id]
            lacking: set[int] = set()
            if self._symptoms is not None and not DENIALS.isdisjoint(clause):
                lacking = self._symptoms.own_denials(clause)
            denied = denied_places(clause, own | lacking | unwell_denials(clause))
            missing = {(place + 1,) for place in lacking}  # "no brakes" is no braking
            denied |= {fit.places[0] for fit in fits if fit.places in missing}
            denied |= well_places(clause, told)
        else:
            denied = denied_places(clause, own)
        return tuple(
            Found(
                *(fit.phrase.id, 0, fit.places[0], tuple([clause[i] for i in fit.places])),
                not denied.isdisjoint(fit.places) or is_cured(clause, fit.places[-1]),
            )
            for fit in _without_overlap(fits, denied)
        )

    def own_denials(self, clause: tuple[str, ...]) -> set[int]:
        """Return where denials are part of a phrase: "no power uphill" denies nothing uphill."""
        return _denials_of(clause, _without_overlap(self._fits(clause), frozenset()))

    def _fits(self, clause: tuple[str, ...]) -> list[_Fit]:
        """Return where phrases are told of the car, what explains most first."""
        fits = [*self._word_for_word(clause), *self._nearly(clause), *self._with_a_slip(clause)]
        fits.sort(key=lambda fit: (-fit.value, fit.places))
        return self._of_the_car(clause, fits)

    def _of_the_car(self, clause: tuple[str, ...], fits: list[_Fit]) -> list[_Fit]:
        """Leave out what is told of another thing."""
        if self._subjects is None or not fits:
            return fits
        said = _without_overlap(fits, frozenset())
        taken = {place for fit in said if len(fit.places) > 1 for place in fit.places}
        another = self._subjects.is_of_another
        return [fit for fit in fits if not another(fit.phrase.id, clause, fit.places, taken)]

    def _word_for_word(self, clause: Sequence[str]) -> Iterator[_Fit]:
        for start, word in enumerate(clause):
            for phrase in self._by_first.get(word, ()):
                length = len(phrase.words)
                if tuple(clause[start : start + length]) == phrase.words:
                    yield _Fit(phrase, tuple(range(start, start + length)), length)

    def _nearly(self, clause: Sequence[str]) -> Iterator[_Fit]:
        told, meanings = frozenset(clause), self._meanings.__getitem__
        for anchor, word in enumerate(clause):
            for phrase in self._by_rarest.get(word, ()):
                if any(map(told.isdisjoint, map(meanings, phrase.words))):
                    continue
                fit = self._around(clause, anchor, phrase)
                if fit is not None:
                    yield fit

    def _with_a_slip(self, clause: Sequence[str]) -> Iterator[_Fit]:
        """Yield how phrases fit of which one word is told with a slip, every other as it is."""
        told = frozenset(clause)
        for place, word in enumerate(clause):
            for meant in self._slips.meant(word):
                mended = (*clause[:place], meant, *clause[place + 1 :])
                for phrase in self._by_word.get(meant, ()):
                    others = frozenset(phrase.words) - {meant}
                    if others <= told and not others <= _SAY_LITTLE:
                        fit = self._around(mended, place, phrase)
                        if fit is not None and place in fit.places:
                            yield fit._replace(value=fit.value - _SLIP)

    @cached_property
    def _by_word(self) -> dict[str, list[_Phrase]]:
        by_word: dict[str, list[_Phrase]] = {}
        for phrase in self._phrases:
            for word in set(phrase.words) if len(phrase.words) > 1 else ():
                by_word.setdefault(word, []).append(phrase)
        return by_word

    @cached_property
    def _slips(self) -> PhraseSlips:
        return PhraseSlips(self._by_word, self._reader.is_word)

    def _around(self, clause: Sequence[str], anchor: int, phrase: _Phrase) -> _Fit | None:
        """Return how all the words stand close together around the anchor, or None."""
        reach = len(phrase.words) + self._slack + _MOST_BETWEEN
        best: _Fit | None = None
        for start in range(max(0, anchor - reach + 1), anchor + 1):
            fit = self._within(clause, range(start, min(start + reach, len(clause))), phrase)
            if fit is not None and (best is None or fit.value > best.value):
                best = fit
        return best

    def _within(self, clause: Sequence[str], span: range, phrase: _Phrase) -> _Fit | None:
        places: list[int] = []
        akin = 0
        for word in phrase.words:
            free = [place for place in span if place not in places]
            place = next((i for i in free if clause[i] == word), None)
            if place is None:
                kin = self._akin.get(word, frozenset())
                place = next((i for i in free if clause[i] in kin), None)
                akin += 1
            if place is None or akin * 2 > len(phrase.words):
                return None
            places.append(place)
        in_order = places == sorted(places)
        between = set(range(min(places), max(places))).difference(places)
        foreign = sum(clause[place] not in _BETWEEN for place in between)
        if foreign > (self._slack if in_order else _SLACK):
            return None
        if phrase.denies and not (in_order and _denies_the_next(clause, places)):
            return None
        value = len(places) - _AKIN * akin - _FOREIGN * len(between) - _OTHER_ORDER * (not in_order)
        return _Fit(phrase, tuple(sorted(places)), value)


@lru_cache(16)
def _clauses(reader: WordReader, text: str) -> tuple[tuple[str, ...], ...]:
    """Return the clauses of a text; groups and conditions are looked for in the same ones."""
    return tuple(reader.clauses(denials_plain(text)))


def _denies_the_next(clause: Sequence[str], places: list[int]) -> bool:
    """Tell whether each denial among the places stands right before the next of them."""
    return all(later == place + 1 for place, later in pairwise(places) if clause[place] in DENIALS)


def _denials_of(clause: Sequence[str], said: Iterable[_Fit]) -> set[int]:
    """Return where denials are part of what is said: "no power" denies nothing else."""
    return {place for fit in said for place in fit.places if clause[place] in DENIALS}


def _without_overlap(fits: Iterable[_Fit], denied: frozenset[int]) -> list[_Fit]:
    """Keep each fit whose words no better one took; a denied one takes only what is denied.

    In "brakes not squealing but grinding" the brakes are free for the grinding.
    """
    taken: set[int] = set()
    kept = []
    for fit in fits:
        if taken.isdisjoint(fit.places):
            kept.append(fit)
            own = denied.intersection(fit.places)
            taken.update(own or fit.places)
    return kept
