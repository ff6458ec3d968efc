"""Texts that a spreadsheet program would take for a formula, guarded on the way out and in.

A guarded text has one apostrophe more in front, so that it is shown and never worked out (OWASP
ASVS 5.0, 1.2.10; recalled). Taking one away again loses nothing: a text that has apostrophes of
its own before such a sign gets one more on the way out.
"""

from __future__ import annotations

import re

_LIKE_A_FORMULA = re.compile(r"'*[=+\-@\t\r]")
_GUARDED = re.compile(r"'+[=+\-@\t\r]")


def guarded(text: str) -> str:
    """Return the text as it is written into a cell."""
    return f"'{text}" if _LIKE_A_FORMULA.match(text) else text


def unguarded(cell: str) -> str:
    """Return the text that a cell stands for; the reverse of `guarded`."""
    return cell[1:] if cell[:1] == "'" and _GUARDED.match(cell) else cell
