"""Typing mistakes: how far one word is from another, and the known words nearest to a typed one."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from desktop_app.symptom_search.word_forms import ENDINGS

_ANY = 1 << 30
ENDING = 4  # letters a typed word may have beyond the stem it is compared with


def distance(one: str, other: str) -> int:
    """Return the fewest letters to add, drop, change or swap with a neighbour.

    The restricted Damerau distance ("optimal string alignment"): no stretch is edited twice.
    """
    return _last_column(one, other)[-1]


def distance_to_stem(typed: str, stem: str, most: int = _ANY) -> int:
    """Return the distance from the stem to that beginning of the typed word which fits it best.

    What is left of the typed word must be an ending of the language; one that is nearly an ending
    counts as one mistake more. What is over `most` may come back as any number over it.
    """
    by_length = _last_column(typed, stem, most)
    shortest = max(0, len(typed) - ENDING)
    return min(
        by_length[length] + _from_an_ending(typed[length:])
        for length in range(shortest, len(typed) + 1)
    )


def mistakes_allowed(word: str) -> int:
    """Return how many mistakes a word of this length may have and still be taken for another."""
    return 0 if len(word) < 4 else 1 if len(word) < 8 else 2


def stem_lengths(typed: str, allowed: int) -> range:
    """Return how many letters a stem has that is so many mistakes from a typed word at most."""
    return range(len(typed) - ENDING - 1, len(typed) + allowed + 1)


def nearest(typed: str, known: Iterable[tuple[str, int]], most: int = 3) -> tuple[str, ...]:
    """Return the known stems nearest to the typed word, the commonest first.

    `known` gives each stem with the number of jobs that have it; nothing comes back where
    all are too far off.
    """
    allowed = mistakes_allowed(typed)
    pieces, lengths = _pieces(typed), stem_lengths(typed, allowed)
    found: list[tuple[int, int, int, str]] = []
    for stem, jobs in known:
        if allowed == 0 or len(stem) < 4 or len(stem) not in lengths:
            continue
        if _missing(stem, typed, allowed) or len(pieces & _pieces(stem)) * 3 < len(stem) - 1:
            continue
        allowed_here = min(allowed, mistakes_allowed(stem + "__"))  # a stem lost some two letters
        off = distance_to_stem(typed, stem, allowed_here)
        if off <= allowed_here:
            found.append((off, -len(stem), -jobs, stem))
    found.sort()
    best = [stem for off, _, _, stem in found if off == found[0][0]]
    return tuple(best[:most])


def _missing(stem: str, typed: str, allowed: int) -> bool:
    """Tell whether more letters of a stem than allowed are not in the typed word at all."""
    missing = 0
    for letter in stem:
        if letter in typed:
            typed = typed.replace(letter, "", 1)
        else:
            missing += 1
    return missing > allowed


@lru_cache(2048)
def _from_an_ending(rest: str) -> int:
    if rest in ENDINGS:
        return 0
    return 1 if any(distance(rest, ending) == 1 for ending in ENDINGS) else len(rest)


def _pieces(word: str) -> frozenset[str]:
    """Return what two words that are near must share: neighbours, swapped or one apart."""
    pairs = {word[i : i + 2] for i in range(len(word) - 1)}
    return frozenset(pairs | {word[i] + word[i + 2] for i in range(len(word) - 2)})


def _last_column(one: str, other: str, most: int = _ANY) -> list[int]:
    """Return the distances of every beginning of `one` (shortest first) to the whole `other`.

    Once no later one can be within `most`, the rest is said to be over it.
    """
    before: list[int] = []
    row = list(range(len(other) + 1))
    ends = [row[-1]]
    for i, letter in enumerate(one, 1):
        two_before, before, row = before, row, [i]
        for j, goal in enumerate(other, 1):
            cost = before[j - 1] + (letter != goal)  # compared one by one: it is asked very often
            if before[j] < cost:
                cost = before[j] + 1
            if row[-1] < cost:
                cost = row[-1] + 1
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == goal:
                cost = min(cost, two_before[j - 2] + 1)
            row.append(cost)
        ends.append(row[-1])
        if min(row) > most and min(before) > most:  # a swap reaches back over one row
            ends += [most + 1] * (len(one) - i)
            break
    return ends
