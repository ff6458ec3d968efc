"""Which jobs a change of a row is about, and which the deeds since a moment have changed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from sqlalchemy import Connection, or_, select, table
from sqlalchemy import column as column_of

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, VehicleEvent, Visit
from desktop_app.shop_record.databases.listed import among
from desktop_app.shop_record.deed import RowChange
from desktop_app.shop_record.past.history import done_in
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.symptom_search.stored_courses import SALES

_OF_A_JOB = (
    *("job_condition", "trouble_code", "job_check", "pair", "job_symptom"),
    "customer_asked",  # told that it came back, and judged
)


_OF_A_VEHICLE = ("visit", "vehicle_event")
_SOLD = select(VehicleEvent.vehicle_id).where(VehicleEvent.kind == "sold").distinct()


def jobs_changed(connection: Connection, after: int, most: int) -> set[int] | None:
    """Return the jobs that the deeds after one changed; None where they are more than `most`.

    What became of a job hangs on the later visits of its vehicle, so all jobs of a vehicle change
    with one of them. Rows added in bulk hang on jobs that were added with them, so the ranges of
    jobs are enough; of jobs taken out in bulk nobody knows the vehicles any more.
    """
    deeds = select(HistoryEntry.seq).where(HistoryEntry.seq > after).order_by(HistoryEntry.seq)
    changed: set[int] = set()
    vehicles: set[int] = set()
    for (seq,) in connection.execute(deeds).all():
        changes, bulk = done_in(connection, seq)
        for change in changes:
            changed.update(jobs_of_change(connection, change))
            if change.table in _OF_A_VEHICLE:
                vehicles.update(_owner(connection, change, "vehicle_id"))
            elif change.table == "setting" and SALES in _owner(connection, change, "name"):
                vehicles.update(_ids(connection, _SOLD))
        for rows in bulk:
            if rows.table == "job":
                if rows.rows > most or rows.gone is not None:
                    return None
                changed.update(range(rows.first, rows.last + 1))
        if len(changed) > most:
            return None
    changed |= _with_their_vehicles(connection, changed, vehicles)
    return changed if len(changed) <= most else None


def _with_their_vehicles(connection: Connection, jobs: set[int], vehicles: set[int]) -> set[int]:
    """Return all jobs of some vehicles and of those of some jobs."""
    own = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id)
    own = own.where(Job.id.in_(among(jobs)))
    of = or_(Visit.vehicle_id.in_(own), Visit.vehicle_id.in_(among(vehicles)))
    return set(_ids(connection, select(Job.id).join(Visit, Visit.id == Job.visit_id).where(of)))


def jobs_of_change(connection: Connection, change: RowChange) -> Iterator[int]:
    """Yield the jobs that a changed row belongs to or is read with."""
    if change.table == "job":
        yield change.row_id
    elif change.table in _OF_A_JOB:
        yield from _owner(connection, change, "job_id")
    elif change.table == "return_link":
        yield from _owner(connection, change, "earlier_job_id")
    elif change.table == "part_condition":
        for pair in _owner(connection, change, "pair_id"):
            yield from _ids(connection, select(Pair.job_id).where(Pair.id == pair))
    elif change.table == "visit":
        yield from _ids(connection, select(Job.id).where(Job.visit_id == change.row_id))
    elif change.table == "vehicle":
        visits = select(Visit.id).where(Visit.vehicle_id == change.row_id)
        yield from _ids(connection, select(Job.id).where(Job.visit_id.in_(visits)))
    elif change.table == "own_kind":
        for kind in _owner(connection, change, "kind"):
            yield from _ids(connection, select(Pair.job_id).where(Pair.part_kind == kind))
    elif change.table == "person":
        yield from _ids(connection, select(Job.id).where(Job.technician_id == change.row_id))


def _owner(connection: Connection, change: RowChange, column: str) -> Iterator[Any]:
    """Yield the owner of a changed row, from its values before and after, else from the row."""
    named = {
        values[column] for values in (change.before, change.after) if values and column in values
    }
    if not named:
        row = table(change.table, column_of("id"), column_of(column))
        named = set(_ids(connection, select(row.c[column]).where(row.c.id == change.row_id)))
    yield from named


def _ids(connection: Connection, query: Any) -> Iterator[Any]:
    for row in connection.execute(query).all():
        yield row[0]
