"""What is said of a job on watch: how far it is, what is left, when it probably ends."""

from __future__ import annotations

from datetime import date

from desktop_app.repair_jobs.distance import (
    KM_PER_MILE,
    DistanceUnit,
    distance_in_words,
    from_miles,
)
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.rate_of_use import use_in_words
from desktop_app.returns_watched.watch_end import ProbableEnd
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

STATE_SIGNS = {"quiet": "●", "to be judged": "◇", "came back": "□"}
_FAR_OFF = 3653  # days; beyond ten years the upper bound says no more than "not before"


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


def short_day(day: date) -> str:
    """Return a day with the first letters of its month, the same in every country: "3 Jan 2027"."""
    number, month, year = day_in_words(day).split(" ")
    return f"{number} {month[:3]} {year}"


def ends_in_words(ends: ProbableEnd | None) -> str:
    """Return when a window probably ends, in as few words as a table has room for."""
    if ends is None:
        return "nobody can say"
    if ends.certain:
        return short_day(ends.on)
    if _far_off(ends):
        return f"not before {short_day(ends.earliest)}"
    begins = short_day(ends.earliest)
    if ends.earliest.year == ends.latest.year:
        begins = begins.rsplit(" ", 1)[0]
        if ends.earliest.month == ends.latest.month:
            begins = begins.split(" ", 1)[0]
    return f"{begins} to {short_day(ends.latest)}"


def _far_off(ends: ProbableEnd) -> bool:
    return (ends.latest - ends.earliest).days > _FAR_OFF


def left_in_words(job: WatchedJob, unit: DistanceUnit) -> str:
    """Return what is left of days and distance by the last reading: "15 days, 1,520 mi".

    While nobody has read the odometer since, nobody knows what is left of the distance.
    """
    said = ["no time limit"]
    if job.days_left is not None:
        said = [days_in_words(max(job.days_left, 0))]
    if job.window.miles:
        far = miles_in_words(job.miles_left, unit)
        unknown = f"{unit} not {'read since' if job.not_read_since else 'known'}"
        said.append(far if job.miles_left is not None else unknown)
    return ", ".join(said)


def in_one_breath(job: WatchedJob, unit: DistanceUnit, today: date) -> tuple[str, ...]:
    """Return the sentences that stand beneath the plane for the job that is looked at."""
    concern = job.concern.strip().rstrip(".")
    about = ", ".join(part for part in (job.vehicle, concern) if part)
    gone = _gone(job, unit)
    if job.use is not None and job.counts_by_distance:
        words, per_mile = ("km", KM_PER_MILE) if unit == "km" else ("miles", 1.0)
        gone = f"{gone} {use_in_words(job.use, words, per_mile)}"
    return (f"{job.job}: {about}.", gone, f"{_left(job, unit)}{_ends(job, today)}")


def _gone(job: WatchedJob, unit: DistanceUnit) -> str:
    left = f"Left {day_in_words(job.left_on)}, {days_in_words(job.days_gone)} ago"
    if job.not_read_since:
        return f"{left}; the odometer was not read since."
    if job.miles_gone is None or job.read_on is None:
        return f"{left}; the odometer cannot say how far it went."
    far = miles_in_words(job.miles_gone, unit)
    return f"{left}; {far} by {day_in_words(job.read_on)}, when it was last read."


def _left(job: WatchedJob, unit: DistanceUnit) -> str:
    left = [] if job.days_left is None else [f"{days_in_words(max(job.days_left, 0))} left"]
    if job.miles_left is not None:
        far = miles_in_words(job.miles_left, unit)
        left.append(f"{far} by that reading" if left else f"{far} left by that reading")
    return f"{', '.join(left)}. " if left else ""


def _ends(job: WatchedJob, today: date) -> str:
    ends = job.ends
    if ends is None:
        return "It ends by distance alone, and the odometer cannot say how far; ask to see the car."
    if ends.certain:
        said = f"It ends {day_in_words(ends.on)}, by {ends.by}."
        if job.window.miles and not job.counts_by_distance:
            return f"{said} Time alone counts, for the odometer cannot say how far it went."
        return said
    first, last = day_in_words(ends.earliest), day_in_words(ends.latest)
    if ends.latest < today:
        return (
            f"By its usual use it ended between {first} and {last}, but nobody has read the "
            "odometer since."
        )
    if ends.earliest < today:
        said = f"It may have ended since {first} already"
        until = f"; else it ends by {last}"
    else:
        said, until = f"It probably ends between {first} and {last}", ""
    if _far_off(ends):
        return f"{said}{_what_is_sure(job, ends)}; nobody can say until when."
    return f"{said}{until}{_what_is_sure(job, ends)}."


def _what_is_sure(job: WatchedJob, ends: ProbableEnd) -> str:
    """Say which of the two days comes by time; what distance does is only probable."""
    last = job.window.last_day(job.left_on)
    if last == ends.latest:
        return ", by its time at the latest"
    if last == ends.earliest and job.window.rule == "both":
        return ", not before its time is over"
    return ", by distance"
