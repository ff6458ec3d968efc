"""Which jobs count for a rate: something was found and put right."""

from __future__ import annotations


def is_counted(cause_found: bool | int | None, cause: str, correction: str) -> bool:
    """Tell whether a job handed over counts: a cause, a correction, and not said "not caught"."""
    return bool(cause.strip() and correction.strip()) and (cause_found is None or bool(cause_found))
