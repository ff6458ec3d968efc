"""What to look after when the parts of a job go back on, by the kinds of its pairs."""

from __future__ import annotations

from collections.abc import Mapping

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.kind_names import place_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.refit_points import refit_points
from desktop_app.parts_compared.replaced_words import replaced_words
from desktop_app.parts_compared.stored import Pair


def refit_checks_for(
    connection: Connection, job_id: int, kinds: Mapping[str, PartKind]
) -> tuple[tuple[str, bool], ...]:
    """Return (words, hurts) of each refit check of the job's fitted parts, each said once."""
    rows = connection.execute(
        select(Pair.part_kind).where(Pair.job_id == job_id, Pair.fitted == 1).order_by(Pair.id)
    )
    return refit_points(kinds[name] for name in rows.scalars() if name in kinds)


def replaced_in(connection: Connection, job_id: int, kinds: Mapping[str, PartKind]) -> str:
    """Return in words that the job's fitted parts were replaced; "" where there are none."""
    rows = connection.execute(
        select(Pair.part_kind, Pair.position)
        .where(Pair.job_id == job_id, Pair.fitted == 1)
        .order_by(Pair.id)
    )
    return replaced_words(
        (kinds[kind].name if kind in kinds else kind, place_words(where, kind, kinds))
        for kind, where in rows
    )
