"""All jobs of the record, or those of some vehicles, read into columns for the rules."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection

from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, VisitColumns
from desktop_app.returns_watched.stored_moments import Days
from desktop_app.returns_watched.stored_places import read_places
from desktop_app.returns_watched.stored_sales import first_sale, read_sales
from desktop_app.returns_watched.stored_same_day import read_same_day
from desktop_app.returns_watched.stored_traits import read_traits
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes, read_vehicle_codes
from desktop_app.returns_watched.stored_vehicles import rows_of_one
from desktop_app.returns_watched.stored_visit_rows import read_job_rows, read_visit_rows

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]


@dataclass(frozen=True, slots=True)
class RecordColumns:
    """Jobs by their rising ids, (n,); each one's place is the same in `jobs`."""

    job_ids: Ids
    jobs: VisitColumns


def read_columns(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    names: Mapping[str, str],
) -> RecordColumns:
    """Read the jobs of some vehicles (and of rows that mean the same ones), or of all.

    They say what `read_facts` says of them: what came after the day `until` is left out, and
    `names` gives symptom groups their plain names.
    """
    import numpy as np

    rows = None if vehicle_ids is None else rows_of_one(connection, vehicle_ids)
    vehicles = read_vehicle_codes(connection, rows, until)
    days = Days()
    visits = read_visit_rows(connection, rows, until, vehicles, days)
    jobs = read_job_rows(connection, rows, until, visits, days)
    places = read_places(connection, rows, until, vehicles, visits, jobs, days.ranks())
    same_day = read_same_day(connection, jobs.ids, jobs.visit, visits.vehicle, visits.came.day)
    vehicle, opened = visits.vehicle[jobs.visit], visits.came.day[jobs.visit]
    del visits
    traits = read_traits(connection, jobs.ids, rows is None, names)
    sold = read_sold(connection, rows, until, vehicles, vehicle, jobs.left.day)
    columns = VisitColumns(
        vehicle=vehicle,
        opened=opened,
        handed_over=jobs.left.day,
        came_with=places.came_with,
        left_with=places.left_with,
        window_days=jobs.window_days,
        window_miles=jobs.window_miles.astype(np.float64),
        ends_both=jobs.ends_both,
        sold=sold,
        says_same=jobs.says_same,
        trait_job=traits[0],
        trait=traits[1],
        same_day=same_day,
    )
    return RecordColumns(jobs.ids, columns)


def read_sold(
    connection: Connection,
    rows: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
    vehicle: Whole,
    handed_over: Whole,
) -> Whole:
    """Return for each job the day of the sale that ends its window, NO_DAY where none does."""
    import numpy as np

    sold = np.full(len(vehicle), NO_DAY, dtype=np.int32)
    days: dict[int, list[date]] = {}
    for vehicle_id, day in read_sales(connection, rows, until):
        code = int(vehicles.codes[vehicles.places(np.array(vehicle_id))])
        days.setdefault(code, []).append(day)
    for place in np.flatnonzero(np.isin(vehicle, list(days))).tolist():
        out = int(handed_over[place])
        left_on = None if out == NO_DAY else date.fromordinal(out)
        sale = first_sale(days[int(vehicle[place])], left_on)
        sold[place] = NO_DAY if sale is None else sale.toordinal()
    return sold
