"""What the check of a shop doubts: no damage, but days to come, and judged pairs of two cars."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any, NamedTuple

from sqlalchemy import Connection, or_, select

from desktop_app.language import tr
from desktop_app.repair_jobs.later_visit import is_later_visit
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    Job,
    ProofStep,
    SelfTests,
    VehicleEvent,
    Visit,
)
from desktop_app.returns_watched.stored import CustomerAsked, MoneyOwed, ReturnLink
from desktop_app.returns_watched.stored_one_car import are_one_car
from desktop_app.shop_record.databases.sql_days import day_of
from desktop_app.shop_record.kept_value import kept_day, row_place
from desktop_app.shop_record.tables import Kept, aliased
from desktop_app.shop_record.trouble import ShopDamaged

# Days on which something was done; what is planned or promised may lie ahead.
_DONE: dict[type[Kept], tuple[str, ...]] = {
    Visit: ("came_at", "left_at"),
    Job: ("left_at",),
    VehicleEvent: ("happened_on",),
    SelfTests: ("read_at",),
    ProofStep: ("done_at",),
    CaughtHere: ("caught_at",),
    CustomerAsked: ("asked_on", "judged_at"),
    ReturnLink: ("judged_at", "change_done_on"),
    MoneyOwed: ("since", "ended_on"),
}


class Doubt(NamedTuple):
    """Where it stands, what is doubted, and what to do."""

    where: str
    what: str
    do: str


def record_doubts(connection: Connection, today: date) -> Iterator[Doubt]:
    """Give what may be right, but hardly is: done on a day to come, judged of two vehicles or of
    one day."""
    for table, columns in _DONE.items():
        for column in columns:
            yield from _to_come(connection, table, column, today)
    yield from _judged_of_what_is_no_return(connection)


def _to_come(
    connection: Connection, table: type[Kept], column: str, today: date
) -> Iterator[Doubt]:
    at = getattr(table, column)
    wanted: Any = select(table.id, at).where(at >= (today + timedelta(days=1)).isoformat())
    for row in connection.execute(wanted.order_by(table.id)):
        try:
            day = kept_day(row[1])
        except ShopDamaged:
            continue  # no day at all: that is damage, and told as such
        yield Doubt(
            f"{row_place(table.__tablename__, row.id)}, {column}",
            tr("{day} is still to come.", day=day.isoformat()),
            tr("Look at this computer's clock first: it may be behind."),
        )


def _judged_of_what_is_no_return(connection: Connection) -> Iterator[Doubt]:
    earlier, later = aliased(Job), aliased(Job)
    came, back = aliased(Visit), aliased(Visit)
    wanted = (
        select(
            *(ReturnLink.id, earlier.number.label("first"), later.number.label("second")),
            *(came.vehicle_id.label("one"), back.vehicle_id.label("other")),
            *(came.came_at.label("came"), back.came_at.label("back"), earlier.left_at),
        )
        .join(earlier, earlier.id == ReturnLink.earlier_job_id)
        .join(later, later.id == ReturnLink.later_job_id)
        .join(came, came.id == earlier.visit_id)
        .join(back, back.id == later.visit_id)
        .where(ReturnLink.judgement.is_not(None), ReturnLink.same_vehicle == 1)
        .where(or_(came.vehicle_id != back.vehicle_id, _day_of(came) == _day_of(back)))
        .order_by(ReturnLink.id)
    )
    for row in connection.execute(wanted).all():
        if row.came[:10] == row.back[:10] and not is_later_visit(row.came, row.left_at, row.back):
            yield Doubt(
                row_place("return_link", row.id, row.second),
                tr(
                    "{second} is judged as a return of {first}, but both came on {came}: "
                    "it is in no list and no rate.",
                    second=row.second,
                    first=row.first,
                    came=row.came[:10],
                ),
                tr("If one of them came on another day, correct that."),
            )
        elif not are_one_car(connection, row.one, row.other):
            yield Doubt(
                row_place("return_link", row.id, row.second),
                tr(
                    "{second} is judged as a return of {first}, but the two stand on two "
                    "vehicles: it is in no list and no rate.",
                    second=row.second,
                    first=row.first,
                ),
                tr("If it is one vehicle, give both the same VIN, or the same plate."),
            )


def _day_of(visit: Any) -> Any:
    return day_of(visit.came_at)
