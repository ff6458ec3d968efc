"""The promises by part kind, and what a job is promised at its hand-over."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Row, select

from desktop_app.language import tr
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.kept_job import WINDOW_RULES, kept_promise
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.kind_windows import FROM_JOB, Promise, promise_of, promised
from desktop_app.returns_watched.month_end import days_of_months
from desktop_app.returns_watched.stored import KindWindow
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import damaged, kept_day, kept_word, row_place
from desktop_app.shop_record.trouble import ShopTrouble


def read_kind_windows(connection: Connection) -> dict[str, Promise]:
    """Read the promises of the part kinds that have one of their own."""
    rows = connection.execute(select(KindWindow).order_by(KindWindow.part_kind))
    return {row.part_kind: kept_kind_window(row) for row in rows}


def kept_kind_window(row: Row[Any]) -> Promise:
    """Return what a row of kind_window promises; a ShopDamaged where nobody can have said it."""
    place = tr(
        "{place}, part kind {kind}", place=row_place("kind_window", row.id), kind=row.part_kind
    )
    rule = kept_word(row.rule, WINDOW_RULES, tr("“first” or “both”"), place)
    try:
        return Promise(row.days, row.months, row.miles, rule)
    except ShopTrouble as error:
        kept = tr(
            "{days} days, {months} months, {miles} miles",
            days=row.days,
            months=row.months,
            miles=row.miles,
        )
        raise damaged(kept, tr("a promise"), place) from error


def kind_window_row(connection: Connection, part_kind: str) -> int | None:
    """Return the id of a kind's row, or None."""
    wanted = select(KindWindow.id).where(KindWindow.part_kind == part_kind)
    return connection.execute(wanted).scalar()


def shop_promise(rules: HouseRules) -> Promise:
    """Return the shop's own promise."""
    return promise_of(rules.window_days, rules.window_months, rules.window_miles, rules.window_rule)


def promise_at_hand_over(deed: Deed, job_id: int, left_at: str) -> dict[str, Any]:
    """Return the columns of a job that hold its window, as it is promised at that moment.

    What was given to the job alone stays, its months counted out from that day. Only parts that
    were fitted count.
    """
    connection = deed.connection
    own = select(Job.window_from, Job.window_months).where(Job.id == job_id)
    said_by, months = connection.execute(own).one()
    kept_promise(months, said_by, row_place("job", job_id))
    if said_by == FROM_JOB:
        return {"window_days": days_of_months(kept_day(left_at), months)} if months else {}
    fitted = select(Pair.part_kind).where(Pair.job_id == job_id, Pair.fitted == 1)
    kinds = connection.execute(fitted).scalars().all()
    shop = shop_promise(read_rules(connection))
    found = promised(kept_day(left_at), kinds, read_kind_windows(connection), shop)
    return {
        "window_days": found.window.days,
        "window_miles": int(found.window.miles),
        "window_rule": found.window.rule,
        "window_months": found.months,
        "window_from": found.said_by,
    }
