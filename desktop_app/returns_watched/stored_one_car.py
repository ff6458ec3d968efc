"""Whether two vehicles of the record are one car to whoever looks for returns."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Visit
from desktop_app.returns_watched.stored_vehicles import read_vehicles, rows_of_one


def are_one_car(connection: Connection, one: int, other: int) -> bool:
    """Tell whether two rows of vehicles count as one car: by VIN, else by plate, if not apart."""
    if one == other:
        return True
    rows = rows_of_one(connection, {one})
    if other not in rows:
        return False
    visits = select(Visit.vehicle_id).where(Visit.vehicle_id.in_(rows))
    oldest_first = connection.execute(visits.order_by(Visit.came_at, Visit.id))
    kept = read_vehicles(connection, rows, oldest_first)
    return kept[one].key == kept[other].key
