"""What was done, in words, where nothing but parts was replaced."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.language import tr


def replaced_words(parts: Iterable[tuple[str, str]]) -> str:
    """Return what to offer as the correction for parts (name, position); "" where there are none.

    >>> replaced_words((("distributor cap", ""), ("spark plug", "cylinder 3")))
    'Distributor cap and spark plug (cylinder 3) replaced'
    """
    each = list(dict.fromkeys(f"{name} ({where})" if where else name for name, where in parts))
    if not each:
        return ""
    *first, last = each
    words = tr("{first} and {last}", first=", ".join(first), last=last) if first else last
    return tr("{parts} replaced", parts=words[:1].upper() + words[1:])
