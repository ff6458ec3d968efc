"""The rows of a week, read from the record."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Any, Literal

from sqlalchemy import Connection, Row, Select, exists, select

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair, Reading
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.repair_jobs.kept_job import kept_level, kept_window
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_look import look_at
from desktop_app.returns_watched.stored_promise import read_promise
from desktop_app.returns_watched.stored_recent import Period
from desktop_app.returns_watched.stored_returns import returns_in
from desktop_app.returns_watched.stored_told import read_told
from desktop_app.returns_watched.stored_watch import on_watch
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_day, row_place
from desktop_app.weekly_report.figures import (
    WEEKS_SHOWN,
    JobLeft,
    ShopWords,
    WeekFigures,
    WeekRows,
    week_figures,
)
from desktop_app.weekly_report.stored_before_the_year import (
    chained_before,
    read_came_again,
    read_older,
    read_promised_before,
)
from desktop_app.weekly_report.stored_calls_due import read_calls_due
from desktop_app.weekly_report.stored_costs_before import read_costs_before
from desktop_app.weekly_report.stored_doubted import levels_in_doubt
from desktop_app.weekly_report.stored_looked_back import look_back
from desktop_app.weekly_report.stored_rules_changed import rules_changed
from desktop_app.weekly_report.stored_supplied import PairsSeen, judge_pairs, read_supplied
from desktop_app.weekly_report.stored_year import YearAsked, read_year
from desktop_app.weekly_report.week import Week, week_of
from desktop_app.weekly_report.year_behind import WEEKS_IN_YEAR, YearBehind


def read_week_figures(
    connection: Connection,
    week: Week,
    now: datetime,
    names: SymptomNames = NO_NAMES,
    kinds: Mapping[str, PartKind] | None = None,
) -> WeekFigures:
    """Read the week and put its figures together.

    The watch is looked at as of the week's Sunday, or of today where that is earlier; a week that
    is still to come has no other rows. `kinds` are the part kinds by which pairs are judged.
    """
    as_of = min(week.sunday, now.date())
    rules = read_rules(connection)
    shop = _shop_words(rules, kinds or {})
    first = week.moved(1 - WEEKS_IN_YEAR).monday
    promise = read_promise(connection)
    if week.monday > now.date():
        known = Period(week_of(as_of).moved(1 - WEEKS_IN_YEAR).monday, as_of, promise.long.days)
        watch = on_watch(connection, look_at(connection, known, promise.long, names))
        no_year = YearBehind(first, as_of)
        calls = read_calls_due(connection, watch, no_year, rules.ask_after_days)
        nothing = WeekRows((), (), watch, (), (), no_year, calls_due=calls)
        return week_figures(week, now, as_of, shop, nothing)
    look = look_at(connection, Period(first, as_of, promise.long.days), promise.long, names)
    visits = returns_in(connection, look.met, promise, (first, as_of), names)
    told = read_told(connection, None, as_of, names)
    lately = (row for row in told.stand if row.came_on >= first)
    met = sorted((*told.on_visits(visits), *lately), key=lambda row: row.came_on)
    watch = on_watch(connection, look)
    shown = week.moved(1 - WEEKS_SHOWN).monday
    seen = _pairs_seen(connection, first, kinds or {}, rules)
    asked = YearAsked(first, as_of, look, met, rules, names, seen.verdicts)
    charted = min(shown, first + timedelta(days=rules.window_days)) if rules.window_days else shown
    met_ids = {row.earlier_id for row in met} | chained_before(connection, met)
    year = replace(
        read_year(connection, asked),
        older=tuple(read_older(connection, look, first, charted, met_ids)),
        promised_before=tuple(read_promised_before(connection, first, as_of)),
        looked_back=look_back(connection, look, promise.long, as_of),
        supplied=read_supplied(connection, first, as_of, seen),
        came_again=read_came_again(connection, look, first),
        costs_before=read_costs_before(connection, look, promise, first, names),
    )
    rows = WeekRows(
        left=_jobs_left(connection, week.monday, as_of),
        came_back=tuple(row for row in met if row.came_on >= week.monday),
        on_watch=watch,
        left_behind=tuple(job.left_on for job in year.jobs if job.left_on >= shown),
        came_back_behind=tuple(row for row in met if row.came_on >= shown),
        year=year,
        rules_changed=rules_changed(connection, week.monday, shop),
        calls_due=read_calls_due(connection, watch, year, rules.ask_after_days),
    )
    return week_figures(week, now, as_of, shop, rows)


def _pairs_seen(
    connection: Connection, first: date, kinds: Mapping[str, PartKind], rules: HouseRules
) -> PairsSeen:
    """Judge the pairs that were measured, of jobs handed over since a day."""
    wanted = (
        select(Pair.id)
        .join(Job, Job.id == Pair.job_id)
        .where(Job.left_at >= first.isoformat())
        .where(exists().where(Reading.pair_id == Pair.id))
    )
    pairs = frozenset(connection.execute(wanted).scalars())
    if not pairs or not kinds:
        return PairsSeen()
    return judge_pairs(connection, kinds, drawer(connection), rules.confidence, pairs)


def _shop_words(rules: HouseRules, kinds: Mapping[str, PartKind]) -> ShopWords:
    unit: Literal["mi", "km"] = "km" if rules.distance_unit == "km" else "mi"
    return ShopWords(
        name=rules.shop_name,
        distance_unit=unit,
        currency=rules.currency,
        paper=rules.paper,
        window_days=rules.window_days,
        window_miles=rules.window_miles,
        window_rule=rules.window_rule,
        window_months=rules.window_months,
        kinds=kinds,
    )


def _jobs_left(connection: Connection, since: date, until: date) -> tuple[JobLeft, ...]:
    wanted = (
        select(Job, Vehicle.description)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .order_by(Job.left_at, Job.number)
    )
    rows = connection.execute(_within(wanted, since, until)).all()
    in_doubt = levels_in_doubt(connection, rows)
    return tuple(_job_left(row, in_doubt=row.id in in_doubt) for row in rows)


def _within(wanted: Select[*tuple[Any, ...]], since: date, until: date) -> Select[*tuple[Any, ...]]:
    return wanted.where(
        Job.left_at >= since.isoformat(), Job.left_at < (until + timedelta(days=1)).isoformat()
    )


def _job_left(row: Row[Any], *, in_doubt: bool) -> JobLeft:
    place = row_place("job", row.id, row.number)
    left_on = kept_day(row.left_at, place)
    kept_window(row.window_days, row.window_miles, row.window_rule, place)
    return JobLeft(
        number=row.number,
        left_on=left_on,
        vehicle=row.description,
        concern=row.concern,
        cause_found=None if row.cause_found is None else bool(row.cause_found),
        cause=row.cause,
        correction=row.correction,
        system=row.system,
        proof_level=kept_level(row.proof_level, place),
        proof_in_doubt=in_doubt,
        hours=row.hours,
        unbilled_hours=row.unbilled_hours,
        price_cents=row.price_cents,
        window_ends=left_on + timedelta(days=row.window_days) if row.window_days else None,
        window_miles=float(row.window_miles),
        window_rule=row.window_rule,
        declined=row.declined,
        proof_words=row.proof_words,
        work=row.work,
    )
