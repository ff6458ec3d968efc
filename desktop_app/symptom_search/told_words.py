"""Words as they are compared: without endings, misspellings mended, one word for each region's."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

_CLAUSE = re.compile(r"[.;:!?,\n()]+")
_WORD = re.compile(r"[a-z0-9]+")
_MARKS = str.maketrans({"'": "", "’": "", "‘": "", "`": ""})
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
    everything morning pulls lightly gas abs bus glass always dies this hundred during ceiling"""
_AS_THEY_ARE = frozenset((*_IRREGULAR, *_KEPT_WHOLE.split()))


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


class WordReader:
    """Turns text into clauses of compared words.

    `mended` maps misspellings, `one_word` maps one region's word to the other's; both may map a
    word or two neighbouring words, to a word or several.
    """

    def __init__(self, mended: Mapping[str, str], one_word: Mapping[str, str]) -> None:
        self._mended = {tuple(_split(k)): tuple(_split(v)) for k, v in mended.items()}
        self._one_word = {_stems(_split(k)): _stems(_split(v)) for k, v in one_word.items()}
        self._longest = max((len(k) for k in (*self._mended, *self._one_word)), default=1)

    def clauses(self, text: str) -> list[list[str]]:
        """Return the compared words clause by clause; filling words are left out."""
        plain = _NUMBERED.sub("number ", text)
        parts = (self.words(part) for part in _CLAUSE.split(plain))
        return [part for part in parts if part]

    def words(self, text: str) -> list[str]:
        """Return the compared words of one clause or phrase."""
        mended = _replaced(_split(text), self._mended, self._longest)
        return _replaced(list(_stems(mended)), self._one_word, self._longest)

    def word(self, text: str) -> str:
        """Return the first compared word of a text; empty where only filling words are left."""
        words = self.words(text)
        return words[0] if words else ""


def _split(text: str) -> list[str]:
    return _WORD.findall(text.casefold().translate(_MARKS))


def _stems(words: Iterable[str]) -> tuple[str, ...]:
    return tuple(stem(word) for word in words if word not in FILLING)


def _replaced(
    words: list[str], table: Mapping[tuple[str, ...], tuple[str, ...]], longest: int
) -> list[str]:
    result: list[str] = []
    place = 0
    while place < len(words):
        for length in range(min(longest, len(words) - place), 0, -1):
            new = table.get(tuple(words[place : place + length]))
            if new is not None:
                result.extend(new)
                place += length
                break
        else:
            result.append(words[place])
            place += 1
    return result
