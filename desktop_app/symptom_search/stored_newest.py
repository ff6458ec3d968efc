"""The newest jobs that match, scored from arrays of their own while the word index is made."""

from __future__ import annotations

from sqlalchemy import Connection

from desktop_app.symptom_search.stored_entries import entries_of
from desktop_app.symptom_search.stored_evidence import newest_candidates
from desktop_app.symptom_search.stored_words import jobs_with_words
from desktop_app.symptom_search.word_index.arrays import Part
from desktop_app.symptom_search.word_index.asked import Asked
from desktop_app.symptom_search.word_index.writing import arrays_of


def newest_part(connection: Connection, asked: Asked, enough: int) -> Part:
    """Return the arrays of the newest jobs for which something that was asked for holds."""
    jobs = newest_candidates(connection, asked)
    jobs |= jobs_with_words(connection, asked.words, enough)
    return Part(arrays_of(entries_of(connection, sorted(jobs))))
