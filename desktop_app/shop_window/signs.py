"""The signs of the program: shapes with words that read in black and white."""

from __future__ import annotations

# One sign for each verdict on a dimension; the words always stand beside it.
DIMENSION_SIGNS = {
    "same": "=",
    "restored": "↥",
    "differs": "≠",
    "not restored": "↧",
    "worse than the old one": "⇓",
    "more than wear explains": "⇈",
    "within limits": "⊢⊣",
    "outside limits": "⊣⊢",
    "count off": "#≠",
    "turned": "↷",
    "too close to tell": "≈",
    "not measured": "◌",
    "explained": "✎",
}

PAIR_SIGNS = {"fits": "▣", "stop and look": "☞", "not enough measured": "◌"}

STANDING_SIGNS = {
    "heard": "…",
    "on the bench": "▤",
    "back on": "⚙",
    "under watch": "◔",
    "seen fine": "◉",
    "nothing heard": "○",
    "lost sight": "◌",
    "came back": "↩",
}

SIDE_SIGNS = {"removed": "◆", "replacement": "●"}


def signed(signs: dict[str, str], word: str) -> str:
    """Return the sign and the word; the word alone where it has no sign."""
    sign = signs.get(word)
    return f"{sign}  {word}" if sign else word
