"""The odometers of some vehicles, read for jobs that stand in columns."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.many_visits.last_known import Taken
from desktop_app.returns_watched.many_visits.visit_columns import NO_LEG, Places
from desktop_app.returns_watched.stored_columns import RecordColumns
from desktop_app.returns_watched.stored_moments import Days
from desktop_app.returns_watched.stored_places import Replaced, read_places
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_visit_rows import read_hand_overs

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Marks: TypeAlias = NDArray[np.bool_]

_PART_BY_INDEX = 12  # beyond a twelfth of the vehicles it is quicker to read all visits through


@dataclass(frozen=True, slots=True)
class WithOdometers:
    """Jobs whose places are known where they were asked for, and all readings of those vehicles."""

    columns: RecordColumns
    taken: Taken
    replaced: Replaced


def with_odometers(
    connection: Connection,
    columns: RecordColumns,
    asked: Marks,
    vehicles: VehicleCodes,
    until: date,
) -> WithOdometers:
    """Read what the odometers of the jobs' vehicles said, of those jobs (n,) that are asked for."""
    import numpy as np

    jobs = columns.jobs
    among = np.zeros(len(vehicles.codes) + 1, dtype=bool)
    among[jobs.vehicle[asked]] = True
    rows = vehicles.ids[among[vehicles.codes]].tolist()
    days = Days()
    by_index = len(rows) * _PART_BY_INDEX < len(vehicles.ids)
    visits, left = read_hand_overs(connection, rows, until, vehicles, days, by_index=by_index)
    found = read_places(connection, rows, until, vehicles, visits, left, days.ranks(), True)
    assert found.taken is not None
    at, known = places_among(columns.job_ids, left.ids)
    came_with, left_with = (
        _laid(one, at[known], known, jobs.jobs) for one in (found.came_with, found.left_with)
    )
    told = replace(jobs, came_with=came_with, left_with=left_with)
    return WithOdometers(RecordColumns(columns.job_ids, told), found.taken, found.replaced)


def _laid(found: Places, at: NDArray[np.int64], known: Marks, many: int) -> Places:
    import numpy as np

    leg, miles = np.full(many, NO_LEG, dtype=np.int32), np.full(many, np.nan)
    leg[at], miles[at] = found.leg[known], found.miles[known]
    return Places(leg, miles)
