"""What the standard trouble codes mean, in our own words, to be gathered as well."""

from __future__ import annotations

from desktop_app.repair_jobs.trouble_code import code_book


def texts() -> tuple[str, ...]:
    """Return each meaning once, in the order of the codes."""
    return tuple(dict.fromkeys(code_book().meanings.values()))
