"""What is judged of two cars in one: rows are not parted while a judged return stands on both."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from contextlib import contextmanager
from typing import Any

from sqlalchemy import ColumnElement, Connection, select

from desktop_app.language import tr
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_one_car import are_one_car
from desktop_app.returns_watched.stored_vehicles import rows_of_one, some_ids
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.tables import aliased
from desktop_app.shop_record.trouble import ShopTrouble

_FIRST, _LATER = aliased(Job), aliased(Job)
_CAME_FIRST, _CAME_LATER = aliased(Visit), aliased(Visit)
_LINKS = (
    select(ReturnLink, _FIRST.number.label("first"), _LATER.number.label("number"))
    .add_columns(_CAME_FIRST.vehicle_id.label("one"), _CAME_LATER.vehicle_id.label("other"))
    .join(_FIRST, _FIRST.id == ReturnLink.earlier_job_id)
    .join(_LATER, _LATER.id == ReturnLink.later_job_id)
    .join(_CAME_FIRST, _CAME_FIRST.id == _FIRST.visit_id)
    .join(_CAME_LATER, _CAME_LATER.id == _LATER.visit_id)
    .where(ReturnLink.same_vehicle == 1)
)


def judged_as_one(connection: Connection, rows: Collection[int]) -> dict[int, Any]:
    """Return by id the links that count: judged or with a cost, and of rows that are one car.

    `rows` are rows of vehicles; links of all rows that may mean the same cars are looked at.
    """
    some = some_ids(rows_of_one(connection, rows))
    return _counting(connection, _CAME_LATER.vehicle_id.in_(some))


@contextmanager
def refuse_where_judged(deed: Deed, *vehicles: int) -> Iterator[None]:
    """Raise a ShopTrouble where what is done to these vehicles parts what is judged as one.

    A judged return, or one with a cost, would leave the list, the rates and the costs unasked. One
    that somebody said is of two vehicles already is in none of them.
    """
    before = judged_as_one(deed.connection, vehicles)
    yield
    parted = _parted(deed, before)
    if parted is not None:
        raise ShopTrouble(
            tr("{says}; for another car that would no longer count.", says=_says(parted)),
            kept=tr("They stay one car, and what was judged holds."),
            do=tr(
                "Open {number} under It's Back: say there that they are two vehicles, or "
                "first {to_undo}.",
                number=parted.number,
                to_undo=_to_undo(parted),
            ),
        )


@contextmanager
def refuse_where_others_judged(deed: Deed, earlier_job: int, later_job: int) -> Iterator[None]:
    """Raise a ShopTrouble where what is done to this pair parts another that is judged."""
    cars = (
        select(Visit.vehicle_id)
        .join(Job, Job.visit_id == Visit.id)
        .where(Job.id.in_((earlier_job, later_job)))
    )
    before = judged_as_one(deed.connection, set(deed.connection.execute(cars).scalars()))
    named = (earlier_job, later_job)
    others = {
        link: row for link, row in before.items() if (row.earlier_job_id, row.later_job_id) != named
    }
    yield
    parted = _parted(deed, others)
    if parted is not None:
        raise ShopTrouble(
            tr("{says}; with two vehicles here that would no longer count.", says=_says(parted)),
            kept=tr("Nothing was changed."),
            do=tr(
                "Open {number} under It's Back first, and {to_undo}.",
                number=parted.number,
                to_undo=_to_undo(parted),
            ),
        )


def _parted(deed: Deed, before: dict[int, Any]) -> Any:
    """Return the first of the links that count no longer, or None."""
    if not before:
        return None
    after = _counting(deed.connection, ReturnLink.id.in_(before))
    return next((row for link, row in before.items() if link not in after), None)


def _counting(connection: Connection, which: ColumnElement[bool]) -> dict[int, Any]:
    found: dict[int, Any] = {}
    for row in connection.execute(_LINKS.where(which)):
        kept = link_kept(row, row.number)
        written = kept.judgement is not None or kept.cost.is_written
        if written and are_one_car(connection, row.one, row.other):
            found[row.id] = row
    return dict(sorted(found.items()))


def _says(row: Any) -> str:
    kept = link_kept(row, row.number)
    later, earlier = row.number, row.first
    if kept.judgement is None:
        return tr("{later} has a cost as a return of {earlier}", later=later, earlier=earlier)
    return tr(
        "{later} is judged “{judgement}” as a return of {earlier}",
        later=later,
        judgement=tr(kept.judgement.value),
        earlier=earlier,
    )


def _to_undo(row: Any) -> str:
    kept = link_kept(row, row.number)
    if kept.judgement is None:
        return tr("empty its costs") if kept.cost.is_written else ""
    if kept.cost.is_written:
        return tr("take its judgement back and empty its costs")
    return tr("take its judgement back")
