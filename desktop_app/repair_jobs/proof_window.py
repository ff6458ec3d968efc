"""The window after the hand-over in plain words: what was given, and where it ends."""

from __future__ import annotations

from datetime import date, timedelta

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import (
    DistanceUnit,
    distance_in_words,
    from_miles,
    unit_words,
)
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof_said import unit_of


def window_in_words(job: JobView) -> str:
    """Return the window after the hand-over in plain words, in the vehicle's unit.

    A window without any limit says so, and one that is not given yet too. Once it is given, its
    last day and the reading at which it ends are said, as far as the odometer was read then.
    """
    if not job.window_days and not job.window_miles:
        return tr("No limit in time or distance was given.")
    if job.left_on is None:
        return tr("{window} So far: it is given at the hand-over.", window=_promised(job))
    if not job.window_miles:
        return tr("Until {last_day} ({time}).", last_day=_last_day(job), time=_time(job))
    if job.odometer_out is None:
        return _from_no_reading(job)
    return _until(job.odometer_out, job)


def _time(job: JobView) -> str:
    if job.window_months:
        months = job.window_months
        return (
            tr("1 calendar month") if months == 1 else tr("{months} calendar months", months=months)
        )
    days = job.window_days
    return tr("1 day") if days == 1 else tr("{days:,} days", days=days)


def _far(job: JobView) -> str:
    miles = from_miles(job.window_miles, unit_of(job))
    return f"{figure(miles, ',.0f')} {unit_words(unit_of(job))}"


def _promised(job: JobView) -> str:
    """Say the limits of a window that is not given yet."""
    if not (job.window_days and job.window_miles):
        limit = _time(job) if job.window_days else _far(job)
        return tr("{limit} after the hand-over.", limit=limit)
    words = (
        tr("{time} or {distance} after the hand-over, whichever comes first.")
        if job.window_rule == "first"
        else tr("{time} and {distance} after the hand-over, until both have ended.")
    )
    return words.format(time=_time(job), distance=_far(job))


def _until(reading: int, job: JobView) -> str:
    unit: DistanceUnit = unit_of(job)
    far = {
        "end": distance_in_words(round(reading + from_miles(job.window_miles, unit)), unit),
        "left_at": distance_in_words(reading, unit),
    }
    if not job.window_days:
        return tr("Until {end} (left at {left_at}).", **far)
    words = (
        tr("Until {end} (left at {left_at}) or {last_day} ({time}), whichever comes first.")
        if job.window_rule == "first"
        else tr("Until {end} (left at {left_at}) and {last_day} ({time}) are both past.")
    )
    return words.format(**far, last_day=_last_day(job), time=_time(job))


def _from_no_reading(job: JobView) -> str:
    if not job.window_days:
        return tr("{distance} after the hand-over; odometer not read then.", distance=_far(job))
    words = (
        tr("{time} (until {last_day}) or {distance}, whichever comes first; odometer not read.")
        if job.window_rule == "first"
        else tr(
            "{time} (until {last_day}) and {distance}, until both have ended; odometer not read."
        )
    )
    return words.format(time=_time(job), last_day=_last_day(job), distance=_far(job))


def _last_day(job: JobView) -> str:
    left = date.fromisoformat(str(job.left_on))
    return day_in_words(left + timedelta(days=job.window_days))
