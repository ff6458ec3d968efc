"""Words as they are compared: without endings, misspellings mended, one word for each region's."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Mapping, Sequence
from functools import cached_property, lru_cache
from itertools import chain, pairwise
from types import MappingProxyType
from typing import NamedTuple

from desktop_app.symptom_search.near_spelling import LONGEST_WORD, NearSpelling

_SHORTEST_JOINED = 6
_SHORTEST_SLIP = 4
_REMEMBERED = 20_000  # words whose spelling was looked up before
_PHRASES = 5_000  # more than all files of symptoms tell
_CLAUSE = re.compile(r"[.;:!?,\n()]+")
_WORD = re.compile(r"[a-z0-9]+")
_MARKS = re.compile("['’‘`]")
_THOUSANDS = re.compile(r"(?<=\d),(?=\d{3}\b)")  # 60,000 is one number, and no speed of 60
_NUMBERED = re.compile(r"\bno\.?\s*(?=\d)", re.IGNORECASE)

# Words that carry no symptom. Words such as "no", "not", "out" and "up" are not among them.
_FILLING = """a an the my our his her its it is was are were be been am i you he she we they
    this that these those there of to at in on by for from with and or so as when whenever
    while if then just really very quite bit little some still again also even
    get gets getting got have has had having do does did keep keeps kept seem seems like
    please car vehicle sort kind customer says states said reports complains"""
FILLING = frozenset(_FILLING.split())
_IRREGULAR = {
    "dies": "die",
    "died": "die",
    "dying": "die",
    "shook": "shak",
    "ran": "run",
    "went": "go",
    "goes": "go",
    "going": "go",
    "lost": "los",
    "sank": "sink",
    "blew": "blow",
    "blown": "blow",
    "froze": "freez",
    "stank": "stink",
    "stuck": "stick",
    "ground": "ground",
}
_KEPT_WHOLE = """speed need bleed feed bed red ring spring string thing nothing something
    everything morning pulls lightly gas abs bus glass always dies this hundred during ceiling
    parking"""
_AS_THEY_ARE = frozenset((*_IRREGULAR, *_KEPT_WHOLE.split()))


@lru_cache(_REMEMBERED)
def stem(word: str) -> str:
    """Return a word without its usual endings: "misfires" and "misfiring" are both "misfir"."""
    word = _one(word)
    if word in _AS_THEY_ARE:
        return _IRREGULAR.get(word, word)
    if word.endswith("tion") and len(word) >= 7:
        return word[:-3]
    for ending in ("ing", "ed", "ly"):
        if word.endswith(ending) and len(word) - len(ending) >= 3:
            return _trimmed(word[: -len(ending)])
    return _trimmed(word)


def _one(word: str) -> str:
    """Return a word without its plural or third-person s."""
    if word in _AS_THEY_ARE or len(word) < 4 or not word.endswith("s"):
        return word
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith(("sses", "shes", "ches", "xes", "zzes")):
        return word[:-2]
    return word if word.endswith(("ss", "us", "is")) else word[:-1]


def _trimmed(word: str) -> str:
    """Undo a doubled consonant and a silent e, so that all forms of a word meet."""
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "aeiouls":
        return word[:-1]
    if len(word) > 3 and word.endswith("e") and not word.endswith("ee"):
        return word[:-1]
    return word


class ReadBefore(NamedTuple):
    """What was worked out before from the same words: taken over, it need not be again.

    `words` are the compared words of phrases, `forms` all words that are known.
    """

    words: Mapping[str, tuple[str, ...]] = MappingProxyType({})
    forms: Collection[str] = ()


NOTHING_BEFORE = ReadBefore()


class WordReader:
    """Turns text into clauses of compared words.

    `mended` maps misspellings, `one_word` maps one region's word to the other's; both may map a
    word or several neighbouring words, to a word or several. `whole` are phrases that mean
    something word for word only: without its filling words "since you had it" is any "since".
    A word that stands in none of these nor in `known` texts is mended where it is plainly a slip,
    or two words written as one, or half of one; `ordinary` words are left as they are. What was
    `before` worked out from all of these is not worked out again.
    """

    def __init__(
        self,
        mended: Mapping[str, str],
        one_word: Mapping[str, str],
        whole: Iterable[str] = (),
        known: Iterable[str] = (),
        ordinary: Iterable[str] = (),
        before: ReadBefore = NOTHING_BEFORE,
    ) -> None:
        whole, ordinary = tuple(whole), tuple(ordinary)
        self._written, self._before = (*known, *whole, *one_word), before
        self._replaced = tuple(one_word.values())
        # Most of these are read next, as phrases, and are not taken apart a second time then.
        self._apart = {} if before.forms else {text: _split(text) for text in self._written}
        self._mended = {tuple(_split(k)): tuple(_split(v)) for k, v in mended.items()}
        self._mends = _Replacing(self._mended)
        self._joins = _Replacing(
            {words: ("".join(words),) for words in map(tuple, map(self._mend, whole))}
        )
        self._one_words = _Replacing(
            {_stems(_split(k)): _stems(_split(v)) for k, v in one_word.items()}
        )
        self._forms = frozenset(before.forms or self._all_forms())
        self._spelling = NearSpelling(
            self._forms,
            lambda word: " ".join(self._compared([word])),
            (*ordinary, *FILLING),
        )
        self._ordinary_words = ordinary
        self._spelled_alone = lru_cache(_REMEMBERED)(self._spell_alone)
        self._are_one = lru_cache(_REMEMBERED)(self._is_one_apart)
        self._told = lru_cache(_PHRASES)(
            self._tell
        )  # a phrase is asked for again: by each shop's own

    def clauses(self, text: str) -> list[tuple[str, ...]]:
        """Return the compared words clause by clause; filling words are left out."""
        plain = _NUMBERED.sub("number ", _THOUSANDS.sub("", text))
        parts = (self.words(part) for part in _CLAUSE.split(plain))
        return [part for part in parts if part]

    def words(self, text: str) -> tuple[str, ...]:
        """Return the compared words of one clause or phrase."""
        return self._told(text)

    def read_now(self, phrases: Iterable[str]) -> ReadBefore:
        """Return what is worked out from these words, to be kept beside them."""
        return ReadBefore({one: self.words(one) for one in phrases}, self._forms)

    def _all_forms(self) -> set[str]:
        texts = (*self._apart.values(), *map(_split, self._replaced), *self._mended.values())
        forms = set(chain.from_iterable(texts))
        forms.update(list(map(stem, forms)))
        return forms.union(*self._mended)

    def _tell(self, text: str) -> tuple[str, ...]:
        before = self._before.words.get(text)
        if before is not None:
            return before
        words = self._apart.pop(text, None)
        if words is None:
            return tuple(self._compared(self._spelled(_split(text))))
        # What was taken apart above is known: nothing in it is one word written as two.
        return tuple(self._compared([*chain.from_iterable(map(self._spelled_alone, words))]))

    def _mend(self, text: str) -> Sequence[str]:
        return self._mends.replaced(_split(text))

    def _compared(self, words: Sequence[str]) -> list[str]:
        joined = self._joins.replaced(self._mends.replaced(words))
        return list(self._one_words.replaced(_stems(joined)))

    def word(self, text: str) -> str:
        """Return the first compared word of a text; empty where only filling words are left."""
        words = self.words(text)
        return words[0] if words else ""

    def is_word(self, compared: str) -> bool:
        """Tell whether a compared word is one that is known, or an ordinary one: no slip."""
        return compared in self._ordinary or self._spelling.knows(compared)

    def _spelled(self, words: list[str]) -> list[str]:
        """Return the words as they were meant: joined, parted, and slips mended."""
        spelled: list[str] = []
        place = 0
        while place < len(words):
            word, place = words[place], place + 1
            if place < len(words) and self._are_one(word, words[place]):
                spelled.append(word + words[place])
                place += 1
            else:
                spelled += self._spelled_alone(word)
        return spelled

    def _spell_alone(self, word: str) -> tuple[str, ...]:
        """Return one word as it was meant: two that were written as one, or what it slips for."""
        if self._is_known(word):
            return (self._slip_within(word),)
        return tuple(self._parted(word) or [self._meant(word)])

    def _is_known(self, word: str) -> bool:
        return self._spelling.knows(word) or self._spelling.knows(stem(word))

    def _meant(self, word: str) -> str:
        for form in (word, stem(word)):
            meant = self._spelling.meant(form)
            if meant != form:
                return meant
        return word

    def _slip_within(self, word: str) -> str:
        """Return the word without its ending where that is a listed slip ("ideling")."""
        within = stem(word)
        is_slip = len(within) >= _SHORTEST_SLIP and (within,) in self._mended
        return within if is_slip and (word,) not in self._mended else word

    def _is_one_apart(self, one: str, other: str) -> bool:
        """Tell whether two words are one that was written apart ("over heating")."""
        if len(one) + len(other) < _SHORTEST_JOINED or one.isdigit() or one in FILLING:
            return False
        return self._is_known(one + other) and (stem(one), stem(other)) not in self._pairs

    @cached_property
    def _ordinary(self) -> frozenset[str]:
        return frozenset(map(stem, self._ordinary_words))

    @cached_property
    def _pairs(self) -> set[tuple[str, str]]:
        """Neighbours in what is known; asked for where a word may be two, or two words one."""
        texts = map(_split, (*self._written, *self._replaced))
        all_texts = chain(texts, self._mended.values(), self._mended)
        pairs = set(chain.from_iterable(map(pairwise, all_texts)))
        return {(stem(one), stem(other)) for one, other in pairs}

    def _parted(self, word: str) -> list[str]:
        """Return the two words that were written as one ("fanbelt"), or nothing."""
        if len(word) > LONGEST_WORD:
            return []
        for cut in range(3, len(word) - 2):
            one, other = word[:cut], word[cut:]
            if (stem(one), stem(other)) in self._pairs:
                return [one, other]
        return []


def _split(text: str) -> list[str]:
    if text.isascii() and text.replace(" ", "").isalnum():
        return text.lower().split()  # the same, several times as fast
    return _WORD.findall(_MARKS.sub("", text.casefold()))


def _stems(words: Iterable[str]) -> tuple[str, ...]:
    return tuple(stem(word) for word in words if word not in FILLING)


class _Replacing:
    """Neighbouring words and what stands for them; the longest are replaced first."""

    def __init__(self, table: Mapping[tuple[str, ...], tuple[str, ...]]) -> None:
        self._table = table
        self._longest: dict[str, int] = {}  # by their first word
        for words in table:
            if words:
                self._longest[words[0]] = max(len(words), self._longest.get(words[0], 0))

    def replaced(self, words: Sequence[str]) -> Sequence[str]:
        """Return the words with all that stands in the table replaced."""
        if self._longest.keys().isdisjoint(words):
            return words
        result: list[str] = []
        place = 0
        while place < len(words):
            longest = self._longest.get(words[place])
            if longest is None:
                result.append(words[place])
                place += 1
                continue
            for length in range(min(longest, len(words) - place), 0, -1):
                new = self._table.get(tuple(words[place : place + length]))
                if new is not None:
                    result.extend(new)
                    place += length
                    break
            else:
                result.append(words[place])
                place += 1
        return result
