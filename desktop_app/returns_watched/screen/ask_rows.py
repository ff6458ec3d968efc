"""Whom to ask, as rows of a table."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.returns_watched.ask_list import ToAsk

HEADERS = (tr("Job"), tr("Vehicle"), tr("Customer"), tr("Phone"), tr("Why"))
WIDTHS = (72, 150, 140, 130, 100)


def ask_words(ask: ToAsk) -> Sequence[str]:
    """Return one whom to ask, in words under HEADERS."""
    return (
        ask.job.job,
        ask.job.vehicle,
        ask.beside.customer or tr("no name written down"),
        ask.phone,
        " ".join(part for part in (ask.tried, ask.why) if part),
    )
