"""What is kept about an earlier and a later job together: the judgement and what goes with it."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.judgement import Judgement, return_cause
from desktop_app.returns_watched.return_cost import AMOUNTS, MOST_CENTS, MOST_HOURS, CostWritten
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import damaged, kept_day, kept_moment, kept_tick, row_place

_TICK = tr("0 or 1")

Pair = tuple[str, str]


@dataclass(frozen=True, slots=True)
class LinkKept:
    """What is kept about a pair of jobs; money in cents.

    `cost` holds all that was written about the cost, `cost_cents` (not split) among it.
    """

    why: str = ""
    cause_class: str | None = None
    cost_cents: int | None = None
    judged_by: str = ""
    judged_at: str | None = None
    change_promised: str = ""
    same_vehicle: bool = True
    also: tuple[Judgement, ...] = ()
    helping: tuple[str, ...] = ()
    evidence: str = ""
    first_view: str = ""
    second_look: str = ""
    cost: CostWritten = field(default_factory=CostWritten)
    change: ChangePromised = field(default_factory=ChangePromised)
    judgement: Judgement | None = None
    dangerous: bool | None = None


@dataclass(frozen=True, slots=True)
class JobDays:
    """A job's number and what decides whether it can have a return or be one."""

    number: str
    came_at: str
    left_at: str | None
    visit_id: int
    vehicle_id: int


def read_links(
    connection: Connection, numbers: Mapping[int, str], job_ids: Collection[int] | None
) -> tuple[dict[Pair, Judgement], dict[Pair, LinkKept]]:
    """Read by pair of job numbers what was judged, and all that is kept about the pairs."""
    judged: dict[Pair, Judgement] = {}
    links: dict[Pair, LinkKept] = {}
    for row in each_row(connection, select(ReturnLink), ReturnLink.later_job_id, job_ids):
        if row.earlier_job_id not in numbers or row.later_job_id not in numbers:
            continue
        pair = (numbers[row.earlier_job_id], numbers[row.later_job_id])
        links[pair] = kept = link_kept(row, pair[1])
        if kept.judgement is not None and kept.same_vehicle:
            judged[pair] = kept.judgement
    return judged, links


def link_kept(row: Any, later: str | None = None) -> LinkKept:
    """Return what a row of return_link holds; a ShopDamaged where it cannot be read.

    `later` is the later job's number, where it is at hand, to say where the damage is.
    """
    place = row_place("return_link", row.id, later)
    return LinkKept(
        row.why,
        kept_cause(row.cause_class, place),
        kept_cents(row.cost_cents, place),
        row.judged_by,
        kept_judged_at(row.judged_at, place),
        row.change_promised,
        kept_tick(row.same_vehicle, _TICK, place),
        also=tuple(kept_judgement(one, place) for one in _listed(row.also, place)),
        helping=tuple(_cause(one, place) for one in _listed(row.helping_causes, place)),
        evidence=row.evidence or "",
        first_view=row.first_view or "",
        second_look=row.second_look or "",
        cost=CostWritten(
            _hours(row.unbilled_hours, place),
            **{name: kept_cents(getattr(row, name), place) for name in AMOUNTS},
        ),
        change=kept_change(row, place),
        judgement=None if row.judgement is None else kept_judgement(row.judgement, place),
        dangerous=kept_danger(row.dangerous, place),
    )


def kept_judgement(kept: str, place: str = "") -> Judgement:
    """Return a kept judgement; a ShopDamaged where it is none of the eight."""
    try:
        return Judgement(kept)
    except ValueError as error:
        raise damaged(kept, tr("a judgement"), place) from error


def kept_cause(kept: str | None, place: str = "") -> str | None:
    """Return a kept main cause, None where nobody named one; a ShopDamaged for an unknown one."""
    return _cause(kept, place) if kept else None


def kept_danger(kept: int | None, place: str = "") -> bool | None:
    """Return whether somebody could have been hurt, None where nobody said."""
    return None if kept is None else kept_tick(kept, _TICK, place)


def kept_cents(kept: int | None, place: str = "") -> int | None:
    """Return a kept amount in cents; a ShopDamaged for one that nobody can have written."""
    if kept is not None and not (isinstance(kept, int) and 0 <= kept <= MOST_CENTS):
        raise damaged(kept, tr("an amount from 0 to 1,000,000.00"), place)
    return kept


# What kept_change needs of a row.
CHANGE_COLUMNS = (
    ReturnLink.change_promised,
    ReturnLink.change_by,
    ReturnLink.change_due,
    ReturnLink.change_done_on,
    ReturnLink.change_check_on,
)


def kept_change(row: Any, place: str) -> ChangePromised:
    """Return the change that a row of return_link promises."""
    return ChangePromised(
        row.change_promised,
        row.change_by or "",
        *(
            None if kept is None else kept_day(kept, place)
            for kept in (row.change_due, row.change_done_on, row.change_check_on)
        ),
    )


def _listed(kept: str | None, place: str) -> list[Any]:
    if kept is None:
        return []
    try:
        found = json.loads(kept)
    except (ValueError, RecursionError) as error:  # nested deeper than anybody writes
        raise damaged(kept, tr("a list"), place) from error
    if not isinstance(found, list):
        raise damaged(kept, tr("a list"), place)
    return found


def _cause(kept: Any, place: str) -> str:
    if return_cause(str(kept)) is None:
        raise damaged(kept, tr("a cause of a return"), place)
    return str(kept)


def kept_judged_at(kept: str | None, place: str) -> str | None:
    """Return when something was judged; a ShopDamaged for what is no moment."""
    if kept is not None:
        kept_moment(kept, place)
    return kept


def _hours(kept: float | None, place: str) -> float | None:
    if kept is not None and not (isinstance(kept, int | float) and 0 <= kept <= MOST_HOURS):
        raise damaged(kept, tr("a number of hours"), place)
    return kept


def link_between(connection: Connection, earlier_job: int, later_job: int) -> Any:
    """Return the kept row about two jobs, or None."""
    wanted = select(ReturnLink).where(
        ReturnLink.earlier_job_id == earlier_job, ReturnLink.later_job_id == later_job
    )
    return connection.execute(wanted).first()


def job_days(connection: Connection, job_id: int) -> JobDays | None:
    """Return a job's number, days, visit and vehicle, or None where there is no such job."""
    wanted = (
        select(Job.number, Visit.came_at, Job.left_at, Job.visit_id, Visit.vehicle_id)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    )
    row = connection.execute(wanted).first()
    return None if row is None else JobDays(*row)
