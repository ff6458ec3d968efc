"""The year behind a week, read from the record."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, Row, Select, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    Job,
    JobSymptom,
    Person,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.return_cost import return_cost
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_facts import SymptomNames
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_money_owed import money_still_owed
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.house_rules import HouseRules
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.weekly_report.year_behind import JobDone, PartFitted, ReturnDone, State, YearBehind

# The verdict on each pair that was compared, by the pair's id.
Verdicts = Mapping[int, str]


@dataclass(frozen=True, slots=True)
class YearAsked:
    """What is read already when the year is: its days, the returns in it, what is under watch."""

    first: date
    last: date
    returns: Sequence[ReturnRow]
    open_jobs: Collection[str]
    rules: HouseRules
    names: SymptomNames
    verdicts: Verdicts


def read_year(connection: Connection, asked: YearAsked) -> YearBehind:
    """Read the jobs handed over in the year and what became of each."""
    rows = _jobs(connection, asked.first, asked.last)
    ids = [row.id for row in rows]
    heard = _Heard.read(connection, rows, asked.first, asked.last)
    parts = _parts(connection, ids, asked.verdicts)
    symptoms = _symptoms(connection, ids, asked.names)
    people = {row.id: row.name for row in connection.execute(select(Person.id, Person.name))}
    caught = _caught(connection, ids)
    met: dict[int, list[ReturnRow]] = {}
    for one in asked.returns:
        met.setdefault(one.earlier_id, []).append(one)
    jobs = tuple(
        _done(
            row,
            asked,
            met.get(row.id, ()),
            heard,
            technician=people.get(row.technician_id, ""),
            parts=tuple(parts.get(row.id, ())),
            symptoms=tuple(symptoms.get(row.id, ())),
            caught_here=caught.get(row.id, 0),
        )
        for row in rows
    )
    rules = asked.rules
    return YearBehind(
        first=asked.first,
        last=asked.last,
        jobs=jobs,
        returns=_returns(connection, asked),
        owed=money_still_owed(connection),
        hour_cost_cents=rules.hour_cost_cents,
        names_shown=rules.names_in_book == "yes",
        early=(rules.early_days, rules.early_miles),
        long=(rules.long_days, rules.long_miles),
    )


def _jobs(connection: Connection, first: date, last: date) -> Sequence[Row[Any]]:
    wanted: Select[*tuple[Any, ...]] = (
        select(Job, Visit.vehicle_id, Vehicle.description)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Job.left_at >= first.isoformat())
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .order_by(Job.left_at, Job.number)
    )
    return connection.execute(wanted).all()


@dataclass(frozen=True, slots=True)
class _Heard:
    """When each vehicle came, what customers said, and which vehicles went where nobody sees."""

    visits: Mapping[int, Sequence[date]]
    answers: Mapping[int, Sequence[CustomerSaid]]
    gone: Mapping[int, date]

    @classmethod
    def read(
        cls, connection: Connection, rows: Sequence[Row[Any]], first: date, last: date
    ) -> _Heard:
        # By day and not by vehicle: no car can have been seen before its job was handed over.
        visits: dict[int, list[date]] = {}
        wanted = (
            select(Visit.vehicle_id, Visit.came_at)
            .where(Visit.came_at >= first.isoformat())
            .where(Visit.came_at < (last + timedelta(days=1)).isoformat())
        )
        for vehicle, came in connection.execute(wanted):
            visits.setdefault(vehicle, []).append(kept_day(came))
        sold = select(VehicleEvent.vehicle_id, VehicleEvent.happened_on)
        gone: dict[int, date] = {}
        for vehicle, day in connection.execute(sold.where(VehicleEvent.kind == "sold")):
            on = kept_day(day)
            if on <= last:
                gone[vehicle] = min(on, gone.get(vehicle, on))
        return cls(visits, read_answers(connection, [row.id for row in rows]), gone)


def _done(
    row: Row[Any],
    asked: YearAsked,
    met: Iterable[ReturnRow],
    heard: _Heard,
    **said: Any,
) -> JobDone:
    left = kept_day(row.left_at)
    rows = list(met)
    back = [one.candidate.days for one in rows if one.is_comeback]
    waits = [one.candidate.days for one in rows if one.waits]
    found = row.cause_found
    end = left + timedelta(days=row.window_days) if row.window_days else asked.last
    well = _well(row, left, rows, heard, asked.last)
    return JobDone(
        number=row.number,
        left_on=left,
        vehicle=row.description,
        counted=is_counted(found, row.cause, row.correction),
        cause_found=None if found is None else bool(found),
        correction=row.correction,
        system=row.system,
        hours=row.hours,
        unbilled_hours=row.unbilled_hours,
        price_cents=row.price_cents,
        proof_level=row.proof_level,
        now_and_then=row.fault_every is not None,
        window_days=row.window_days,
        window_miles=float(row.window_miles),
        days_gone=(asked.last - left).days,
        state=_state(row, bool(back), bool(waits), well, end, asked, heard),
        back_after=min(back, default=None),
        waits_after=min(waits, default=None),
        well_until=well,
        **said,
    )


def _well(
    row: Row[Any], left: date, rows: Sequence[ReturnRow], heard: _Heard, last: date
) -> date | None:
    """Return the last day on which the car was seen or its customer said that all is well."""
    ill = min((one.came_on for one in rows if one.is_comeback or one.waits), default=date.max)
    seen = [day for day in heard.visits.get(row.vehicle_id, ()) if left < day < ill]
    fine = [
        said.on
        for said in heard.answers.get(row.id, ())
        if said.answer is Answer.FINE and left <= said.on <= last
    ]
    return max((*seen, *fine), default=None)


def _state(
    row: Row[Any],
    back: bool,
    waits: bool,
    well: date | None,
    end: date,
    asked: YearAsked,
    heard: _Heard,
) -> State:
    if back:
        return "came back"
    if waits:
        return "maybe"
    if well is not None and well > end:
        return "seen fine"
    if row.number in asked.open_jobs:
        return "open"
    gone = heard.gone.get(row.vehicle_id)
    said_gone = any(said.answer is Answer.CAR_IS_GONE for said in heard.answers.get(row.id, ()))
    left = kept_day(row.left_at)
    if said_gone or (gone is not None and left <= gone <= end):
        return "lost sight"
    return "nothing heard"


def _parts(
    connection: Connection, ids: Collection[int], verdicts: Verdicts
) -> dict[int, list[PartFitted]]:
    wanted = select(Pair.job_id, Pair.id, Pair.part_kind, Pair.origin, Pair.supplier, Pair.lot)
    found: dict[int, list[PartFitted]] = {}
    for row in each_row(connection, wanted.where(Pair.fitted == 1), Pair.job_id, ids):
        part = PartFitted(
            row.part_kind, row.origin or "", row.supplier, row.lot, verdicts.get(row.id, "")
        )
        found.setdefault(row.job_id, []).append(part)
    return found


def _symptoms(
    connection: Connection, ids: Collection[int], names: SymptomNames
) -> dict[int, list[str]]:
    wanted = select(JobSymptom.job_id, JobSymptom.symptom)
    found: dict[int, list[str]] = {}
    for row in each_row(connection, wanted, JobSymptom.job_id, ids):
        found.setdefault(row.job_id, []).append(names.get(row.symptom, row.symptom))
    return found


def _caught(connection: Connection, ids: Collection[int]) -> dict[int, int]:
    rows = each_row(connection, select(CaughtHere.job_id), CaughtHere.job_id, ids)
    return Counter(row.job_id for row in rows)


def _returns(connection: Connection, asked: YearAsked) -> tuple[ReturnDone, ...]:
    wanted = select(ReturnLink)
    later = {one.later_id for one in asked.returns}
    kept = {
        (row.earlier_job_id, row.later_job_id): link_kept(row)
        for row in each_row(connection, wanted, ReturnLink.later_job_id, later)
    }
    found = []
    for one in asked.returns:
        link = kept.get((one.earlier_id, one.later_id))
        if link is None:
            found.append(ReturnDone(one))
            continue
        cost = return_cost(link.cost, asked.rules.hour_cost_cents)
        done = ReturnDone(one, link.also, link.helping, link.second_look, cost, link.change)
        found.append(done)
    return tuple(found)
