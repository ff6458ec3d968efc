"""What to look after when the parts of a job go back on, by the kinds of its pairs."""

from __future__ import annotations

from collections.abc import Mapping

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.refit_points import refit_points
from desktop_app.parts_compared.stored import Pair


def refit_checks_for(
    connection: Connection, job_id: int, kinds: Mapping[str, PartKind]
) -> tuple[tuple[str, bool], ...]:
    """Return (words, hurts) of each refit check of the job's fitted parts, each said once."""
    rows = connection.execute(
        select(Pair.part_kind).where(Pair.job_id == job_id, Pair.fitted == 1).order_by(Pair.id)
    )
    return refit_points(kinds[name] for name in rows.scalars() if name in kinds)
