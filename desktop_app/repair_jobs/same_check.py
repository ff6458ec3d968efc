"""Checks of a system and of part kinds that ask for the same in other words: each asked once."""

from __future__ import annotations

from collections.abc import Collection, Iterable

# As they are kept: what a part kind asks for, and the words in which it is asked for already.
_IN_OTHER_WORDS = {
    "Cold start and fifteen minutes at idle with the misfire counters at zero.": (
        "misfire counters at zero for 15 min from cold"
    ),
    "A drive under the conditions of the concern, without a pending code.": (
        "A drive under the conditions of the concern, without a pending code after it."
    ),
    "No play, wheel speeds alike.": "no play, four wheel speeds alike",
}
# What asks for less than another: whoever does that one does it too, but not the other way round.
_ASKED_WITHIN = {
    "Cold start and idle, misfire counters at zero.": (
        "misfire counters at zero for 15 min from cold"
    ),
    "Ten hot restarts.": "10 hot restarts after 5 to 30 min each",
}


def same_check(words: str) -> str:
    """Return the one wording of a check, as it is kept."""
    return _IN_OTHER_WORDS.get(words, words)


def wordings(words: str) -> tuple[str, ...]:
    """Return all wordings of a check."""
    one = same_check(words)
    return (one, *(other for other, same in _IN_OTHER_WORDS.items() if same == one))


def each_once(checks: Iterable[str], answered: Collection[str] = ()) -> tuple[str, ...]:
    """Return the checks without those that stand among them already, in whatever words.

    One that asks for less than another stays where it was answered by itself.
    """
    listed = tuple(checks)
    asked = {same_check(words) for words in listed}
    first: dict[str, str] = {}
    for words in listed:
        if words in answered or _ASKED_WITHIN.get(words) not in asked:
            first.setdefault(same_check(words), words)
    return tuple(first.values())
