"""Which jobs count for a rate, and which came back, asked of the record itself."""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, Text, and_, column, func, or_, select, table

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


# The tables that keep what was judged of visits, and of what was only told, with the column of the
# earlier job. They belong to a folder above this one, so they are named, not imported.
_JUDGED = (("return_link", "earlier_job_id"), ("customer_asked", "job_id"))
_COMEBACKS = ("same symptom", "same system", "same part", "from our hands")


def came_back_as_judged(connection: Connection, job_id: int) -> bool:
    """Tell whether a person judged that a job came back."""
    for name, earlier in _JUDGED:
        kept = table(name, column(earlier), column("judgement", Text))
        found = select(kept.c[earlier]).where(
            kept.c[earlier] == job_id, kept.c.judgement.in_(_COMEBACKS)
        )
        if connection.execute(found.limit(1)).first() is not None:
            return True
    return False
