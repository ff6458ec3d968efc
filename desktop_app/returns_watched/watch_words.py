"""What is said of a job on watch: how far it is, what is left, when it probably ends."""

from __future__ import annotations

from datetime import date

from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window


def days_in_words(days: int) -> str:
    """Return so many days as people say it."""
    return "1 day" if days == 1 else f"{days:,} days"


def miles_in_words(miles: float | None, unit: DistanceUnit) -> str:
    """Return a distance in the shop's unit, or that nobody knows it."""
    return "not known" if miles is None else distance_in_words(from_miles(miles, unit), unit)


def window_in_words(window: Window, unit: DistanceUnit) -> str:
    """Return a window as a person says it: "90 days or 3,000 mi, whichever ends first"."""
    limits = [days_in_words(window.days)] if window.days else []
    if window.miles:
        limits.append(miles_in_words(window.miles, unit))
    if len(limits) == 1:
        return limits[0]
    if window.rule == "first":
        return f"{' or '.join(limits)}, whichever ends first"
    return f"{' and '.join(limits)}, until both have ended"


def state_of(job: WatchedJob) -> str:
    """Return in a word or two what is known of a watched job besides its window."""
    if job.came_back:
        return "came back"
    return "to be judged" if job.waits else "quiet"


def in_one_breath(job: WatchedJob, unit: DistanceUnit, today: date) -> tuple[str, ...]:
    """Return the sentences that stand beneath the plane for the job that is looked at."""
    about = ", ".join(part for part in (job.vehicle, job.concern) if part)
    return (f"{job.job}: {about}.", _gone(job, unit), _left(job, unit, today))


def _gone(job: WatchedJob, unit: DistanceUnit) -> str:
    left = f"Left {day_in_words(job.left_on)}, {days_in_words(job.days_gone)} ago"
    if job.miles_gone is None or job.read_on is None:
        return f"{left}; the odometer cannot say how far it went."
    if job.read_on == job.left_on:
        return f"{left}; the odometer was not read since."
    far = miles_in_words(job.miles_gone, unit)
    return f"{left}; {far} by {day_in_words(job.read_on)}, when it was last read."


def _left(job: WatchedJob, unit: DistanceUnit, today: date) -> str:
    left = [] if job.days_left is None else [f"{days_in_words(max(job.days_left, 0))} left"]
    if job.miles_left is not None:
        far = miles_in_words(job.miles_left, unit)
        left.append(f"{far} by that reading" if left else f"{far} left by that reading")
    said = f"{', '.join(left)}. " if left else ""
    if job.expected_close is None:
        return f"{said}It ends by distance alone; nobody can say when."
    by = "time" if job.expected_close_by == "time" else "distance"
    verb = (
        "Expected to end" if job.expected_close >= today else "By its usual use it would have ended"
    )
    return f"{said}{verb} {day_in_words(job.expected_close)}, by {by}."
