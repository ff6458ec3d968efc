"""When vehicles were sold, where the house rules say that a sale ends a window."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.kept_value import kept_day


def read_sales(
    connection: Connection, vehicle_ids: Collection[int] | None, until: date | None = None
) -> list[tuple[int, date]]:
    """Read the vehicles' rows and the days on which they were sold, oldest first, up to a day.

    Nothing where a window goes with the vehicle, as the house rules have it at first.
    """
    if read_rules(connection).sale_ends_window != "yes":
        return []
    wanted = select(VehicleEvent.vehicle_id, VehicleEvent.happened_on)
    rows = each_row(
        connection, wanted.where(VehicleEvent.kind == "sold"), VehicleEvent.vehicle_id, vehicle_ids
    )
    sales = ((row.vehicle_id, kept_day(row.happened_on)) for row in rows)
    return sorted(
        (one for one in sales if until is None or one[1] <= until), key=lambda one: one[1]
    )


def first_sale(days: Collection[date], handed_over_on: date | None) -> date | None:
    """Return the first of the days, in order, that is not before a hand-over; None without one."""
    if handed_over_on is None:
        return None
    return next((day for day in days if day >= handed_over_on), None)
