"""One number for each vehicle of a shop, equal for the rows that mean one vehicle."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Vehicle, Visit
from desktop_app.returns_watched.stored_vehicles import each_row, read_vehicles
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


def read_vehicle_codes(
    connection: Connection, vehicle_ids: Collection[int] | None, until: date | None
) -> VehicleCodes:
    """Read the vehicles and number them; the rules of identity see only rows that share a name."""
    import numpy as np

    wanted = select(Vehicle.id, Vehicle.vin, Vehicle.plate_key, Vehicle.odometer_unit)
    by_name: dict[tuple[str, str], int] = {}
    shared: set[int] = set()
    ids, in_km = [], []
    for row in each_row(connection, wanted, Vehicle.id, vehicle_ids):
        ids.append(row.id)
        in_km.append(row.odometer_unit == "km")
        for name in (("vin", row.vin), ("plate", row.plate_key)):
            if name[1]:
                first = by_name.setdefault(name, row.id)
                if first != row.id:
                    shared |= {first, row.id}
    order = np.argsort(np.array(ids, dtype=np.int64))
    rows = np.array(ids, dtype=np.int64)[order]
    codes = np.arange(len(rows), dtype=np.int32)
    if shared:
        met: dict[str, int] = {}
        for row_id, key in sorted(_keys(connection, shared, until).items()):
            place = int(np.searchsorted(rows, row_id))
            codes[place] = codes[met.setdefault(key, place)]
    return VehicleCodes(rows, codes, np.array(in_km, dtype=np.bool_)[order])


def _keys(
    connection: Connection, vehicle_ids: Collection[int], until: date | None
) -> dict[int, str]:
    came = select(Visit.vehicle_id, Visit.came_at, Visit.id)
    rows = each_row(connection, came, Visit.vehicle_id, vehicle_ids)
    kept = (row for row in rows if until is None or kept_day(row.came_at) <= until)
    visits = sorted(kept, key=lambda row: (row.came_at, row.id))
    vehicles = read_vehicles(connection, vehicle_ids, visits)
    return {row_id: vehicle.key for row_id, vehicle in vehicles.items()}
