"""How much there is of what a shop keeps, in words: one of them, or many."""

from __future__ import annotations

from desktop_app.language import tr


def photos_counted(photos: int) -> str:
    """Return "1 photo" or "12 photos"."""
    return tr("1 photo") if photos == 1 else tr("{photos:,} photos", photos=photos)


def jobs_counted(jobs: int) -> str:
    """Return "1 job" or "12 jobs"."""
    return tr("1 job") if jobs == 1 else tr("{jobs:,} jobs", jobs=jobs)


def entries_counted(entries: int) -> str:
    """Return "1 entry of the history" or "12 entries of the history"."""
    if entries == 1:
        return tr("1 entry of the history")
    return tr("{entries:,} entries of the history", entries=entries)


def rows_counted(rows: int) -> str:
    """Return "1 row" or "12 rows"."""
    return tr("1 row") if rows == 1 else tr("{rows:,} rows", rows=rows)
