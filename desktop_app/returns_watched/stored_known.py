"""What odometers say of some jobs of the record since these left."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.many_visits.last_known import LastKnown, last_known
from desktop_app.returns_watched.many_visits.visit_columns import Places
from desktop_app.returns_watched.stored_moments import Days
from desktop_app.returns_watched.stored_places import read_places
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicle_codes import read_vehicle_codes
from desktop_app.returns_watched.stored_vehicles import rows_of_one
from desktop_app.returns_watched.stored_visit_rows import read_hand_overs

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


def read_known(
    connection: Connection, vehicle_ids: Collection[int], job_ids: Ids, until: date
) -> LastKnown:
    """Read what is known since some handed-over jobs (n,) of these vehicles left."""
    rows = rows_of_one(connection, vehicle_ids)
    vehicles = read_vehicle_codes(connection, rows, until)
    days = Days()
    visits, left = read_hand_overs(connection, rows, until, vehicles, days)
    found = read_places(connection, rows, until, vehicles, visits, left, days.ranks(), True)
    assert found.taken is not None
    at, _ = places_among(left.ids, job_ids)
    left_with = Places(found.left_with.leg[at], found.left_with.miles[at])
    return last_known(found.taken, visits.vehicle[left.visit[at]], left.left.day[at], left_with)
