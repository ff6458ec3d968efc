"""Where the odometers of many jobs stood when they came and when they were handed over."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer import OdometerReplaced
from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.many_visits.last_known import Taken
from desktop_app.returns_watched.many_visits.running_places import (
    READ,
    ReadingColumns,
    in_order,
    running_places,
)
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, NO_LEG, Places
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.returns_watched.stored_visit_rows import (
    NOT_READ,
    HandOvers,
    VisitRows,
)
from desktop_app.shop_record.kept_value import kept_day

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Replaced: TypeAlias = Mapping[int, Sequence[OdometerReplaced]]


@dataclass(frozen=True, slots=True)
class FoundPlaces:
    """By job where its vehicle stood when it came and when it was handed over.

    `taken` are all readings as they were taken, where they were asked for; `replaced` says by a
    vehicle's number when its odometers were.
    """

    came_with: Places
    left_with: Places
    taken: Taken | None
    replaced: Replaced


def read_places(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
    visits: VisitRows,
    jobs: HandOvers,
    ranks: NDArray[np.int32],
    keep_readings: bool = False,
) -> FoundPlaces:
    """Put all readings of the visits and jobs on their vehicles' running scales.

    `ranks` puts the times of the moments in order. Where nobody read it at the hand-over, the
    reading of the visit's beginning stands for it; an odd one is never replaced by another.
    """
    import numpy as np

    changes = _replaced(connection, vehicle_ids, until, vehicles)
    readings, rows = _readings(visits, jobs, ranks)
    order = in_order(readings)
    found = running_places(readings, order, changes)
    taken = None
    if keep_readings:
        placed = Places(found.leg[order], found.miles[order])
        taken = Taken(readings.only(order), placed, _stood_until(visits, jobs, rows)[order])
    del readings, order
    first, second = len(rows[0]), len(rows[0]) + len(rows[1])
    came = _laid_out(found, slice(0, first), rows[0], len(visits.ids))
    arrived = Places(came.leg[jobs.visit], came.miles[jobs.visit])
    went = Places(arrived.leg.copy(), arrived.miles.copy())
    if len(rows[2]):
        gone = _laid_out(found, slice(second, None), rows[2], len(visits.ids))
        read = np.flatnonzero(visits.odometer_out[jobs.visit] != NOT_READ)
        went.leg[read], went.miles[read] = (
            column[jobs.visit[read]] for column in (gone.leg, gone.miles)
        )
    read = jobs.odometer_out != NOT_READ
    went.leg[read], went.miles[read] = NO_LEG, np.nan
    went.leg[rows[1]], went.miles[rows[1]] = found.leg[first:second], found.miles[first:second]
    return FoundPlaces(arrived, went, taken, changes)


def _readings(
    visits: VisitRows, jobs: HandOvers, ranks: NDArray[np.int32]
) -> tuple[ReadingColumns, list[NDArray[np.int32]]]:
    """Return all readings, and the rows that gave them: visits coming, jobs and visits leaving.

    Of several readings at one moment the one at the door is the first.
    """
    import numpy as np

    every = np.arange(len(visits.ids), dtype=np.int32)
    read = np.full(1, READ, dtype=np.int8)
    taken = (
        (every, visits.came, visits.odometer_in, visits.source),
        (jobs.visit, jobs.left, jobs.odometer_out, np.broadcast_to(read, jobs.visit.shape)),
        (every, visits.left, visits.odometer_out, np.broadcast_to(read, every.shape)),
    )
    rows = [
        np.flatnonzero((seen != NOT_READ) & (at.day != NO_DAY)).astype(np.int32)
        for _, at, seen, _ in taken
    ]
    each = [(row, *one) for row, one in zip(rows, taken, strict=True)]
    of_visit = np.concatenate([of[row] for row, of, *_ in each])
    return (
        ReadingColumns(
            visits.vehicle[of_visit],
            np.concatenate([at.day[row] for row, _, at, *_ in each]),
            ranks[np.concatenate([at.time[row] for row, _, at, *_ in each])],
            np.concatenate([seen[row] for row, _, _, seen, _ in each]),
            visits.in_km[of_visit],
            np.concatenate([source[row] for row, *_, source in each]),
        ),
        rows,
    )


def _stood_until(
    visits: VisitRows, jobs: HandOvers, rows: Sequence[NDArray[np.int32]]
) -> NDArray[np.int32]:
    """Return for each reading when its visit ended: with the last of its hand-overs."""
    import numpy as np

    ended = np.full(len(visits.ids), NO_DAY, dtype=np.int32)
    np.maximum.at(ended, jobs.visit, jobs.left.day)
    ended = np.maximum(ended, visits.left.day)
    came, left, gone = rows
    of_reading: NDArray[np.int32] = ended[np.concatenate([came, jobs.visit[left], gone])]
    return of_reading


def _laid_out(found: Places, part: slice, rows: NDArray[np.int32], many: int) -> Places:
    import numpy as np

    leg, miles = np.full(many, NO_LEG, dtype=np.int32), np.full(many, np.nan)
    leg[rows], miles[rows] = found.leg[part], found.miles[part]
    return Places(leg, miles)


def _replaced(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
) -> Replaced:
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
