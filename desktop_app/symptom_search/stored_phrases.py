"""Reading the shop's own phrases; their table stands with the jobs' (repair_jobs/stored.py)."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import OwnPhrase
from desktop_app.symptom_search.own_phrases import PhraseKept

_PHRASES = select(OwnPhrase.id, OwnPhrase.phrase, OwnPhrase.symptom).order_by(OwnPhrase.id)


def read_phrases(connection: Connection) -> tuple[PhraseKept, ...]:
    """Return the shop's own phrases in the order in which they were kept."""
    return tuple(PhraseKept(*row) for row in connection.execute(_PHRASES))


def read_phrase(connection: Connection, phrase_id: int) -> PhraseKept | None:
    """Return one of the shop's phrases; None where it is gone."""
    row = connection.execute(_PHRASES.where(OwnPhrase.id == phrase_id)).first()
    return None if row is None else PhraseKept(*row)
