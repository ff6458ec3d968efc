"""One number for each vehicle of a shop, equal for the rows that mean one vehicle."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.stored import Vehicle, Visit
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.stored_vehicles import each_block, each_row, read_vehicles
from desktop_app.shop_record.kept_value import kept_day

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class VehicleCodes:
    """The rows of vehicles by id, rising; their numbers, and which count in kilometres."""

    ids: Ids
    codes: NDArray[np.int32]
    in_km: NDArray[np.bool_]

    def places(self, vehicle_ids: Ids) -> Ids:
        """Return where the rows with these ids stand here."""
        import numpy as np

        return np.searchsorted(self.ids, vehicle_ids)

    def rows_of(self, vehicle_ids: Ids) -> Ids:
        """Return these rows and all others that mean the same vehicles."""
        import numpy as np

        return self.ids[np.isin(self.codes, self.codes[self.places(vehicle_ids)])]


def read_vehicle_codes(
    connection: Connection, vehicle_ids: Collection[int] | None, until: date | None
) -> VehicleCodes:
    """Read the vehicles and number them; the rules of identity see only rows that share a name."""
    import numpy as np

    wanted = select(Vehicle.id, Vehicle.odometer_unit)
    found = GrowingColumns("qb")
    for ids, units in each_block(connection, wanted, Vehicle.id, vehicle_ids):
        found.add(ids, [unit == "km" for unit in units])
    rows, in_km = found.joined_by_first()
    codes = np.arange(len(rows), dtype=np.int32)
    shared = _sharing_a_name(connection)
    shared = shared if vehicle_ids is None else shared & set(vehicle_ids)
    if shared:
        met: dict[str, int] = {}
        for row_id, key in sorted(_keys(connection, shared, until).items()):
            place = int(np.searchsorted(rows, row_id))
            codes[place] = codes[met.setdefault(key, place)]
    return VehicleCodes(rows, codes, in_km != 0)


def _sharing_a_name(connection: Connection) -> set[int]:
    """Return the rows that have a VIN or a plate which another row has too."""
    found: set[int] = set()
    for name in (Vehicle.vin, Vehicle.plate_key):
        often = select(name).where(name != "").group_by(name).having(func.count() > 1)
        found |= set(connection.execute(select(Vehicle.id).where(name.in_(often))).scalars())
    return found


def _keys(
    connection: Connection, vehicle_ids: Collection[int], until: date | None
) -> dict[int, str]:
    came = select(Visit.vehicle_id, Visit.came_at, Visit.id)
    rows = each_row(connection, came, Visit.vehicle_id, vehicle_ids)
    kept = (row for row in rows if until is None or kept_day(row.came_at) <= until)
    visits = sorted(kept, key=lambda row: (row.came_at, row.id))
    vehicles = read_vehicles(connection, vehicle_ids, visits)
    return {row_id: vehicle.key for row_id, vehicle in vehicles.items()}
