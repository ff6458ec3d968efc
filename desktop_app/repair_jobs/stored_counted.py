"""The rule of which jobs count for a rate, asked of the record itself."""

from __future__ import annotations

from sqlalchemy import ColumnElement, and_, func, or_

from desktop_app.repair_jobs.counted import BLANKS
from desktop_app.repair_jobs.stored import Job


def job_is_counted() -> ColumnElement[bool]:
    """Return what `is_counted` says of a job, as a condition for a query."""
    return and_(
        Job.work.is_(None),
        func.trim(Job.cause, BLANKS) != "",
        func.trim(Job.correction, BLANKS) != "",
        or_(Job.cause_found.is_(None), Job.cause_found != 0),
    )
