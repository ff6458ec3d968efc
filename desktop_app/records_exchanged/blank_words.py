"""What people write into a cell to say that there is nothing to say."""

from __future__ import annotations

_BLANK = frozenset({"", "-", "--", "–", "—", "n/a", "na", "none", "nil", "null", ".", "no"})


def says_nothing(text: str) -> bool:
    """Whether a cell of dates, numbers or codes (already stripped) is as good as empty."""
    return text.casefold() in _BLANK


def is_no_day(text: str) -> bool:
    """Whether a stripped cell of dates is empty; 0000-00-00 is what some programs write for it."""
    return says_nothing(text) or not text.strip("0-/.: T")
