"""The rows of a week, read from the record."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, datetime, timedelta
from typing import Any, Literal

from sqlalchemy import Connection, Row, Select, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.returns_watched.stored_returns import read_returns, read_watch
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.weekly_report.figures import (
    WEEKS_SHOWN,
    JobLeft,
    ShopWords,
    WeekFigures,
    WeekRows,
    week_figures,
)
from desktop_app.weekly_report.week import Week


def read_week_figures(
    connection: Connection, week: Week, now: datetime, names: SymptomNames = NO_NAMES
) -> WeekFigures:
    """Read the week and put its figures together.

    The watch is looked at as of the week's Sunday, or of today where that is earlier; a week that
    is still to come has no rows.
    """
    as_of = min(week.sunday, now.date())
    shop = _shop_words(read_rules(connection))
    if week.monday > now.date():
        return week_figures(week, now, as_of, shop, WeekRows((), (), (), (), ()))
    first = week.moved(1 - WEEKS_SHOWN).monday
    behind = read_returns(connection, first, as_of, names)
    rows = WeekRows(
        left=_jobs_left(connection, week.monday, as_of),
        came_back=tuple(row for row in behind if row.came_on >= week.monday),
        on_watch=read_watch(connection, as_of),
        left_behind=_days_left(connection, first, as_of),
        came_back_behind=behind,
    )
    return week_figures(week, now, as_of, shop, rows)


def _shop_words(rules: HouseRules) -> ShopWords:
    unit: Literal["mi", "km"] = "km" if rules.distance_unit == "km" else "mi"
    return ShopWords(
        name=rules.shop_name,
        distance_unit=unit,
        currency=rules.currency,
        paper=rules.paper,
        window_days=rules.window_days,
        window_miles=rules.window_miles,
        window_rule=rules.window_rule,
    )


def _days_left(connection: Connection, since: date, until: date) -> tuple[date, ...]:
    rows = connection.execute(_within(select(Job.left_at), since, until))
    return tuple(kept_day(row.left_at) for row in rows)


def _jobs_left(connection: Connection, since: date, until: date) -> tuple[JobLeft, ...]:
    wanted = (
        select(Job, Vehicle.description)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .order_by(Job.left_at, Job.number)
    )
    rows = connection.execute(_within(wanted, since, until)).all()
    kinds = _part_kinds(connection, [row.id for row in rows])
    return tuple(_job_left(row, kinds.get(row.id, ())) for row in rows)


def _within(wanted: Select[*tuple[Any, ...]], since: date, until: date) -> Select[*tuple[Any, ...]]:
    return wanted.where(
        Job.left_at >= since.isoformat(), Job.left_at < (until + timedelta(days=1)).isoformat()
    )


def _part_kinds(connection: Connection, job_ids: Collection[int]) -> dict[int, tuple[str, ...]]:
    wanted = select(Pair.job_id, Pair.part_kind).where(Pair.job_id.in_(job_ids)).order_by(Pair.id)
    found: dict[int, tuple[str, ...]] = {}
    for job_id, kind in connection.execute(wanted):
        if kind not in found.get(job_id, ()):
            found[job_id] = (*found.get(job_id, ()), kind)
    return found


def _job_left(row: Row[Any], kinds: tuple[str, ...]) -> JobLeft:
    left_on = kept_day(row.left_at)
    return JobLeft(
        number=row.number,
        left_on=left_on,
        vehicle=row.description,
        concern=row.concern,
        cause_found=None if row.cause_found is None else bool(row.cause_found),
        cause=row.cause,
        correction=row.correction,
        system=row.system,
        part_kinds=kinds,
        proof_level=row.proof_level,
        hours=row.hours,
        unbilled_hours=row.unbilled_hours,
        price_cents=row.price_cents,
        window_ends=left_on + timedelta(days=row.window_days),
        window_miles=float(row.window_miles),
        declined=row.declined,
    )
