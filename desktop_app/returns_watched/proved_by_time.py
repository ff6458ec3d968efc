"""The proof that nobody records: the car was seen fine after its window."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.returns_watched.standing import Standing


def proved_by_time(standing: str) -> ProofLevel | None:
    """Return the level of a job that stands there, by the word of its standing; None for others.

    It comes by itself and does not stand in for what was proved before the car left.
    """
    return ProofLevel.TIME if standing == Standing.SEEN_FINE else None


def said_by_time(standing: str) -> str:
    """Say what the level means; nothing where time has proved nothing."""
    level = proved_by_time(standing)
    if level is None:
        return ""
    return tr(
        "Proof {level}, {word}: {means} It does not stand in for what was proved before "
        "the car left.",
        level=int(level),
        word=level.word,
        means=level.means[0].lower() + level.means[1:],
    )
