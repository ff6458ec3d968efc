"""The year behind a week, read from the record."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.entry_bounds import MOST_CENTS, MOST_HOURS
from desktop_app.repair_jobs.kept_job import kept_kind_of_work, kept_level, kept_work
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    Job,
    JobPerson,
    JobSymptom,
    Person,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.who_did_what import DIDS, WORKS, Did
from desktop_app.returns_watched.return_cost import return_cost
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.returns_watched.stored_facts import SymptomNames
from desktop_app.returns_watched.stored_hour_cost import moment_judged, read_hour_costs
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_money_owed import money_still_owed
from desktop_app.returns_watched.stored_vehicles import each_block, each_row
from desktop_app.shop_record.house_rules import HouseRules, hour_is_preset
from desktop_app.shop_record.kept_value import kept_word, row_place
from desktop_app.weekly_report.job_fate import Became
from desktop_app.weekly_report.stored_decisions import decisions_since
from desktop_app.weekly_report.stored_fates import read_fates
from desktop_app.weekly_report.week import week_of
from desktop_app.weekly_report.year_behind import JobDone, PartFitted, ReturnDone, YearBehind

# The verdict on each pair that was compared, by the pair's id.
Verdicts = Mapping[int, str]
# What `is_counted` asks of a job, by the names that the record has for it.
_COUNTED_BY = ("cause_found", "cause", "correction", "work")


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
        hour_is_preset=hour_is_preset(rules),
        names_shown=rules.names_in_book == "yes",
        early=(rules.early_days, rules.early_miles),
        long=(rules.long_days, rules.long_miles),
    )


def _jobs_done(connection: Connection, asked: YearAsked) -> Iterator[JobDone]:
    """Return the jobs, put together column by column: many thousands in a fifth of the time."""
    read = _columns(connection, asked.first, asked.last)
    ids, levels = read["id"], _levels(read)
    fates = read_fates(connection, asked.look, ids)
    parts = _parts(connection, ids, asked.verdicts)
    symptoms = _symptoms(connection, ids, asked.names)
    people = {row.id: row.name for row in connection.execute(select(Person.id, Person.name))}
    caught = _caught(connection, ids)
    met: dict[int, tuple[ReturnRow, ...]] = {}
    for one in asked.returns:
        met[one.earlier_id] = (*met.get(one.earlier_id, ()), one)
    named = _named(connection, ids, people)
    words = zip(*(read[n] for n in _COUNTED_BY), strict=True)
    columns: dict[str, Iterable[Any]] = {
        **read,
        **fates.columns(),
        **dict(zip(Became._fields, zip(*fates.became(met), strict=True), strict=False)),
        "counted": [is_counted(*said) for said in words],
        "cause_found": [None if found is None else bool(found) for found in read["cause_found"]],
        "symptoms": [tuple(symptoms.get(job, ())) for job in ids],
        "parts": [tuple(parts.get(job, ())) for job in ids],
        "technician": [people.get(person, "") for person in read["technician_id"]],
        "proof_level": [levels[level] for level in read["proof_level"]],
        "now_and_then": [every is not None for every in read["fault_every"]],
        "window_miles": [float(miles) for miles in read["window_miles"]],
        "caught_here": [caught.get(job, 0) for job in ids],
        "named": [named.get(job, ()) for job in ids],
    }
    if ids:
        yield from map(JobDone._make, zip(*(columns[n] for n in JobDone._fields), strict=True))


def _columns(connection: Connection, first: date, last: date) -> dict[str, list[Any]]:
    """Read what is written on the jobs themselves, by the names that the record has for it."""
    wanted = (
        select(
            *(Job.id, Job.number, Vehicle.description.label("vehicle")),
            *(Job.cause_found, Job.cause, Job.correction, Job.work, Job.search_hours),
            *(Job.system, Job.hours, Job.unbilled_hours, Job.price_cents, Job.proof_level),
            *(Job.fault_every, Job.window_days, Job.window_miles, Job.technician_id),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Job.left_at >= first.isoformat())
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .order_by(Job.left_at, Job.number)
    )
    found: dict[str, list[Any]] = {column.name: [] for column in wanted.selected_columns}
    for block in each_block(connection, wanted):
        for column, values in zip(found.values(), block, strict=True):
            column.extend(values)
    _check_work(found)
    return found


def _check_work(read: Mapping[str, list[Any]]) -> None:
    """Look at all hours and prices at once; a ShopDamaged names the first job that is damaged."""
    hours, unbilled, prices = (read[n] for n in ("hours", "unbilled_hours", "price_cents"))
    search, works = read["search_hours"], read["work"]
    spent = all(_within(column, MOST_HOURS) for column in (hours, unbilled, search))
    if spent and _within(prices, MOST_CENTS) and {*works} <= {None, *WORKS}:
        return
    for row, (job_id, number) in enumerate(zip(read["id"], read["number"], strict=True)):
        place = row_place("job", job_id, number)
        kept_work(hours[row], unbilled[row], prices[row], place)
        kept_kind_of_work(works[row], search[row], place)


def _within(column: Sequence[float | None], most: float) -> bool:
    known = [value for value in column if value is not None]
    return not known or 0 <= min(known) <= max(known) <= most


def _levels(read: Mapping[str, list[Any]]) -> dict[int | None, ProofLevel | None]:
    """Look once at each distinct level; a ShopDamaged names the first job that holds it."""
    jobs = [*zip(read["proof_level"], read["id"], read["number"], strict=True)]
    holders = {level: (job_id, number) for level, job_id, number in reversed(jobs)}
    return {
        level: kept_level(level, row_place("job", *holder)) for level, holder in holders.items()
    }


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


def _named(
    connection: Connection, ids: Collection[int], people: Mapping[int, str]
) -> dict[int, tuple[tuple[Did, str], ...]]:
    """Return by job who is named for which of the four things."""
    wanted = select(JobPerson.job_id, JobPerson.id, JobPerson.did, JobPerson.person_id)
    found: dict[int, tuple[tuple[Did, str], ...]] = {}
    one_of_them = tr("a thing of a job")
    for block in each_block(connection, wanted, JobPerson.job_id, ids):
        for job_id, row, did, person in zip(*block, strict=True):
            did = kept_word(did, DIDS, one_of_them, row_place("job_person", row))
            found[job_id] = (*found.get(job_id, ()), (did, people[person]))
    return found


def _returns(connection: Connection, asked: YearAsked) -> tuple[ReturnDone, ...]:
    wanted = select(ReturnLink)
    later = {one.later_id for one in asked.returns if not one.is_told}
    kept = {
        (row.earlier_job_id, row.later_job_id): row
        for row in each_row(connection, wanted, ReturnLink.later_job_id, later)
    }
    monday = week_of(asked.last).monday  # the history is read for the week alone: it may be long
    week = {(one.earlier_id, one.later_id) for one in asked.returns if one.came_on >= monday}
    decided = decisions_since(
        connection, [kept[pair] for pair in week & kept.keys()], monday, ReturnLink.__tablename__
    )
    told = {one.judged_id for one in asked.returns if one.is_told and one.came_on >= monday}
    answers = [*each_row(connection, select(CustomerAsked), CustomerAsked.id, told)]
    decided_told = decisions_since(connection, answers, monday, CustomerAsked.__tablename__)
    hours = read_hour_costs(connection, [r.judged_at for r in kept.values() if r.unbilled_hours])
    found = []
    for one in asked.returns:
        row = kept.get((one.earlier_id, one.later_id))
        if row is None:
            found.append(ReturnDone(one, decisions=decided_told.get(one.judged_id, ())))
            continue
        link = link_kept(row)
        found.append(
            ReturnDone(
                one,
                link.also,
                link.helping,
                link.second_look,
                return_cost(link.cost, hours.at(moment_judged(link.judged_at))),
                link.change,
                decided.get(row.id, ()),
            )
        )
    return tuple(found)
