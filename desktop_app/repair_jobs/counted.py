"""Which jobs count for a rate: repairs in which something was found and put right."""

from __future__ import annotations

# All that is blank at the ends of a text, as `str.strip` takes it, for asking the record itself.
BLANKS = (
    "\t\n\x0b\x0c\r\x1c\x1d\x1e\x1f \x85\xa0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006"
    "\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000"
)


def is_counted(
    cause_found: bool | int | None, cause: str, correction: str, work: str | None
) -> bool:
    """Tell whether a job handed over counts: a cause, a correction, and not said "not caught".

    `work` is None for a repair; an inspection or maintenance is not counted, whatever is written.
    """
    put_right = bool(cause.strip() and correction.strip())
    return work is None and put_right and (cause_found is None or bool(cause_found))
