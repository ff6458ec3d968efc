"""The year behind a week, read from the record."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.kept_job import kept_level
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    Job,
    JobSymptom,
    Person,
    Vehicle,
    Visit,
)
from desktop_app.returns_watched.met_by import met_by
from desktop_app.returns_watched.return_cost import return_cost
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_facts import SymptomNames
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_money_owed import money_still_owed
from desktop_app.returns_watched.stored_vehicles import each_block, each_row
from desktop_app.shop_record.house_rules import HouseRules
from desktop_app.shop_record.kept_value import row_place
from desktop_app.weekly_report.stored_decisions import decisions_since
from desktop_app.weekly_report.stored_fates import read_fates
from desktop_app.weekly_report.week import week_of
from desktop_app.weekly_report.year_behind import JobDone, PartFitted, ReturnDone, YearBehind

# The verdict on each pair that was compared, by the pair's id.
Verdicts = Mapping[int, str]
_LEVEL = 10  # where the level of proof stands in a row of the year's jobs


@dataclass(frozen=True, slots=True)
class YearAsked:
    """What is read already when the year is: its days and the returns in it."""

    first: date
    last: date
    look: Look
    returns: Sequence[ReturnRow]
    rules: HouseRules
    names: SymptomNames
    verdicts: Verdicts


def read_year(connection: Connection, asked: YearAsked) -> YearBehind:
    """Read the jobs handed over in the year and what became of each."""
    rules = asked.rules
    return YearBehind(
        first=asked.first,
        last=asked.last,
        jobs=tuple(_jobs_done(connection, asked)),
        returns=_returns(connection, asked),
        owed=money_still_owed(connection, asked.last),
        hour_cost_cents=rules.hour_cost_cents,
        names_shown=rules.names_in_book == "yes",
        early=(rules.early_days, rules.early_miles),
        long=(rules.long_days, rules.long_miles),
    )


def _jobs_done(connection: Connection, asked: YearAsked) -> Iterator[JobDone]:
    rows = _rows(connection, asked.first, asked.last)
    ids = [row[0] for row in rows]
    fates = read_fates(connection, asked.look, ids)
    parts = _parts(connection, ids, asked.verdicts)
    symptoms = _symptoms(connection, ids, asked.names)
    people = {row.id: row.name for row in connection.execute(select(Person.id, Person.name))}
    caught = _caught(connection, ids)
    levels = _levels(rows)
    met: dict[int, list[ReturnRow]] = {}
    for one in asked.returns:
        met.setdefault(one.earlier_id, []).append(one)
    for row, fate in zip(rows, fates, strict=True):
        job_id, number, vehicle, cause_found, cause, correction, system, *more = row
        hours, unbilled, price, level, every, window_days, window_miles, technician = more
        rows_met = tuple(met.get(job_id, ()))
        by = met_by(rows_met)
        back, told = by.back, fate.told(rows_met)
        yield JobDone(
            number=number,
            left_on=fate.left_on,
            vehicle=vehicle,
            counted=is_counted(cause_found, cause, correction),
            cause_found=None if cause_found is None else bool(cause_found),
            correction=correction,
            system=system,
            symptoms=tuple(symptoms.get(job_id, ())),
            parts=tuple(parts.get(job_id, ())),
            technician=people.get(technician, ""),
            hours=hours,
            unbilled_hours=unbilled,
            price_cents=price,
            proof_level=levels[level],
            now_and_then=every is not None,
            window_days=window_days,
            window_miles=float(window_miles),
            days_gone=(asked.last - fate.left_on).days,
            counts_from=fate.counts_from,
            state=fate.state(by, told, asked.last),
            back_after=None if back is None else back.candidate.days,
            waits_after=_days_to(by.waits, fate.told_inside(told)),
            aside_after=None if by.aside is None else by.aside.candidate.days,
            well_until=fate.well_until(by, told),
            miles_known=fate.miles_known,
            known_on=fate.known_on,
            back_miles=None if back is None else back.candidate.distance_miles,
            lost_after=fate.lost_after(),
            caught_here=caught.get(job_id, 0),
        )


def _rows(connection: Connection, first: date, last: date) -> list[Any]:
    wanted = (
        select(
            *(Job.id, Job.number, Vehicle.description, Job.cause_found, Job.cause, Job.correction),
            *(Job.system, Job.hours, Job.unbilled_hours, Job.price_cents, Job.proof_level),
            *(Job.fault_every, Job.window_days, Job.window_miles, Job.technician_id),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Job.left_at >= first.isoformat())
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .order_by(Job.left_at, Job.number)
    )
    return [row for block in each_block(connection, wanted) for row in zip(*block, strict=True)]


def _levels(rows: Sequence[Any]) -> dict[int | None, ProofLevel | None]:
    """Look once at each distinct level; a ShopDamaged names the first job that holds it."""
    holders = {row[_LEVEL]: row for row in reversed(rows)}
    return {
        level: kept_level(level, row_place("job", job_id, number))
        for level, (job_id, number, *_) in holders.items()
    }


def _days_to(waits: ReturnRow | None, told: int | None) -> int | None:
    """Return the days to the first visit that waits, or to the same trouble told, if sooner."""
    days = (None if waits is None else waits.candidate.days, told)
    return min((one for one in days if one is not None), default=None)


def _parts(
    connection: Connection, ids: Collection[int], verdicts: Verdicts
) -> dict[int, list[PartFitted]]:
    wanted = select(Pair.job_id, Pair.id, Pair.part_kind, Pair.origin, Pair.supplier, Pair.lot)
    found: dict[int, list[PartFitted]] = {}
    for block in each_block(connection, wanted.where(Pair.fitted == 1), Pair.job_id, ids):
        for job_id, pair_id, kind, origin, supplier, lot in zip(*block, strict=True):
            part = PartFitted(kind, origin or "", supplier, lot, verdicts.get(pair_id, ""))
            found.setdefault(job_id, []).append(part)
    return found


def _symptoms(
    connection: Connection, ids: Collection[int], names: SymptomNames
) -> dict[int, list[str]]:
    wanted = select(JobSymptom.job_id, JobSymptom.symptom)
    found: dict[int, list[str]] = {}
    for block in each_block(connection, wanted, JobSymptom.job_id, ids):
        for job_id, symptom in zip(*block, strict=True):
            found.setdefault(job_id, []).append(names.get(symptom, symptom))
    return found


def _caught(connection: Connection, ids: Collection[int]) -> dict[int, int]:
    rows = each_row(connection, select(CaughtHere.job_id), CaughtHere.job_id, ids)
    return Counter(row.job_id for row in rows)


def _returns(connection: Connection, asked: YearAsked) -> tuple[ReturnDone, ...]:
    wanted = select(ReturnLink)
    later = {one.later_id for one in asked.returns}
    kept = {
        (row.earlier_job_id, row.later_job_id): row
        for row in each_row(connection, wanted, ReturnLink.later_job_id, later)
    }
    monday = week_of(asked.last).monday  # the history is read for the week alone: it may be long
    week = {(one.earlier_id, one.later_id) for one in asked.returns if one.came_on >= monday}
    decided = decisions_since(connection, [kept[pair] for pair in week & kept.keys()], monday)
    found = []
    for one in asked.returns:
        row = kept.get((one.earlier_id, one.later_id))
        if row is None:
            found.append(ReturnDone(one))
            continue
        link = link_kept(row)
        found.append(
            ReturnDone(
                one,
                link.also,
                link.helping,
                link.second_look,
                return_cost(link.cost, asked.rules.hour_cost_cents),
                link.change,
                decided.get(row.id, ()),
            )
        )
    return tuple(found)
