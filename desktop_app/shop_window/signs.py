"""A sign with its word: a shape that reads in black and white; each room has its own table."""

from __future__ import annotations

from desktop_app.language import tr


def signed(signs: dict[str, str], word: str) -> str:
    """Return the sign and the word; the word alone where it has no sign."""
    sign = signs.get(word)
    return f"{sign}  {tr(word)}" if sign else tr(word)
