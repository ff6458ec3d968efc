"""The promises by part kind, and what a job is promised at its hand-over."""

from __future__ import annotations

from typing import Any, cast

from sqlalchemy import Connection, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.kind_windows import FROM_JOB, Promise, promised
from desktop_app.returns_watched.stored import KindWindow
from desktop_app.returns_watched.window import EndsBy
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_day


def read_kind_windows(connection: Connection) -> dict[str, Promise]:
    """Read the promises of the part kinds that have one of their own."""
    return {
        row.part_kind: Promise(row.days, row.months, row.miles, cast(EndsBy, row.rule))
        for row in connection.execute(select(KindWindow).order_by(KindWindow.part_kind))
    }


def kind_window_row(connection: Connection, part_kind: str) -> int | None:
    """Return the id of a kind's row, or None."""
    wanted = select(KindWindow.id).where(KindWindow.part_kind == part_kind)
    return connection.execute(wanted).scalar()


def shop_promise(rules: HouseRules) -> Promise:
    """Return the shop's own promise."""
    return Promise(
        days=rules.window_days, miles=rules.window_miles, rule=cast(EndsBy, rules.window_rule)
    )


def promise_at_hand_over(deed: Deed, job_id: int, left_at: str) -> dict[str, Any]:
    """Return the columns of a job that hold its window, as it is promised at that moment.

    What was given to the job alone stays. Only parts that were fitted count.
    """
    connection = deed.connection
    if connection.execute(select(Job.window_from).where(Job.id == job_id)).scalar() == FROM_JOB:
        return {}
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
