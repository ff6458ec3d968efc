"""What was done, in words, where nothing but parts was replaced."""

from __future__ import annotations

from collections.abc import Iterable


def replaced_words(parts: Iterable[tuple[str, str]]) -> str:
    """Return what to offer as the correction for parts (name, position); "" where there are none.

    >>> replaced_words((("distributor cap", ""), ("spark plug", "cylinder 3")))
    'Distributor cap and spark plug (cylinder 3) replaced'
    """
    each = list(dict.fromkeys(f"{name} ({where})" if where else name for name, where in parts))
    if not each:
        return ""
    *first, last = each
    words = f"{', '.join(first)} and {last}" if first else last
    return f"{words[:1].upper()}{words[1:]} replaced"
