"""Reading one return as it is judged, and the promises of change that are still open."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.judged_before import (
    JUDGED_COLUMNS,
    JudgedOnce,
    LinkChanged,
    judged_over_time,
)
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_hour_cost import moment_judged, read_hour_costs
from desktop_app.returns_watched.stored_links import (
    CHANGE_COLUMNS,
    kept_change,
    link_between,
    link_kept,
)
from desktop_app.shop_record.kept_value import row_place
from desktop_app.shop_record.tables import HistoryEntry, aliased

_EARLIER, _LATER = aliased(Job), aliased(Job)
_ENTRIES = 8  # of the history, read at a time: mostly the first few tell all


@dataclass(frozen=True, slots=True)
class OpenChange:
    """A promise of change that still asks for something, and the return that it came from."""

    earlier_id: int
    later_id: int
    earlier: str
    later: str
    change: ChangePromised


def read_judging(connection: Connection, earlier_job: int, later_job: int) -> Judging | None:
    """Read all that is said about one return; None where one of its jobs is no longer there."""
    wanted = (
        select(Job.id, Job.number, Job.unbilled_hours, Person.name)
        .outerjoin(Person, Person.id == Job.technician_id)
        .where(Job.id.in_((earlier_job, later_job)))
    )
    jobs = {row.id: row for row in connection.execute(wanted)}
    if earlier_job not in jobs or later_job not in jobs:
        return None
    then, now = jobs[earlier_job], jobs[later_job]
    known: dict[str, Any] = {
        "earlier_id": earlier_job,
        "later_id": later_job,
        "earlier": then.number,
        "later": now.number,
        "first_by": then.name or "",
        "hours_unpaid": now.unbilled_hours,
    }
    known["cost_elsewhere"] = _cost_elsewhere(connection, earlier_job, later_job)
    row = link_between(connection, earlier_job, later_job)
    if row is None:
        return Judging(**known)
    kept = link_kept(row, now.number)
    return Judging(
        **known,
        judgement=kept.judgement,
        same_vehicle=kept.same_vehicle,
        judged_by=kept.judged_by,
        judged_at=kept.judged_at,
        also=kept.also,
        why=kept.why,
        evidence=kept.evidence,
        first_view=kept.first_view,
        second_look=kept.second_look,
        cause_class=kept.cause_class,
        helping=kept.helping,
        cost=kept.cost,
        change=kept.change,
        dangerous=kept.dangerous,
        decisions=read_decisions(connection, row),
        hour_cost_cents=_hour_cost(connection, kept.judged_at),
    )


def _hour_cost(connection: Connection, judged_at: str | None) -> int | None:
    if judged_at is None:
        return None
    return read_hour_costs(connection, [judged_at]).at(moment_judged(judged_at))


def _cost_elsewhere(connection: Connection, earlier_job: int, later_job: int) -> tuple[str, ...]:
    """Return the other earlier jobs to which a cost of the later job's visit is written."""
    visit = select(Job.visit_id).where(Job.id == later_job).scalar_subquery()
    wanted = (
        select(ReturnLink, _EARLIER.number.label("number"))
        .join(_EARLIER, _EARLIER.id == ReturnLink.earlier_job_id)
        .join(_LATER, _LATER.id == ReturnLink.later_job_id)
        .where(_LATER.visit_id == visit, ReturnLink.same_vehicle == 1)
    )
    return tuple(
        sorted(
            row.number
            for row in connection.execute(wanted)
            if (row.earlier_job_id, row.later_job_id) != (earlier_job, later_job)
            and link_kept(row).cost.is_written
        )
    )


def read_decisions(connection: Connection, row: Any) -> tuple[JudgedOnce, ...]:
    """Read from the history what was decided about a row of return_link, oldest first.

    It looks back from the newest entry to the one that added the row and no further.
    """
    now = {name: getattr(row, name) for name in JUDGED_COLUMNS}
    return judged_over_time(now, touching(connection, ReturnLink.__tablename__, row.id))


def open_changes(connection: Connection, today: date) -> tuple[OpenChange, ...]:
    """Read the promises that are not done, or done and to be looked at now.

    What is due first comes first, what has no day last.
    """
    wanted = (
        select(
            ReturnLink.id,
            ReturnLink.earlier_job_id,
            ReturnLink.later_job_id,
            _EARLIER.number.label("earlier"),
            _LATER.number.label("later"),
            *CHANGE_COLUMNS,
        )
        .join(_EARLIER, _EARLIER.id == ReturnLink.earlier_job_id)
        .join(_LATER, _LATER.id == ReturnLink.later_job_id)
        .where((ReturnLink.change_done_on.is_(None)) | (ReturnLink.change_check_on.is_not(None)))
        .order_by(ReturnLink.id)
    )
    found = [
        OpenChange(
            *(row.earlier_job_id, row.later_job_id, row.earlier, row.later),
            kept_change(row, row_place("return_link", row.id, row.later)),
        )
        for row in connection.execute(wanted)
    ]
    return tuple(
        sorted((one for one in found if one.change.is_open(today)), key=lambda one: _when(one))
    )


def _when(one: OpenChange) -> date:
    change = one.change
    day = change.due if change.done_on is None else change.check_on
    return date.max if day is None else day


def touching(connection: Connection, table: str, row_id: int) -> Iterator[LinkChanged]:
    """Yield the history's changes of one row of a table, newest first.

    An entry's body is JSON with sorted names and no spaces, so that a row is found by the letters
    in which it is named; quotes inside of what people typed are escaped there.
    """
    named = f'"row_id":{row_id},"table":"{table}"' + "}"
    wanted = (
        select(
            HistoryEntry.seq,
            HistoryEntry.at,
            HistoryEntry.who,
            HistoryEntry.reverses,
            HistoryEntry.body,
        )
        .where(HistoryEntry.body.contains(named, autoescape=True))
        .order_by(HistoryEntry.seq.desc())
        .execution_options(yield_per=_ENTRIES)
    )
    with connection.execute(wanted) as entries:
        for seq, at, who, reverses, body in entries:
            for change in reversed(json.loads(body)["changes"]):
                if change["table"] == table and change["row_id"] == row_id:
                    yield LinkChanged(seq, at, who, reverses, change["before"], change["after"])
