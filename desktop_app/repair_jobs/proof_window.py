"""The window after the hand-over in plain words: what was given, and where it ends."""

from __future__ import annotations

from datetime import date, timedelta

from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof_said import unit_of


def window_in_words(job: JobView) -> str:
    """Return the window after the hand-over in plain words, in the vehicle's unit.

    A window without any limit says so, and one that is not given yet too. Once it is given, its
    last day and the reading at which it ends are said, as far as the odometer was read then.
    """
    limits = _limits(job)
    if not limits:
        return "No limit in time or distance was given."
    if job.left_on is None:
        said = f"{_joined(limits, job)} after the hand-over{_which(limits, job)}."
        return f"{said} So far: it is given at the hand-over."
    if not job.window_miles:
        return f"Until {_last_day(job)} ({limits[0]})."
    if job.odometer_out is None:
        return _from_no_reading(limits, job)
    return _until(job.odometer_out, job)


def _limits(job: JobView) -> list[str]:
    limits = []
    if job.window_days:
        limits.append(_time(job))
    if job.window_miles:
        words = "km" if unit_of(job) == "km" else "miles"
        limits.append(f"{from_miles(job.window_miles, unit_of(job)):,.0f} {words}")
    return limits


def _time(job: JobView) -> str:
    if job.window_months:
        months = job.window_months
        return "1 calendar month" if months == 1 else f"{months} calendar months"
    return "1 day" if job.window_days == 1 else f"{job.window_days:,} days"


def _joined(limits: list[str], job: JobView) -> str:
    return (" or " if job.window_rule == "first" else " and ").join(limits)


def _which(limits: list[str], job: JobView) -> str:
    if len(limits) == 1:
        return ""
    return ", whichever comes first" if job.window_rule == "first" else ", until both have ended"


def _until(reading: int, job: JobView) -> str:
    unit: DistanceUnit = unit_of(job)
    end = distance_in_words(round(reading + from_miles(job.window_miles, unit)), unit)
    reached = f"Until {end} (left at {distance_in_words(reading, unit)})"
    if not job.window_days:
        return f"{reached}."
    day = f"{_last_day(job)} ({_time(job)})"
    if job.window_rule == "first":
        return f"{reached} or {day}, whichever comes first."
    return f"{reached} and {day} are both past."


def _from_no_reading(limits: list[str], job: JobView) -> str:
    if not job.window_days:
        return f"{limits[0]} after the hand-over; odometer not read then."
    dated = [f"{limits[0]} (until {_last_day(job)})", limits[1]]
    return f"{_joined(dated, job)}{_which(limits, job)}; odometer not read."


def _last_day(job: JobView) -> str:
    left = date.fromisoformat(str(job.left_on))
    return day_in_words(left + timedelta(days=job.window_days))
