"""What the kinds of a job's fitted parts ask for as proof, beside what its system asks for."""

from __future__ import annotations

from collections.abc import Mapping

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair


def proof_asked_by_parts(
    connection: Connection, job_id: int, kinds: Mapping[str, PartKind]
) -> tuple[str, ...]:
    """Return each proof check of the job's fitted parts as it is kept, each once."""
    rows = connection.execute(
        select(Pair.part_kind).where(Pair.job_id == job_id, Pair.fitted == 1).order_by(Pair.id)
    )
    fitted = [kinds[name] for name in rows.scalars() if name in kinds]
    return tuple(dict.fromkeys(check.say for kind in fitted for check in kind.proof))
