"""What was seen, told and judged of past jobs since they left, read for many jobs at once.

Returns and answers are kept by a folder beside this one, so their tables are named, not imported.
"""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable, Mapping, Sequence
from datetime import date
from functools import lru_cache
from itertools import chain
from typing import Any, NamedTuple

from sqlalchemy import Connection, Text, column, exists, func, select, table

from desktop_app.repair_jobs.later_visit import is_later_visit
from desktop_app.repair_jobs.stored import Job, VehicleEvent, Visit
from desktop_app.shop_record.databases.listed import among
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_record.tables import Setting
from desktop_app.symptom_search.word_index.course import (
    CAUSES_NOT_OURS,
    COMEBACKS,
    Met,
    course_of,
)

_REACH = 365  # days after which a visit that shares something is no return any more
_REMEMBERED = 20_000
_FEW = 500  # vehicles whose visits are looked up one by one
SALES = "sale_ends_window"  # the house rule; at first a window goes with the vehicle
_A_SALE_ENDS_IT = exists().where(Setting.name == SALES, Setting.value == json.dumps("yes"))
_SPEAKING = ("fine", "other trouble", "same trouble")

_LINK = table(
    "return_link",
    *(column("earlier_job_id"), column("later_job_id"), column("same_vehicle")),
    *(column("judgement", Text), column("cause_class", Text)),
)
_ASKED = table(
    "customer_asked",
    *(column("job_id"), column("asked_on", Text), column("answer", Text)),
    *(column("judgement", Text), column("cause_class", Text)),
)


class Left(NamedTuple):
    """A job that left, its last day under watch, and what another job may share with it.

    `came_at` and `left_at` are the moments as they are kept, `left` is the day.
    """

    job: int
    left: int
    settles: int
    vehicle: int
    shares: frozenset[str]
    came_at: str
    left_at: str


class Later(NamedTuple):
    """A job of a later visit; `says_same` where the customer says it is the same trouble."""

    job: int
    came: int
    odometer: int | None
    says_same: bool
    came_at: str


def last_visits(connection: Connection, vehicles: Collection[int] | None) -> dict[int, int]:
    """Return the day of the last visit of each of these vehicles, or of all."""
    last = select(Visit.vehicle_id, func.max(Visit.came_at)).group_by(Visit.vehicle_id)
    if vehicles is not None:
        last = last.where(Visit.vehicle_id.in_(among(vehicles)))
    rows: Any = connection.execute(last).all()
    return {car: _day(came) for car, came in rows}


class CarsAfter:
    """The visits of some vehicles after a day: those that may be returns, the last, and sales.

    All visits that begin from `since` to a year after `until` are read, with their jobs; of those
    still later, which can be no return, the last of each vehicle is enough.
    """

    def __init__(
        self,
        connection: Connection,
        vehicles: Iterable[int],
        since: int,
        until: int,
        last: Mapping[int, int] | None = None,
    ) -> None:
        """Read what is needed; `last` gives the last visits where they were read before."""
        cars = set(vehicles)
        chosen = among(cars)
        first, end = (date.fromordinal(day).isoformat() for day in (since, until + _REACH + 2))
        visits = (
            select(Visit.vehicle_id, Job.id, Visit.came_at, Visit.odometer_in, Job.says_same)
            .join(Job, Job.visit_id == Visit.id)
            .where(Visit.came_at.between(first, end))
        )
        if len(cars) <= _FEW:  # of many it is quicker to go through all visits of that time
            visits = visits.where(Visit.vehicle_id.in_(chosen))
        rows: Any = connection.execute(visits).all()
        self._of: dict[int, list[Later]] = {}
        for car, job, came, odometer, same in rows:
            if car in cars:
                later = Later(job, _day(came), odometer, bool(same), came)
                self._of.setdefault(car, []).append(later)
        every = last_visits(connection, cars) if last is None else last
        beyond = until + _REACH + 2
        self.last = {car: day for car in cars if (day := every.get(car, 0)) > beyond}
        sold = select(VehicleEvent.vehicle_id, VehicleEvent.happened_on).where(
            VehicleEvent.kind == "sold", VehicleEvent.vehicle_id.in_(chosen), _A_SALE_ENDS_IT
        )
        self.sold: dict[int, list[int]] = {}
        rows = connection.execute(sold).all()
        for car, day in rows:
            self.sold.setdefault(car, []).append(_day(day))

    def jobs(self) -> set[int]:
        """Return the jobs of the visits that may be returns."""
        return {one.job for one in chain.from_iterable(self._of.values())}

    def after(self, left: Left) -> list[Later]:
        """Return the jobs of the vehicle's visits that began after a job had left."""
        return [
            one
            for one in self._of.get(left.vehicle, ())
            if one.came > left.left
            or (one.came == left.left and is_later_visit(left.came_at, left.left_at, one.came_at))
        ]

    def driven_on(self, vehicle: int, left: int, odometer: float | None) -> int | None:
        """Return the day of the first visit with such an odometer; None where none is read."""
        days = [
            one.came
            for one in self._of.get(vehicle, ())
            if odometer is not None and one.odometer is not None and one.odometer >= odometer
        ]
        return min((day for day in days if day > left), default=None)


