"""The names of what changes of a job point to: people, customers, cars, cards, other jobs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from sqlalchemy import Connection, select

from desktop_app.job_history.change_words import TABLES, row_name
from desktop_app.job_history.job_rows import JobRows, Row
from desktop_app.job_history.told_entry import EntryRead
from desktop_app.job_history.value_words import ShopSpeech, Values
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.repair_jobs.stored import Customer, Job, Person, Vehicle
from desktop_app.shop_record.databases.listed import among


def names_pointed_to(
    connection: Connection, entries: Iterable[EntryRead], rows: JobRows, speech: ShopSpeech
) -> dict[Row, str]:
    """Return the names of all rows that changes point to; rows of the job are named by their own.

    A row that is in the record no more keeps no name, unless it was the job's.
    """
    wanted: dict[str, set[int]] = {}
    names: dict[Row, str] = {}
    for table, row in _pointed_to(entries, rows):
        if (table, row) in rows.rows and table not in ("job", "vehicle", "customer"):
            names[table, row] = row_name((table, row), speech)
        else:
            wanted.setdefault(table, set()).add(row)
    for table, kept, column in (
        ("person", Person, Person.name),
        ("customer", Customer, Customer.name),
        ("job", Job, Job.number),
        ("printed_card", PrintedCard, PrintedCard.name),
    ):
        found = select(kept.id, column).where(kept.id.in_(among(wanted.get(table, ()))))
        for row_id, name in connection.execute(found):
            names[table, row_id] = name
    names |= _cars(connection, wanted.get("vehicle", ()))
    return names


def _cars(connection: Connection, ids: Iterable[int]) -> dict[Row, str]:
    found = select(Vehicle.id, Vehicle.plate, Vehicle.tag, Vehicle.vin, Vehicle.description)
    return {
        ("vehicle", car.id): " · ".join(
            filter(None, (car.plate or car.tag or car.vin, car.description))
        )
        for car in connection.execute(found.where(Vehicle.id.in_(among(ids))))
    }


def _pointed_to(entries: Iterable[EntryRead], rows: JobRows) -> Iterator[Row]:
    for entry in entries:
        for change in entry.changes:
            for values in (change.before, change.after):
                yield from _in_values(change.table, values or {})
    for (table, _), values in rows.rows.items():
        yield from _in_values(table, values)


def _in_values(table: str, values: Values | Mapping[str, object]) -> Iterator[Row]:
    for name, column in TABLES[table].columns.items():
        row = values.get(name)
        if column.table and isinstance(row, int):
            yield column.table, row
