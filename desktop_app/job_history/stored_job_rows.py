"""The rows of a job as they are kept now, and by which columns they hang on one another."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from sqlalchemy import Connection, Table, or_, select

from desktop_app.job_history.job_rows import ANSWERED, HangsOn, JobRows, Row
from desktop_app.language import tr
from desktop_app.part_photos import stored as _photos
from desktop_app.parts_compared import stored as _parts
from desktop_app.repair_jobs.stored import Answered, Customer, Job, Vehicle, Visit
from desktop_app.returns_watched import stored as _returns
from desktop_app.shop_record.databases.listed import among
from desktop_app.shop_record.tables import Base
from desktop_app.shop_record.trouble import ShopTrouble

# Loaded, so that their tables are known here.
KNOWN = (_photos, _parts, _returns)
# Rows of these are the job's where the job itself points to them; nothing else hangs a row on them.
ABOVE = ("customer", "vehicle", "visit", "job")


def hangs_on() -> HangsOn:
    """Return by which columns rows of each table hang on a job's; shop-wide tables have none."""
    found: dict[str, tuple[tuple[str, str], ...]] = {"job": ()}
    for table in Base.metadata.sorted_tables:  # each after those that it points to
        pointing = tuple(
            (key.parent.name, key.column.table.name)
            for key in sorted(table.foreign_keys, key=lambda one: one.parent.name)
            if found.get(key.column.table.name) or key.column.table.name in ("job", "vehicle")
        )
        found[table.name] = () if table.name in ABOVE else pointing
    return found


def read_job_rows(connection: Connection, job_id: int) -> JobRows:
    """Return the rows of a job; a ShopTrouble where there is no such job."""
    visit = connection.execute(
        select(Visit.id, Visit.vehicle_id, Visit.customer_id)
        .join(Job, Job.visit_id == Visit.id)
        .where(Job.id == job_id)
    ).first()
    if visit is None:
        raise ShopTrouble(tr("This job is not in the record any more."), tr("It was undone."))
    rows: dict[Row, Mapping[str, Any]] = {}
    on = hangs_on()
    for kept, row in (
        (Job, job_id),
        (Visit, visit.id),
        (Vehicle, visit.vehicle_id),
        (Customer, visit.customer_id),
    ):
        table = Base.metadata.tables[kept.__tablename__]
        rows |= _rows(connection, table, [table.c.id == row])
    for table in Base.metadata.sorted_tables:
        parents = [
            table.c[column].in_(among(ids))
            for column, above in on[table.name]
            if (ids := [row for name, row in rows if name == above])
        ]
        if parents:
            rows |= _rows(connection, table, parents)
    about = [f"visit:{visit.id}:%", f"vehicle:{visit.vehicle_id}:%"]
    asked = Base.metadata.tables[ANSWERED]
    rows |= _rows(connection, asked, [Answered.about.like(one) for one in about])
    return JobRows(job_id, visit.id, rows, on)


def _rows(
    connection: Connection, table: Table, any_of: Iterable[Any]
) -> dict[Row, Mapping[str, Any]]:
    found = connection.execute(select(table).where(or_(*any_of))).mappings()
    return {(table.name, row["id"]): dict(row) for row in found}


def job_tables() -> Iterator[str]:
    """Give the tables whose rows may belong to a job."""
    yield from (*ABOVE, ANSWERED)
    yield from (table for table, on in hangs_on().items() if on)
