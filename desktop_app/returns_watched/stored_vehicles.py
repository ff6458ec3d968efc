"""Which rows of the record mean one vehicle, and what their odometers said over the years."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import Connection, Row, Select, bindparam, select

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.repair_jobs.stored_apart import vehicles_apart
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, vehicle_keys
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.databases.by_database import on_server
from desktop_app.shop_record.databases.dialect_blocks import read_past, some_of
from desktop_app.shop_record.databases.listed import among, as_listed, taken_apart

if TYPE_CHECKING:
    from sqlalchemy.orm import InstrumentedAttribute

_NAMES = select(Vehicle.id, Vehicle.vin, Vehicle.plate_key)
_VEHICLES = select(
    *(Vehicle.id, Vehicle.vin, Vehicle.plate, Vehicle.tag),
    *(Vehicle.description, Vehicle.odometer_unit),
)
ROWS_AT_ONCE = 4_000  # few enough to stay in the processor's cache


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
    """Yield the rows whose column is among the ids; all for None."""
    if ids is None:
        yield from connection.execute(statement)
    elif ids:
        # One list for all of them: to take it apart again costs less than a question for each few.
        yield from connection.execute(_among(statement, column), {"ids": as_listed(sorted(ids))})


@lru_cache(maxsize=64)
def _among(
    statement: Select[*tuple[Any, ...]], column: InstrumentedAttribute[Any]
) -> Select[*tuple[Any, ...]]:
    """Return the statement for some ids, made once: to make it anew costs more than to ask it."""
    return statement.where(column.in_(taken_apart(bindparam("ids"), column.type)))


def each_block(
    connection: Connection,
    statement: Select[*tuple[Any, ...]],
    column: InstrumentedAttribute[Any] | None = None,
    ids: Collection[Any] | None = None,
    *,
    by_index: bool = True,
) -> Iterator[list[Sequence[Any]]]:
    """Yield what `each_row` reads in blocks, each turned into its columns; no block is empty.

    The rows are those of the driver itself: a million of them are read in a third of the time.
    Without `by_index` the table is read through, which is quicker where a good part of it is asked.
    """
    listed: str | None = None
    if ids is not None:
        assert column is not None
        listed = as_listed(sorted(ids))
        statement = _among_past(statement, column, by_index, on_server(connection))
    for rows in read_past(connection, statement, listed, ROWS_AT_ONCE):
        yield list(zip(*rows, strict=True))


@lru_cache(maxsize=64)
def _among_past(
    statement: Select[*tuple[Any, ...]],
    column: InstrumentedAttribute[Any],
    by_index: bool,
    server: bool,
) -> Select[*tuple[Any, ...]]:
    """Return the statement for the ids of a list that is handed to the driver."""
    some = some_of(column.type, on_server=server)
    return statement.where((column if by_index else column + 0).op("IN")(some))


def some_ids(ids: Collection[int]) -> Select[tuple[int]]:
    """Return a list of ids as a part of a statement, however many they are."""
    return among(sorted(ids))


def rows_of_one(connection: Connection, vehicle_ids: Collection[int]) -> frozenset[int]:
    """Return the ids and those of all rows that may mean the same vehicles, by VIN or plate."""
    known: dict[int, Row[Any]] = {}
    fresh = list(each_row(connection, _NAMES, Vehicle.id, vehicle_ids))
    while fresh:
        known.update((row.id, row) for row in fresh)
        vins = {row.vin for row in fresh if row.vin}
        plates = {row.plate_key for row in fresh if row.plate_key}
        met = [*each_row(connection, _NAMES, Vehicle.vin, vins)]
        met += each_row(connection, _NAMES, Vehicle.plate_key, plates)
        fresh = [row for row in met if row.id not in known]
    return frozenset(known)


def read_vehicles(
    connection: Connection, vehicle_ids: Collection[int] | None, visits: Iterable[Row[Any]]
) -> dict[int, VehicleKept]:
    """Read vehicles with their keys, given their visits, oldest first.

    A VIN that appears on a plate which had none joins the two until someone says no; so does a
    plate that two rows share.
    """
    seen: dict[int, int] = {}
    for visit in visits:
        seen.setdefault(visit.vehicle_id, len(seen))
    rows = list(each_row(connection, _VEHICLES, Vehicle.id, vehicle_ids))
    rows.sort(key=lambda row: (seen.get(row.id, len(seen)), row.id))
    names = [VehicleNames(row.vin or "", row.plate or "") for row in rows]
    refused = _refused(connection) if len(rows) > 1 else frozenset()
    keys = vehicle_keys(names, refused, _apart(connection, [row.id for row in rows]))
    return {
        row.id: VehicleKept(
            row.id,
            key if row.vin or row.plate else f"row:{row.id}",
            vehicle_words(row, row.id),
            cast(DistanceUnit, row.odometer_unit),
        )
        for row, key in zip(rows, keys, strict=True)
    }


def _apart(connection: Connection, ids: Sequence[int]) -> frozenset[tuple[int, int]]:
    """Return, by their places, the rows that somebody said are two vehicles."""
    pairs = vehicles_apart(connection) if len(ids) > 1 else frozenset()
    if not pairs:
        return frozenset()
    places = {row_id: place for place, row_id in enumerate(ids)}
    return frozenset(
        (places[one], places[other]) for one, other in pairs if one in places and other in places
    )


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


def vehicle_words(row: Row[Any], row_id: int) -> str:
    """Return a vehicle's row as a person says it."""
    return words_of(row_id, row.vin, row.plate, row.tag, row.description)


def words_of(row_id: int, vin: str | None, plate: str | None, tag: str | None, what: str) -> str:
    """Return a vehicle as a person looks for it: the name by which it is known, then what it is."""
    name = plate or tag or (vin or "")[-6:]
    if what and name:
        return f"{name} · {what}"
    return what or name or tr("vehicle {number}", number=row_id)
