"""What the comebacks of the year before a book's own cost, read from the record."""

from __future__ import annotations

from datetime import date, timedelta

from sqlalchemy import Connection, or_, select

from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.return_cost import AMOUNTS, return_cost
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_counted import linked
from desktop_app.returns_watched.stored_facts import SymptomNames
from desktop_app.returns_watched.stored_hour_cost import moment_judged, read_hour_costs
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_look import Look
from desktop_app.returns_watched.stored_promise import Promise
from desktop_app.returns_watched.stored_returns import returns_in
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.weekly_report.before_the_year import CostBefore
from desktop_app.weekly_report.cost_once import costs_once
from desktop_app.weekly_report.year_behind import DAYS_IN_YEAR, ReturnDone

_WRITTEN = select(ReturnLink.earlier_job_id, ReturnLink.later_job_id).where(
    or_(*(getattr(ReturnLink, name).is_not(None) for name in ("unbilled_hours", *AMOUNTS)))
)


def read_costs_before(
    connection: Connection, look: Look, promise: Promise, first: date, names: SymptomNames
) -> tuple[CostBefore, ...]:
    """Read what was written for the comebacks whose car came in the year before a day.

    They count as those of the year do: judged, inside the window, after a job that a rate counts,
    and the same amounts of one visit once. The look has read all pairs that a person judged.
    """
    begins = first - timedelta(days=DAYS_IN_YEAR)
    opened = look.jobs.opened[look.met.pairs.later]
    older = look.met.came_back & look.met.pairs.in_window
    older &= (opened >= begins.toordinal()) & (opened < first.toordinal())
    if not older.any():
        return ()
    older &= linked(connection, look.met, _WRITTEN)
    last = first - timedelta(days=1)
    rows = returns_in(connection, look.met.only(older), promise, (begins, last), names)
    links = {
        (row.earlier_job_id, row.later_job_id): row
        for row in each_row(
            connection, select(ReturnLink), ReturnLink.later_job_id, {row.later_id for row in rows}
        )
    }
    hours = read_hour_costs(connection, [r.judged_at for r in links.values() if r.unbilled_hours])
    done = []
    for row in rows:
        link = link_kept(links[row.earlier_id, row.later_id], row.later)
        cost = return_cost(link.cost, hours.at(moment_judged(link.judged_at)))
        done.append(ReturnDone(row, cost=cost))
    left_out = _left_out(connection, {row.earlier_id for row in rows})
    return tuple(
        CostBefore(one.row.later, one.row.earlier, one.row.came_on, one.cost.total_cents)
        for one in costs_once(tuple(done), left_out)
        if one.cost is not None and one.row.earlier not in left_out
    )


def _left_out(connection: Connection, jobs: set[int]) -> set[str]:
    """Return the numbers of the jobs that no rate counts: nothing was put right that could fail."""
    wanted = select(Job.number, Job.cause_found, Job.cause, Job.correction, Job.work)
    return {
        row.number
        for row in each_row(connection, wanted, Job.id, jobs)
        if not is_counted(row.cause_found, row.cause, row.correction, row.work)
    }
