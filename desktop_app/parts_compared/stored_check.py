"""What the check of a shop looks at on the bench: values that nothing of ours has written."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.stored import GaugeReading, KeptSum, PhotoReading, Reading
from desktop_app.parts_compared.stored_photo_readings import kept_doubt


def bench_problems(connection: Connection) -> Iterator[str]:
    """Give a sentence for each reading that is no number, each sum and doubt that is unreadable."""
    for table, says in (
        (Reading, tr("The reading {id} is no number.")),
        (GaugeReading, tr("The gauge reading {id} is no number.")),
    ):
        asked = select(table.id, table.value).where(table.value.is_not(None)).order_by(table.id)
        for row in connection.execute(asked):
            if not math.isfinite(row.value):
                yield says.format(id=row.id)
    for kept in connection.execute(select(KeptSum.id, KeptSum.inputs).order_by(KeptSum.id)):
        try:
            json.loads(kept.inputs)
        except ValueError:
            yield tr("What was put into the bench sum {id} can't be read.", id=kept.id)
    doubts = select(PhotoReading.reading_id, PhotoReading.doubt).order_by(PhotoReading.id)
    for marked in connection.execute(doubts):
        if kept_doubt(marked.doubt) is None:
            yield tr(
                "The uncertainty of the reading {reading_id} from a photo can't be read.",
                reading_id=marked.reading_id,
            )
