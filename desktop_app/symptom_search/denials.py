"""Denials: how far "no", "doesn't" or "never" reach in a clause, and what is told to be over."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from desktop_app.symptom_search.told_words import stem

DENIALS = frozenset(map(stem, ("no", "not", "never", "doesnt", "dont", "didnt", "wont", "without")))
# "Not sure" or "don't know why" denies nothing, nor does "not only".
_NO_DENIALS = frozenset(map(stem, ("know", "sure", "care", "mind", "idea", "only", "always")))
_CURED = frozenset(map(stem, ("gone", "cured", "fixed")))
_AFTER_CURED = frozenset(map(stem, ("now", "but", "since", "after", "completely", "today")))
BARRIERS = frozenset(("but", "though", "although", "however", "instead"))
_REACH = 3
_FAR = 120  # letters from a denial to its "and"; beyond that nobody means the two together

# What is told after a denial and an "and", "just" or "only" is told for itself.
_DENYING = r"(?:no|not|never|without|cannot|\w+n['’]?t)"
_TURN = re.compile(
    rf"(\b{_DENYING}\s+(?!and\b|just\b|only\b)\w+[^.;:!?,\n()]{{0,{_FAR}}}?\s)"
    r"(?:and|just|only)(?=\s)",
    re.I,
)
# "Stopped misfiring" and "used to misfire" are "not misfiring".
_OVER = re.compile(r"\b(?:(?:has |have )?(?:stopped|quit)(?= \w+ing\b)|used to(?= \w))", re.I)
# "The radio goes off and it dies": what follows is told of the car again.
_AND_IT = re.compile(r"\b(?<!now )(?:and|then) (?:then|it|she|the car)\b", re.I)
# "Not just stalling" denies nothing.
_NOT_JUST = re.compile(rf"\b{_DENYING}\s+just\b", re.I)


def denials_plain(text: str) -> str:
    """Return the text with the turns of speech that end or make a denial put plainly."""
    plain = _TURN.sub(r"\1but", _OVER.sub("not", _NOT_JUST.sub("", text)))
    return _AND_IT.sub("but", plain)


def denied_places(clause: Sequence[str], own: Collection[int]) -> frozenset[int]:
    """Return the places that denials reach; those at `own` places belong to a phrase."""
    denied: set[int] = set()
    for place, word in enumerate(clause):
        if word not in DENIALS or place in own:
            continue
        if place + 1 < len(clause) and clause[place + 1] in _NO_DENIALS:
            continue
        for after in range(place + 1, min(place + 1 + _REACH, len(clause))):
            if clause[after] in BARRIERS:
                break
            denied.add(after)
    return frozenset(denied)


def is_cured(clause: Sequence[str], last: int) -> bool:
    """Tell whether what ends at a place is told to be over: "misfire gone", not "gone flat"."""
    told = clause[last + 1 : last + 3]
    return bool(told) and told[0] in _CURED and (len(told) == 1 or told[1] in _AFTER_CURED)
