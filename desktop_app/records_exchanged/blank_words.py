"""What people write into a cell to say that there is nothing to say."""

from __future__ import annotations

import re

_BLANK = frozenset({"", "-", "--", "–", "—", "n/a", "na", "none", "nil", "null", ".", "no"})
# Written where a name has to be; the division is our own, from everyday words.
_UNKNOWN = frozenset(
    {
        *("unknown", "not known", "unk", "unidentified", "not recorded", "not given", "not stated"),
        *("not available", "not applicable", "n.a", "tbc", "tba", "tbd", "to be confirmed"),
        *("missing", "blank", "empty", "undefined", "unbekannt", "inconnu", "desconocido"),
        *("desconhecido", "sconosciuto", "onbekend"),
    }
)
_NO_CAR = frozenset(
    {
        *("no plate", "no plates", "no reg", "no registration", "no number", "no vin", "noplate"),
        *("noreg", "novin", "no tag", "unregistered", "not registered", "not readable"),
        *("illegible", "unreadable", "various", "test", "dummy"),
    }
)
_FIGURE = re.compile("[1-9]")  # in nearly all VINs and plates, and in none of these words
_PEOPLE_TOO = frozenset({"na", "no", "nil"})  # names of people as well


def says_nothing(text: str) -> bool:
    """Whether a cell of dates, numbers or codes (already stripped) is as good as empty."""
    return text.casefold() in _BLANK


def is_no_day(text: str) -> bool:
    """Whether a stripped cell of dates is empty; 0000-00-00 is what some programs write for it."""
    return says_nothing(text) or not text.strip("0-/.: T")


def names_nobody(text: str) -> bool:
    """Whether a stripped cell of a person or a firm names none: "n/a", "unknown", "???"."""
    word = _word(text)
    return (word in _BLANK or word in _UNKNOWN or _has_no_letter(word)) and word not in _PEOPLE_TOO


def names_no_car(text: str) -> bool:
    """Whether a stripped cell of a VIN or a plate names none, so that it joins no two cars.

    One sign over and over is none either, where it is a nought or an X.
    """
    if _FIGURE.search(text):
        return False
    word = _word(text)
    return (
        word in _BLANK
        or word in _UNKNOWN
        or word in _NO_CAR
        or _has_no_letter(word)
        or not word.strip("0 -")
        or not word.strip("x -")
    )


def _word(text: str) -> str:
    return " ".join(text.casefold().rstrip(".").split())


def _has_no_letter(word: str) -> bool:
    return not any(sign.isalnum() for sign in word)
