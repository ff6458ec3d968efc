"""Reading the shop's own phrases; their table stands with the jobs' (repair_jobs/stored.py)."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import OwnPhrase


def read_phrases(connection: Connection) -> dict[str, str]:
    """Return the symptom group that each of the shop's own phrases means."""
    rows = connection.execute(select(OwnPhrase.phrase, OwnPhrase.symptom).order_by(OwnPhrase.id))
    return {row.phrase: row.symptom for row in rows}
