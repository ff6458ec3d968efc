"""Text as every database can keep it: without the letters that are none."""

from __future__ import annotations

from typing import TypeVar

V = TypeVar("V")


def plain_text(value: V) -> V:
    """Return a text without NUL and without halves of letters; anything else as it is.

    A NUL ends a text for one database and is refused by another; half a surrogate pair, which a
    paste can bring, can't be written in UTF-8 at all and becomes a question mark.
    """
    if not isinstance(value, str):
        return value
    text = value.replace("\x00", "") if "\x00" in value else value
    if not text.isascii():
        text = text.encode("utf-8", "replace").decode("utf-8")
    return text  # type: ignore[return-value]
