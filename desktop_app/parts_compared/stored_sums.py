"""Reading the bench sums that are kept with a job."""

from __future__ import annotations

import json

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import SumKept
from desktop_app.parts_compared.stored import KeptSum
from desktop_app.parts_compared.stored_sets import SET_SUM
from desktop_app.shop_record.kept_value import damaged


def sums_of_job(connection: Connection, job_id: int) -> tuple[SumKept, ...]:
    """Return a job's sums, oldest first."""
    rows = connection.execute(
        select(KeptSum.__table__)
        .where(KeptSum.job_id == job_id, KeptSum.sum.not_like(f"{SET_SUM}%"))
        .order_by(KeptSum.id)
    )
    return tuple(SumKept(r.id, r.sum, *_said(r.inputs, r.sentence), bool(r.on_sheet)) for r in rows)


def _said(kept: str, sentence: str) -> tuple[str, str, str, tuple[tuple[str, str], ...]]:
    try:
        said = json.loads(kept)
        inputs = tuple((str(label), str(text)) for label, text in said["inputs"])
        return str(said["name"]), sentence, str(said["limit"]), inputs
    except (ValueError, TypeError, KeyError) as error:
        raise damaged(kept, tr("the inputs of a bench sum")) from error