def read_courses(
    connection: Connection,
    jobs: Sequence[Left],
    cars: CarsAfter,
    shares: Mapping[int, Collection[str]],
) -> dict[int, tuple[int, int]]:
    """Return of each job the bits of its course and the last day on which its car was seen.

    `shares` gives of each later job what another may share with it. The day is 0 where there is
    none.
    """
    ids = [one.job for one in jobs]
    links, judged = _links(connection, ids), _judged(connection, cars.jobs())
    answers = _answers(connection, ids)
    found = {}
    for one in jobs:
        linked, said = links.get(one.job, {}), answers.get(one.job, ())
        after = cars.after(one)
        met = list(linked.values())
        met += [
            Met(later.came)
            for later in after
            if later.job not in linked
            if later.job not in judged and _may_be_a_return(one, later, shares)
        ]
        came = [later.came for later in after]
        met += _told(said, came, [visit.on for visit in met if _speaks(visit)])
        came += [day for day in (cars.last.get(one.vehicle),) if day is not None]
        gone = _gone(said, came)
        sold = min((day for day in cars.sold.get(one.vehicle, ()) if day >= one.left), default=None)
        # On the day of the sale the car is seen.
        unseen = [*(() if gone is None else (gone,)), *(() if sold is None else (sold + 1,))]
        lost = min(unseen, default=None)
        seen = [*came, *(on for on, answer, *_ in said if answer == "fine")]
        well = max((day for day in seen if lost is None or day < lost), default=0)
        found[one.job] = course_of(one.settles, met, lost, sold), well
    return found


def _may_be_a_return(one: Left, later: Later, shares: Mapping[int, Collection[str]]) -> bool:
    if later.came > one.left + _REACH:
        return False
    return later.says_same or not one.shares.isdisjoint(shares.get(later.job, ()))


def _speaks(visit: Met) -> bool:
    """Tell whether a judged visit has to do with the repair: it speaks for what was told."""
    return visit.judgement not in (None, "unrelated") and visit.cause != "new"


def _told(
    said: Iterable[tuple[Any, ...]], came: Sequence[int], judged: Sequence[int]
) -> Iterable[Met]:
    """Yield what customers told of the same trouble and no visit judged since speaks for.

    Told again after it was judged a comeback it is the same one, until the car was here or the
    customer said something else.
    """
    comeback_told = 0  # the last day on which a judged comeback was told; 0 where none goes on
    for on, answer, judgement, cause in sorted(said, key=lambda one: one[0]):
        if answer == "not reached":
            continue
        if answer != "same trouble":
            comeback_told = 0
            continue
        here = any(comeback_told <= day <= on for day in came)
        if comeback_told and judgement is None and not here:
            comeback_told = on
            continue
        comeback_told = on if judgement in COMEBACKS else 0
        if judgement or not any(day >= on for day in judged):
            yield Met(on, judgement, cause)


def _gone(said: Sequence[tuple[Any, ...]], came: Sequence[int]) -> int | None:
    """Return the day from which the car is gone, as was told; None where it is in sight."""
    told = [on for on, answer, *_ in said if answer == "car is gone"]
    spoken = [on for on, answer, *_ in said if answer in _SPEAKING]
    last = max((*came, *spoken), default=0)
    return min((day for day in told if day >= last), default=None)


def _links(connection: Connection, ids: Sequence[int]) -> dict[int, dict[int, Met]]:
    """Return by job the returns that a person looked at, by their later job."""
    wanted = (
        select(
            *(_LINK.c.earlier_job_id, _LINK.c.later_job_id, Visit.came_at),
            *(_LINK.c.judgement, _LINK.c.cause_class),
        )
        .join(Job, Job.id == _LINK.c.later_job_id)
        .join(Visit, Visit.id == Job.visit_id)
        .where(_LINK.c.earlier_job_id.in_(among(ids)), _LINK.c.same_vehicle == 1)
    )
    found: dict[int, dict[int, Met]] = {}
    rows: Any = connection.execute(wanted).all()
    for earlier, later, came, judgement, cause in rows:
        found.setdefault(earlier, {})[later] = Met(_day(came), judgement, cause)
    return found


def _judged(connection: Connection, ids: Iterable[int]) -> set[int]:
    """Return those of some jobs that were judged a comeback of any other: they hang in a chain."""
    judged = select(_LINK.c.later_job_id).where(
        _LINK.c.later_job_id.in_(among(ids)),
        _LINK.c.judgement.in_(COMEBACKS),
        func.coalesce(_LINK.c.cause_class, "").not_in(CAUSES_NOT_OURS),
    )
    return set(connection.execute(judged).scalars())


def _answers(connection: Connection, ids: Sequence[int]) -> dict[int, list[tuple[Any, ...]]]:
    wanted = select(
        *(_ASKED.c.job_id, _ASKED.c.asked_on, _ASKED.c.answer),
        *(_ASKED.c.judgement, _ASKED.c.cause_class),
    ).where(_ASKED.c.job_id.in_(among(ids)))
    found: dict[int, list[tuple[Any, ...]]] = {}
    rows: Any = connection.execute(wanted).all()
    for job, on, *said in rows:
        found.setdefault(job, []).append((_day(on), *said))
    return found


@lru_cache(_REMEMBERED)
def _day(at: str) -> int:
    return kept_day(at).toordinal()
