"""The signs of the program: shapes with words that read in black and white."""

from __future__ import annotations

STANDING_SIGNS = {
    "heard": "…",
    "on the bench": "▤",
    "back on": "⚙",
    "under watch": "◔",
    "seen fine": "◉",
    "nothing heard": "○",
    "lost sight": "◌",
    "came back": "↩",
    "came back, not ours": "↪",
    "came back, cannot tell": "⁇",
    "came back after the window": "⇥",
}


def signed(signs: dict[str, str], word: str) -> str:
    """Return the sign and the word; the word alone where it has no sign."""
    sign = signs.get(word)
    return f"{sign}  {word}" if sign else word
