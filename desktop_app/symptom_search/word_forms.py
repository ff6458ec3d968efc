"""The forms of a word: how a text falls into words, and which endings don't make another word."""

from __future__ import annotations

import re
import unicodedata
from typing import NamedTuple

# An apostrophe inside a word belongs to it, and so does the stroke of "a/c".
_L = r"[^\W_][\u0300-\u036f]*"  # one letter or digit with its accents, composed or not
_WORD = re.compile(rf"(?:{_L})(?:/{_L})+(?!{_L})|(?:{_L})+(?:['’](?:{_L})+)*")
_JOINTS = str.maketrans("", "", "'’/")
_ASCII = {n: chr(n).lower() if chr(n).isalnum() else " " for n in range(128)}
_ENDINGS = """s es e d ed ing ings er ers y ies ied ly n en ion ions ation ations ate ates ated
    ating ator ators or ment ments ness i al ical able ement ements ional ive"""
ENDINGS = frozenset(["", *_ENDINGS.split()])
_INFLECTIONS = ("s", "es", "ed", "ing", "d")


class Token(NamedTuple):
    """One word of a text: its folded form and where it stands (start, end)."""

    word: str
    start: int
    end: int


class Forms(NamedTuple):
    """What to look up for one word: any of the whole words, or words with one of the beginnings."""

    whole: tuple[str, ...] = ()
    beginnings: tuple[str, ...] = ()


def fold(text: str) -> str:
    """Return the text in lower case without accents, composed and decomposed letters alike."""
    if text.isascii():
        return text.lower()
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c for c in apart if not unicodedata.combining(c))


def tokens(text: str) -> list[Token]:
    """Return the words of a text; what stands around them (dashes, quotes, signs) is left out.

    "won't" is "wont" and "A/C" is "ac", so that they are found however they are written. The
    places are those of the text as it was handed in.
    """
    if text.isascii():  # folded as a whole: no letter changes its place
        found = [(m.group(), *m.span()) for m in _WORD.finditer(text.lower())]
        return [Token(w if w.isalnum() else w.translate(_JOINTS), a, b) for w, a, b in found]
    return [Token(_plain(m.group()), *m.span()) for m in _WORD.finditer(text)]


def plain_words(text: str) -> str:
    """Return the folded words of a text with one space between them, as the index keeps them."""
    if text.isascii() and "'" not in text and "/" not in text:
        return " ".join(text.translate(_ASCII).split())  # the same, several times as fast
    return " ".join(map(_plain, _WORD.findall(text)))


def _plain(word: str) -> str:
    folded = fold(word)
    return folded if folded.isalnum() else folded.translate(_JOINTS)


def alike(one: str, other: str) -> bool:
    """Tell whether two folded words differ by nothing but their ending (stalls, stalling)."""
    if one == other:
        return True
    shared = 0
    for a, b in zip(one, other, strict=False):
        if a != b:
            break
        shared += 1
    if shared < 3 or shared * 2 < max(len(one), len(other)):
        return False
    last = one[shared - 1]
    return _is_ending(one[shared:], last) and _is_ending(other[shared:], last)


def is_named(name: str, said: str) -> bool:
    """Tell whether a thing's name is said, as one or as several: "starts" is no starter."""
    short, long = sorted((name, said), key=len)
    return long in (short, f"{short}s", f"{short}es") or (
        short.endswith("y") and long == f"{short[:-1]}ies"
    )


def forms_to_find(word: str, unfinished: bool) -> Forms:
    """Return what the full-text index should be asked for a folded word.

    The index keeps stems. Porter's rules stem "overheats" and "overheating" differently (a base
    that ends in -at, -bl or -iz gets an e before the next rule looks at it), so both are asked
    for. A word still being typed ("stalli") is no stem's beginning, so the bases are asked for too.
    """
    whole = {} if unfinished else {word: None}
    for base in bases(word, unfinished):
        if unfinished and base != word:
            whole[base] = None
        if base.endswith(("at", "bl", "iz")) and len(base) > 4:
            whole[base + "s"] = whole[base + "ing"] = None
    return Forms(tuple(whole), (word,) if unfinished else ())


def bases(word: str, unfinished: bool = False) -> tuple[str, ...]:
    """Return the word and what is left of it without an inflection, or without a begun one."""
    found = {word: None}
    for inflection in _INFLECTIONS:
        parts = range(1 if unfinished else len(inflection), len(inflection) + 1)
        for part in parts:
            base = word[: -len(inflection[:part])]
            if word.endswith(inflection[:part]) and len(base) >= 4:
                found[base] = None
                if base[-1] == base[-2]:
                    found[base[:-1]] = None
    return tuple(found)


def _is_ending(rest: str, last: str) -> bool:
    """Tell whether the rest is an ending; a doubled letter before it counts with it (stopp-ed)."""
    return rest in ENDINGS or (rest[:1] == last and rest[1:] in ENDINGS)
