"""Porter's stems: the forms of a word under one key, as the full-text index keeps them too.

M. F. Porter, "An algorithm for suffix stripping", Program 14 (1980) 130-137, with the two rules
(-bli, -logi) that the author added later.
"""

from __future__ import annotations

from functools import lru_cache

_REMEMBERED = 50_000
_LONGEST = 64  # characters; nothing longer is a word with an ending

_STEP_2 = """ational ate; tional tion; enci ence; anci ance; izer ize; bli ble; alli al; entli ent;
eli e; ousli ous; ization ize; ation ate; ator ate; alism al; iveness ive; fulness ful;
ousness ous; aliti al; iviti ive; biliti ble; logi log"""
_STEP_3 = "icate ic; ative; alize al; iciti ic; ical ic; ful; ness"
_STEP_4 = """al ance ence er ic able ible ant ement ment ent ion ou ism ate iti ous ive ize"""


def _rules(told: str) -> tuple[tuple[str, str], ...]:
    pairs = (rule.split() for rule in told.split(";"))
    rules = [(pair[0], pair[1] if len(pair) > 1 else "") for pair in pairs]
    return tuple(sorted(rules, key=lambda rule: -len(rule[0])))


_RULES_2, _RULES_3 = _rules(_STEP_2), _rules(_STEP_3)
_ENDINGS_4 = tuple(sorted(_STEP_4.split(), key=lambda ending: -len(ending)))


@lru_cache(_REMEMBERED)
def porter_stem(word: str) -> str:
    """Return the stem of a folded word; what has other letters than a to z is its own stem."""
    if not 2 < len(word) <= _LONGEST or not word.isascii() or not word.isalpha():
        return word
    word = _past_and_present(_plural(word))
    if word.endswith("y") and _has_vowel(word[:-1]):
        word = word[:-1] + "i"
    word = _replaced(_replaced(word, _RULES_2), _RULES_3)
    return _last_letters(_without_suffix(word))


def _plural(word: str) -> str:
    if word.endswith(("sses", "ies")):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") else word


def _past_and_present(word: str) -> str:
    if word.endswith("eed"):
        return word[:-1] if _measure(word[:-3]) > 0 else word
    for ending in ("ed", "ing"):
        stem = word.removesuffix(ending)
        if stem != word:
            return _mended(stem) if _has_vowel(stem) else word
    return word


def _mended(stem: str) -> str:
    """Give a stem back what it had before its ending: "hopp" is hop, "fil" is file."""
    if stem.endswith(("at", "bl", "iz")):
        return stem + "e"
    if _doubled(stem) and stem[-1] not in "lsz":
        return stem[:-1]
    return stem + "e" if _measure(stem) == 1 and _short(stem) else stem


def _replaced(word: str, rules: tuple[tuple[str, str], ...]) -> str:
    for ending, other in rules:
        if word.endswith(ending):
            stem = word[: -len(ending)]
            return stem + other if _measure(stem) > 0 else word
    return word


def _without_suffix(word: str) -> str:
    for ending in _ENDINGS_4:
        if word.endswith(ending):
            stem = word[: -len(ending)]
            fits = ending != "ion" or stem.endswith(("s", "t"))
            return stem if fits and _measure(stem) > 1 else word
    return word


def _last_letters(word: str) -> str:
    if word.endswith("e"):
        stem = word[:-1]
        measure = _measure(stem)
        if measure > 1 or (measure == 1 and not _short(stem)):
            word = stem
    return word[:-1] if word.endswith("ll") and _measure(word) > 1 else word


def _is_consonant(word: str, place: int) -> bool:
    if word[place] == "y":
        return place == 0 or not _is_consonant(word, place - 1)
    return word[place] not in "aeiou"


def _measure(stem: str) -> int:
    """Return how often a consonant follows on a vowel: Porter's m."""
    sounds = [_is_consonant(stem, place) for place in range(len(stem))]
    return sum(sounds[i] and not sounds[i - 1] for i in range(1, len(sounds)))


def _has_vowel(stem: str) -> bool:
    return not all(_is_consonant(stem, place) for place in range(len(stem)))


def _doubled(stem: str) -> bool:
    return len(stem) > 1 and stem[-1] == stem[-2] and _is_consonant(stem, len(stem) - 1)


def _short(stem: str) -> bool:
    """Tell whether it ends consonant, vowel, consonant, and the last is not w, x or y."""
    last = len(stem) - 1
    return (
        last >= 2
        and _is_consonant(stem, last)
        and not _is_consonant(stem, last - 1)
        and _is_consonant(stem, last - 2)
        and stem[-1] not in "wxy"
    )
