"""Where the odometers of many jobs stood when they came and when they were handed over."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReplaced
from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.many_visits.running_places import (
    READ,
    ReadingColumns,
    running_places,
)
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, NO_LEG, Places
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.returns_watched.stored_visit_rows import (
    NOT_READ,
    JobRows,
    VisitRows,
)
from desktop_app.shop_record.kept_value import kept_day

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


def read_places(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
    visits: VisitRows,
    jobs: JobRows,
    ranks: NDArray[np.int32],
) -> tuple[Places, Places]:
    """Return by job where the vehicle stood when it came, and when the job was handed over.

    `ranks` puts the times of the moments in order. Where nobody read it at the hand-over, the
    reading of the visit's beginning stands for it; an odd one is never replaced by another.
    """
    import numpy as np

    changes = _replaced(connection, vehicle_ids, until, vehicles)
    # Of several readings at one moment the one at the door is the first.
    every, read = np.arange(len(visits.ids)), np.full(1, READ, dtype=np.int8)
    taken = (
        (every, visits.came, visits.odometer_in, visits.source),
        (jobs.visit, jobs.left, jobs.odometer_out, np.broadcast_to(read, jobs.visit.shape)),
        (every, visits.left, visits.odometer_out, np.broadcast_to(read, every.shape)),
    )
    rows = [np.flatnonzero((seen != NOT_READ) & (at.day != NO_DAY)) for _, at, seen, _ in taken]
    each = [(row, *one) for row, one in zip(rows, taken, strict=True)]
    visit_rows = np.concatenate([of[row] for row, of, *_ in each])
    readings = ReadingColumns(
        visits.vehicle[visit_rows],
        np.concatenate([at.day[row] for row, _, at, *_ in each]),
        ranks[np.concatenate([at.time[row] for row, _, at, *_ in each])],
        np.concatenate([seen[row] for row, _, _, seen, _ in each]),
        visits.in_km[visit_rows],
        np.concatenate([source[row] for row, *_, source in each]),
    )
    del visit_rows
    found = running_places(readings, changes)
    starts = np.cumsum([0, *map(len, rows)])
    came, left, gone = (
        _laid_out(found, int(start), row, len(of))
        for start, (row, of, *_) in zip(starts[:-1], each, strict=True)
    )
    own, visit = jobs.odometer_out != NOT_READ, visits.odometer_out[jobs.visit] != NOT_READ
    arrived = Places(came.leg[jobs.visit], came.miles[jobs.visit])
    return arrived, Places(
        np.where(own, left.leg, np.where(visit, gone.leg[jobs.visit], arrived.leg)),
        np.where(own, left.miles, np.where(visit, gone.miles[jobs.visit], arrived.miles)),
    )


def _laid_out(found: Places, start: int, rows: Ids, many: int) -> Places:
    import numpy as np

    leg, miles = np.full(many, NO_LEG, dtype=np.int32), np.full(many, np.nan)
    leg[rows] = found.leg[start : start + len(rows)]
    miles[rows] = found.miles[start : start + len(rows)]
    return Places(leg, miles)


def _replaced(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
) -> dict[int, list[OdometerReplaced]]:
    """Read by a vehicle's number when its odometers were replaced."""
    import numpy as np

    wanted = select(
        VehicleEvent.vehicle_id,
        VehicleEvent.happened_on,
        VehicleEvent.reading_before,
        VehicleEvent.reading_after,
    ).where(VehicleEvent.kind == "odometer replaced")
    found: dict[int, list[OdometerReplaced]] = {}
    for row in each_row(connection, wanted, VehicleEvent.vehicle_id, vehicle_ids):
        on = kept_day(row.happened_on)
        if until is None or on <= until:
            place = int(vehicles.places(np.array(row.vehicle_id)))
            unit: DistanceUnit = "km" if vehicles.in_km[place] else "mi"
            event = OdometerReplaced(on, row.reading_before, row.reading_after, unit)
            found.setdefault(int(vehicles.codes[place]), []).append(event)
    return found
