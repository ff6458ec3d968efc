"""From which day on a customer is to be asked how the car does."""

from __future__ import annotations

from datetime import date, timedelta

from desktop_app.returns_watched.ask_list import ENDS_SOON, JobBeside
from desktop_app.returns_watched.customer_answers import Answer
from desktop_app.returns_watched.watching import WatchedJob


def call_due(job: WatchedJob, own: JobBeside, after_days: int) -> date | None:
    """Return the day from which `whom_to_ask` lists a job on watch; None where it never will.

    That is a week before its window probably ends, where the car was not seen since, or
    `after_days` after the hand-over for a fault that came now and then and was not proved under its
    conditions, or the day since which the same trouble is told.
    """
    if job.told_since is not None:
        return job.told_since
    answered = any(said.answer is not Answer.NOT_REACHED for said in own.answers)
    if job.came_back or job.waits or answered:
        return None
    days = []
    if own.now_and_then and not own.proved:
        days.append(job.left_on + timedelta(days=after_days))
    if job.expected_close is not None and job.seen_on is None:
        days.append(max(job.left_on, job.expected_close - timedelta(days=ENDS_SOON)))
    return min(days, default=None)
