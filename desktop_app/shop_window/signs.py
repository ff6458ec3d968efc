"""A sign with its word: a shape that reads in black and white; each room has its own table."""

from __future__ import annotations

from unicodedata import category

from desktop_app.language import tr

_SHAPE = "So"  # what Unicode calls those that are no letters, figures or signs of sums


def signed(signs: dict[str, str], word: str) -> str:
    """Return the sign and the word; the word alone where it has no sign."""
    sign = signs.get(word)
    return f"{sign}  {tr(word)}" if sign else tr(word)


def unsigned(said: str) -> str:
    """Return what stands after a sign: the sign is for the eye and no part of what is said."""
    sign, gap, words = said.partition("  ")
    return words if gap and len(sign) == 1 and category(sign) == _SHAPE else said
