"""Which rows of the record mean one vehicle, and what their odometers said over the years."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from typing import Any, cast

from sqlalchemy import Connection, Row, Select, select
from sqlalchemy.orm import InstrumentedAttribute

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, vehicle_keys
from desktop_app.returns_watched.stored import ReturnLink

MOST_AT_ONCE = 900  # values in one look-up; older SQLite takes 999 at most


@dataclass(frozen=True, slots=True)
class VehicleKept:
    """A vehicle's row: its key is equal for all rows that mean one vehicle."""

    id: int
    key: str
    words: str
    unit: DistanceUnit


def each_row(
    connection: Connection,
    statement: Select[*tuple[Any, ...]],
    column: InstrumentedAttribute[Any],
    ids: Collection[Any] | None,
) -> Iterator[Row[Any]]:
    """Yield the rows whose column is among the ids, a handful of ids at a time; all for None."""
    if ids is None:
        yield from connection.execute(statement)
        return
    listed = sorted(ids)
    for start in range(0, len(listed), MOST_AT_ONCE):
        some = listed[start : start + MOST_AT_ONCE]
        yield from connection.execute(statement.where(column.in_(some)))


def rows_of_one(connection: Connection, vehicle_ids: Collection[int]) -> frozenset[int]:
    """Return the ids and those of all rows that may mean the same vehicles, by VIN or plate."""
    known: dict[int, Row[Any]] = {}
    wanted = select(Vehicle.id, Vehicle.vin, Vehicle.plate_key)
    fresh = list(each_row(connection, wanted, Vehicle.id, vehicle_ids))
    while fresh:
        known.update((row.id, row) for row in fresh)
        vins = {row.vin for row in fresh if row.vin}
        plates = {row.plate_key for row in fresh if row.plate_key}
        met = [*each_row(connection, wanted, Vehicle.vin, vins)]
        met += each_row(connection, wanted, Vehicle.plate_key, plates)
        fresh = [row for row in met if row.id not in known]
    return frozenset(known)


def read_vehicles(
    connection: Connection, vehicle_ids: Collection[int] | None, visits: Iterable[Row[Any]]
) -> dict[int, VehicleKept]:
    """Read vehicles with their keys, given their visits, oldest first.

    A VIN that appears on a plate which had none joins the two until someone says no.
    """
    seen: dict[int, int] = {}
    for visit in visits:
        seen.setdefault(visit.vehicle_id, len(seen))
    wanted = select(
        Vehicle.id,
        Vehicle.vin,
        Vehicle.plate,
        Vehicle.tag,
        Vehicle.description,
        Vehicle.odometer_unit,
    )
    rows = list(each_row(connection, wanted, Vehicle.id, vehicle_ids))
    rows.sort(key=lambda row: (seen.get(row.id, len(seen)), row.id))
    names = [VehicleNames(row.vin or "", row.plate or "") for row in rows]
    refused = _refused(connection) if len(rows) > 1 else frozenset()
    keys = vehicle_keys(names, refused)
    return {
        row.id: VehicleKept(
            row.id,
            key if row.vin or row.plate else f"row:{row.id}",
            _words(row),
            cast(DistanceUnit, row.odometer_unit),
        )
        for row, key in zip(rows, keys, strict=True)
    }


def _refused(connection: Connection) -> frozenset[tuple[str, str]]:
    """Read which plates somebody said do not go with which VIN."""
    wanted = select(ReturnLink.earlier_job_id, ReturnLink.later_job_id)
    pairs = connection.execute(wanted.where(ReturnLink.same_vehicle == 0)).all()
    if not pairs:
        return frozenset()
    named = (
        select(Job.id, Vehicle.vin, Vehicle.plate)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    )
    rows = each_row(connection, named, Job.id, {job for pair in pairs for job in pair})
    names = {row.id: VehicleNames(row.vin or "", row.plate or "") for row in rows}
    refused = set()
    for pair in pairs:
        one, other = (names[job] for job in pair)
        if one.known_vin and other.known_vin:
            continue
        for vin in (one.known_vin, other.known_vin):
            refused |= {(plate, vin) for plate in (one.known_plate, other.known_plate) if vin}
    return frozenset(refused)


def _words(row: Row[Any]) -> str:
    name = row.plate or row.tag or (row.vin or "")[-6:]
    return ", ".join(part for part in (row.description, name) if part) or f"vehicle {row.id}"
