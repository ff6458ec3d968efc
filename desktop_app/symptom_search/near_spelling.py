"""Near spelling: an unknown word taken for the one known word that it must be a slip for."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable, Iterator
from functools import cache, cached_property, lru_cache

from desktop_app.symptom_search.typing_mistake import distance

SHORTEST = 5  # letters; shorter words have too many neighbours that are words themselves
FREE = 6  # letters from which any one mistake is allowed; before, only swapped or doubled letters
LONG = 9  # letters from which two mistakes are allowed
LONGEST_WORD = 40  # letters; what is longer is no word that somebody mistyped, and takes long
_FEWEST_SOUNDS = 4
_REMEMBERED = 20_000

# One letter for each sound, so that words written by ear meet. Our own, and rough on purpose.
_SOUNDS = (
    ("^kn|^gn", "n"),
    ("^wr", "r"),
    ("ph", "f"),
    ("tch", "ch"),
    ("[tsc]i?on|shun|shon", "xn"),
    ("sh|ch", "x"),
    ("gh", ""),
    ("qu", "kw"),
    ("x(?!n)", "ks"),
    ("ck", "k"),
    ("c(?=[eiy])", "s"),
    ("[cq]", "k"),
    ("z", "s"),
    ("^[aeiouy]+", "a"),
    ("(?<!^)[aeiouy]", ""),
    (r"(.)\1+", r"\1"),
)


def sounds(word: str) -> str:
    """Return the consonants of a word as they are heard; a vowel counts only where it begins."""
    for pattern, sound in _sounds():
        word = pattern.sub(sound, word)
    return word


@cache
def _sounds() -> tuple[tuple[re.Pattern[str], str], ...]:
    """Return the sounds' patterns, made with the first slip."""
    return tuple((re.compile(pattern), sound) for pattern, sound in _SOUNDS)


class NearSpelling:
    """Finds the known word for a slip: one mistake, two in a long word, or the same sound.

    `known` are the forms of words, and `means` says what one means. Where words that mean two
    things are equally near the slip stands for neither; `ordinary` words are no slips at all.
    """

    def __init__(
        self,
        known: Collection[str],
        means: Callable[[str], str],
        ordinary: Iterable[str] = (),
    ) -> None:
        self._forms, self._means = known, means
        self._known = frozenset((*known, *ordinary))
        self._remembered = lru_cache(_REMEMBERED)(self._nearest)

    @cached_property
    def _by_gap(self) -> dict[str, set[str]]:
        """The known words by what is left of them; made with the first slip, not at the start."""
        found: dict[str, set[str]] = {}
        for word in self._long_enough():
            for left in _with_gaps(word):
                found.setdefault(left, set()).add(word)
        return found

    @cached_property
    def _by_sound(self) -> dict[str, set[str]]:
        found: dict[str, set[str]] = {}
        for word in self._long_enough():
            found.setdefault(sounds(word), set()).add(word)
        return found

    def _long_enough(self) -> Iterator[str]:
        return (word for word in self._forms if len(word) >= SHORTEST and word.isalpha())

    def knows(self, word: str) -> bool:
        """Tell whether a word is known, or an ordinary word that is no slip."""
        return word in self._known

    def meant(self, word: str) -> str:
        """Return the word that was meant; the word itself where that is not plain."""
        looked_up = SHORTEST <= len(word) <= LONGEST_WORD and word.isalpha()
        if word in self._known or not looked_up:
            return word
        return self._remembered(word)

    def _nearest(self, word: str) -> str:
        by_letters = {near for left in _with_gaps(word) for near in self._by_gap.get(left, ())}
        found = [(_off(word, near), near) for near in by_letters if _begin_alike(word, near)]
        fits = [one for one in found if one[0] <= _allowed(word)]
        if not fits and len(sounds(word)) >= _FEWEST_SOUNDS:
            found = [(_off(word, near), near) for near in self._by_sound.get(sounds(word), ())]
            fits = [one for one in found if one[0] <= max(2, len(word) // 3 + (len(word) > LONG))]
        nearest = sorted(one for one in fits if one[0] == min(fits)[0])
        one_meaning = len({self._means(near) for _, near in nearest}) == 1
        return nearest[0][1] if one_meaning else word


def _allowed(word: str) -> float:
    return 0.5 if len(word) < FREE else 1 if len(word) < LONG else 2


def _off(word: str, other: str) -> float:
    """Return the mistakes between two words; swapped or doubled letters are the likeliest."""
    likely = sorted(word) == sorted(other) or _undoubled(word) == _undoubled(other)
    return distance(word, other) - 0.5 * likely


def _undoubled(word: str) -> str:
    return re.sub(r"(.)\1+", r"\1", word)


def _begin_alike(word: str, other: str) -> bool:
    """Tell whether two words begin alike, or begin with two letters swapped."""
    return word[0] == other[0] or word[:2] == other[1::-1]


def _with_gaps(word: str) -> set[str]:
    """Return the word and what is left of it without a letter, or two where it is long.

    Two words that are that near have one of these in common (what was added to one was dropped
    from the other), so they are found without looking at every known word.
    """
    left = {word}
    for _ in range(2 if len(word) >= LONG - 1 else 1):
        left |= {one[:i] + one[i + 1 :] for one in left for i in range(len(one))}
    return left
