"""When cars went out of sight: gone, as told, or sold where a sale ends the window."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.customer_answers import gone_since
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored_columns import RecordColumns
from desktop_app.returns_watched.stored_customers_asked import read_answers

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]


def gone_days(connection: Connection, columns: RecordColumns, places: Ids, until: date) -> Whole:
    """Return for some jobs the day from which the car is gone, NO_DAY where it is in sight.

    It is in sight again where it came later, for whatever job.
    """
    import numpy as np

    gone = np.full(len(places), NO_DAY, dtype=np.int32)
    answers = read_answers(connection, columns.job_ids[places].tolist())
    if answers:
        last = last_opened(columns)
        for row, place in enumerate(places.tolist()):
            said = answers.get(int(columns.job_ids[place]), ())
            seen_on = date.fromordinal(int(last[columns.jobs.vehicle[place]]))
            day = gone_since([one for one in said if one.on <= until], seen_on)
            gone[row] = NO_DAY if day is None else day.toordinal()
    return gone


def lost_days(connection: Connection, columns: RecordColumns, places: Ids, until: date) -> Whole:
    """Return for some jobs the first day from which nobody can say: gone, or sold the day before.

    NO_DAY without one. Only a sale that ends the window counts.
    """
    import numpy as np

    gone, sold = gone_days(connection, columns, places, until), columns.jobs.sold[places]
    sold = np.where(sold == NO_DAY, NO_DAY, sold + 1)  # on the day of the sale it is seen
    both = np.minimum(gone, sold)
    return np.where(both == NO_DAY, np.maximum(gone, sold), both).astype(np.int32)


def last_opened(columns: RecordColumns) -> Whole:
    """Return by vehicle the day on which its last job was opened, NO_DAY where it has none."""
    return last_days(columns.jobs.vehicle, columns.jobs.opened)


def last_days(vehicle: Whole, day: Whole, many: int = 0) -> Whole:
    """Return by vehicle the last of its days, NO_DAY where it has none; for `many` at least."""
    import numpy as np

    last = np.full(max(many, int(vehicle.max(initial=-1)) + 1), NO_DAY, dtype=np.int32)
    np.maximum.at(last, vehicle, day)
    return last
